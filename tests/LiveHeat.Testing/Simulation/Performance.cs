using System.Text;
using System.Text.Json;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Integrity;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;
using LiveHeat.Ledger.Facts;
using Microsoft.Extensions.Time.Testing;

namespace LiveHeat.Testing.Simulation;

/// <summary>A tap that a phone had on its disk, and when it truly was.</summary>
/// <param name="Phone">Whose.</param>
/// <param name="Lane">The lane.</param>
/// <param name="Moment">What was seen.</param>
/// <param name="Id">Its id at the end.</param>
/// <param name="Body">The tap as canonical JSON.</param>
internal sealed record MadeTap(string Phone, int Lane, Moment Moment, FactId Id, string Body);

/// <summary>What a performance left behind.</summary>
/// <param name="Plot">What was played.</param>
/// <param name="GoAt">The instant of GO.</param>
/// <param name="Taps">All taps stored on phones.</param>
/// <param name="Lines">The ledger's lines, read from the file.</param>
/// <param name="State">The session's state.</param>
/// <param name="Result">The result.</param>
/// <param name="Held">Taps that waited for the head judge at the end.</param>
/// <param name="Trouble">What went wrong on the way.</param>
internal sealed record Played(
    Plot Plot, Instant GoAt, IReadOnlyList<MadeTap> Taps, IReadOnlyList<LedgerLine> Lines, HeatState State, ResultTable Result, int Held, IReadOnlyList<string> Trouble);

/// <summary>Plays a plot against the real session and ledger.</summary>
internal sealed class Performance : IDisposable
{
    private const int Onlookers = 3;
    private const double LongestMs = 180_000;
    private static readonly Instant Go = new(1_795_600_000_000);

    private readonly Plot plot;
    private readonly FakeTimeProvider time = new(DateTimeOffset.FromUnixTimeMilliseconds(Go.UnixMs + (long)Plot.CallMs));
    private readonly Agenda agenda;
    private readonly Venue venue;
    private readonly Random chance;
    private readonly List<Onlooker> onlookers;
    private readonly List<(int Lane, PlayedPhone Phone)> phones = [];
    private readonly Dictionary<(int Lane, int Moment), FactId> ids = [];
    private readonly List<string> trouble = [];
    private bool pushing;

    private Performance(Plot plot, HeatId heat, HeatLedger ledger)
    {
        this.plot = plot;
        chance = new Random(plot.Seed);
        agenda = new Agenda(time, Go.UnixMs);
        venue = new Venue(ledger, heat, time, Plotting.Snapshot(plot));
        onlookers = [.. Enumerable.Range(0, Onlookers).Select(_ => new Onlooker(agenda, chance, time, heat))];
    }

    /// <summary>Plays it.</summary>
    public static async Task<Played> Of(Plot plot, HeatId heat, HeatLedger ledger)
    {
        using var performance = new Performance(plot, heat, ledger);
        return await performance.Play();
    }

    /// <inheritdoc/>
    public void Dispose() => venue.Dispose();

    private async Task<Played> Play()
    {
        await venue.Start();
        await venue.Ask(id => new HeatCommand.Call { Id = id });
        venue.Changed += () => SoonPush(chance.Next(1, 100));
        plot.Lanes.ToList().ForEach(PutOn);
        foreach (var down in plot.ServerDown)
        {
            agenda.At(down.FromMs, venue.Stop);
            agenda.At(down.UntilMs, venue.Start);
        }

        await agenda.RunUntil(Plot.StartMs);
        await WhileUp(async () =>
        {
            await venue.Ask(id => new HeatCommand.OverrideReady { Id = id, Lanes = plot.Lanes.Select(lane => new LaneNumber(lane.Lane)).ToItems(), Reason = "all stand ready" });
            await venue.Ask(id => new HeatCommand.ScheduleStart { Id = id, InMs = (int)-agenda.NowMs });
        });
        await agenda.RunUntil(plot.HealedMs);
        return await End();
    }

