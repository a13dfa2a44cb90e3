using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting.Faults;

namespace LiveHeat.Testing.Hosting.Torture;

/// <summary>Phones tap through a network that fails, on a server that is killed again and again; afterwards every tap is looked for.</summary>
internal sealed class TortureRun(int kills, int cuts, int lanes, int seed)
{
    private static readonly Fault[] Faults = Enum.GetValues<Fault>();
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private readonly Random random = new(seed);

    /// <summary>Runs it.</summary>
    /// <param name="folder">An empty folder.</param>
    /// <param name="say">Progress.</param>
    public async Task<TortureReport> Run(string folder, Action<string> say)
    {
        await using var hub = new HubProcess(folder);
        await hub.Start();
        await using var network = new FaultProxy(hub.Address);
        using var desk = await TortureDesk.Open(hub);
        var phones = await desk.CallAndGo(network.Address, lanes, seed);
        using var stop = new CancellationTokenSource();
        var judging = phones.Select(phone => phone.Judge(TortureDesk.Heat, Patience, stop.Token)).ToList();
        try
        {
            var killed = await Torment(hub, network, say);
            network.Be(Fault.None);
            await stop.CancelAsync();
            await Task.WhenAll(judging);
            return await Look(desk, phones, killed, network.Cuts);
        }
        finally
        {
            await stop.CancelAsync();
            await Task.WhenAll(judging).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            phones.ForEach(phone => phone.Dispose());
        }
    }

    private async Task<int> Torment(HubProcess hub, FaultProxy network, Action<string> say)
    {
        var killed = 0;
        while (killed < kills || network.Cuts < cuts)
        {
            var until = kills == 0 ? cuts : (int)((long)cuts * (killed + 1) / Math.Max(1, kills));
            while (network.Cuts < until)
            {
                network.Be(Faults[random.Next(Faults.Length)]);
                await Task.Delay(random.Next(5, 60));
                network.Be(Fault.None);
                await Task.Delay(random.Next(5, 40));
                network.CutAll();
            }

            if (killed < kills)
            {
                await Task.Delay(random.Next(0, 250));
                await hub.Kill();
                await hub.Start();
                killed++;
                if (killed % 50 == 0)
                {
                    say($"{killed} kills, {network.Cuts} cuts");
                }
            }
        }

        return killed;
    }

    private static async Task<TortureReport> Look(TortureDesk desk, List<TorturePhone> phones, int killed, int cut)
    {
        var facts = await desk.Facts();
        var frame = await desk.Frame();
        var taps = facts.Where(line => line.Fact is HeatFact.Floor).ToList();
        var bySequence = taps.GroupBy(line => line.Fact.Id).ToDictionary(group => group.Key, group => group.First().Sequence);
        var (doubled, misplaced, found) = (taps.Count - bySequence.Count, 0, 0);
        foreach (var phone in phones)
        {
            var placed = phone.Taps.Where(tap => bySequence.ContainsKey(tap.Id)).Select(tap => bySequence[tap.Id]).ToList();
            found += placed.Count;
            misplaced += placed.Zip(placed.Skip(1)).Count(pair => pair.First > pair.Second);
            var lane = frame.Lanes.Single(lane => lane.Lane == phone.Lane);
            misplaced += lane.Open == 1 + phone.Taps.Count(tap => tap is HeatFact.StepDone) ? 0 : 1;
            doubled += Math.Max(0, lane.NoReps - phone.Taps.Count(tap => tap is HeatFact.NoRep));
        }

        return new TortureReport(
            killed, cut, phones.Sum(phone => phone.Taps.Count), phones.Sum(phone => phone.Receipted.Count), found, doubled, misplaced, phones.Sum(phone => phone.Refused));
    }
}