    /// <summary>All faults are over: everything must arrive by itself.</summary>
    private async Task<Played> End()
    {
        phones.ForEach(phone => phone.Phone.Heal());
        for (var atMs = plot.HealedMs; phones.Exists(phone => !phone.Phone.AllSent) && atMs < plot.HealedMs + LongestMs; atMs += 500)
        {
            await agenda.RunUntil(atMs);
        }

        var held = 0;
        await WhileUp(async () =>
        {
            await venue.Ask(id => new HeatCommand.End { Id = id });
            held = await venue.AdmitAll();
        });
        await agenda.RunUntil(agenda.NowMs + 10_000);
        await LookAtScreens();
        var session = venue.Session;
        return new Played(
            plot, Go,
            [.. from line in phones from tap in line.Phone.Taps select new MadeTap(line.Phone.SignedIn.Name, line.Lane, tap.Moment, tap.Fact.Id, CanonicalJson.Text(tap.Json))],
            await venue.Lines(), session.State, ResultMaking.Of(session.State, session.HeadHash, new Instant(time.GetUtcNow().ToUnixTimeMilliseconds()))!, held,
            [.. trouble, .. phones.SelectMany(line => line.Phone.Trouble)]);
    }

    private void PutOn(LanePlot lane)
    {
        var first = new PlayedPhone(lane.First, lane.Lane, agenda, venue);
        var second = lane.Second is { } other ? new PlayedPhone(other, lane.Lane, agenda, venue) : null;
        phones.Add((lane.Lane, first));
        agenda.At(Plot.SeatsMs, first.TakeSeat);
        if (second is not null)
        {
            phones.Add((lane.Lane, second));
            agenda.At(lane.TakeoverMs, second.TakeSeat);
        }

        foreach (var moment in lane.Story)
        {
            // The judge goes on with the old phone until the new one says that it has the lane.
            agenda.At(moment.AtMs, () =>
            {
                var phone = second is { Seat: not null } ? second : first;
                ids[(lane.Lane, moment.Number)] = phone.Tap(moment, number => ids[(lane.Lane, number)]).Fact.Id;
            });
        }
    }

    private void SoonPush(double afterMs)
    {
        if (pushing)
        {
            return;
        }

        pushing = true;
        agenda.At(agenda.NowMs + afterMs, () =>
        {
            pushing = false;
            if (venue.IsDown)
            {
                return;
            }

            var frame = venue.Frame();
            onlookers.ForEach(onlooker => onlooker.Push(frame));
            phones.ForEach(line => line.Phone.Push(frame, chance.Next(2, 900), lost: chance.Next(5) == 0));
            SoonPush(5_000);
        });
    }

    private async Task WhileUp(Func<Task> work)
    {
        while (venue.IsDown)
        {
            await agenda.RunUntil(agenda.NowMs + 100);
        }

        await work();
    }

    /// <summary>Every screen asks for the newest; what all of them ever showed is what the facts up to it come to.</summary>
    private async Task LookAtScreens()
    {
        using var rebuilt = await venue.Another();
        var newest = venue.Frame();
        onlookers.ForEach(onlooker => onlooker.Take(newest));
        if (rebuilt.State != venue.Session.State || rebuilt.HeadHash != venue.Session.HeadHash || Bytes(rebuilt.Frame()) != Bytes(newest))
        {
            trouble.Add("A session rebuilt from the file is not the one that ran.");
        }

        foreach (var onlooker in onlookers)
        {
            if (Bytes(onlooker.Frame) != Bytes(rebuilt.Frame()))
            {
                trouble.Add("A screen that asked for the newest does not show the fold of the ledger.");
            }

            if (onlooker.Shown.Zip(onlooker.Shown.Skip(1)).Any(pair => pair.First.Sequence > pair.Second.Sequence))
            {
                trouble.Add("A screen went back to an older frame.");
            }
        }

        foreach (var shown in onlookers.Select(onlooker => onlooker.Shown[chance.Next(onlooker.Shown.Count)]))
        {
            var then = HeatState.Fold(rebuilt.Heat, rebuilt.State.Entries.TakeWhile(entry => entry.Sequence <= shown.Sequence));
            var same = FrameMaking.Of(then, LiveOrder.Of(then), shown.News, shown.Epoch, shown.MadeAt);
            if (Bytes(same) != Bytes(shown))
            {
                trouble.Add($"The frame of {shown.Sequence} is not what the facts up to it come to.");
            }
        }
    }

    private static string Bytes(Frame? frame) => Encoding.UTF8.GetString(JsonSerializer.SerializeToUtf8Bytes(frame, WireJson.Options));
}
