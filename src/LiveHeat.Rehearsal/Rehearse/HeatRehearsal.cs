using LiveHeat.Contracts.Programme;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Heats;
using LiveHeat.Rehearsal.Demo;
using LiveHeat.Rehearsal.Judging;
using LiveHeat.Rehearsal.Phones;

namespace LiveHeat.Rehearsal.Rehearse;

/// <summary>Plays the demo competition on a real server: sets it up, brings a judge with a phone to every lane, and runs its heats.</summary>
public sealed class HeatRehearsal(RehearsalOptions options)
{
    private static readonly TimeSpan BetweenHeats = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan BetweenHeatsInHaste = TimeSpan.FromSeconds(15);
    private static readonly string[] Judges = ["Alma", "Boris", "Celia", "Dunja", "Elias", "Fatou", "Goran", "Hilde", "Ivo", "Juno"];
    private const double WallErrorMostMs = 4_000;
    private const int FirstHeatInMs = 60_000;

    private readonly TimeProvider time = options.Time;

    /// <summary>Runs until the scripted heats are certified, or, without <see cref="RehearsalOptions.UntilCertified"/>, until stopped.</summary>
    /// <exception cref="SiteRefusedException">The server refused what the rehearsal needs, such as the passphrase.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public async Task<RehearsalOutcome> Run(IProgress<string> say, CancellationToken cancellation)
    {
        using var ending = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        using var organiser = new Desk(options.Server, time);
        using var headJudge = new Desk(options.Server, time);
        await organiser.SignIn(options.Passphrase, "Organiser", cancellation).ConfigureAwait(false);
        var programme = await SetUp(organiser, say, cancellation).ConfigureAwait(false);
        var codes = await MakeCodes(organiser, headJudge, cancellation).ConfigureAwait(false);

        var phones = codes.ToDictionary(code => code.Key, code => NewPhone(code.Key));
        List<Task> judges = [];
        try
        {
            judges.AddRange(codes.Select(code => Judge(phones[code.Key], code.Key, code.Value, organiser, say, ending.Token)));
            var script = Script(programme, organiser, headJudge, say, ending.Token);
            // A judge only stops when something is wrong.
            var first = await Task.WhenAny([script, .. judges]).ConfigureAwait(false);
            await first.ConfigureAwait(false);
            return new RehearsalOutcome(await script.ConfigureAwait(false));
        }
        finally
        {
            await ending.CancelAsync().ConfigureAwait(false);
            await Task.WhenAll(judges).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            await Task.WhenAll(phones.Values.Select(phone => phone.DisposeAsync().AsTask())).ConfigureAwait(false);
        }
    }

    private LaneNumber? Free => options.FreeLane ? DemoCompetition.FreeLane : null;

    private async Task<ProgramList> SetUp(Desk organiser, IProgress<string> say, CancellationToken stopping)
    {
        var programme = await organiser.Programme(stopping).ConfigureAwait(false);
        if (programme.Heats.Count > 0)
        {
            return programme;
        }

        var setup = DemoCompetition.Make(programme.ServerNow + FirstHeatInMs);
        await organiser.SetUp(setup, stopping).ConfigureAwait(false);
        say.Report($"{DemoCompetition.Name} is set up: {setup.Teams.Count} teams, {setup.Heats.Count} heats.");
        return await organiser.Programme(stopping).ConfigureAwait(false);
    }

    private async Task<Dictionary<LaneNumber, string>> MakeCodes(Desk organiser, Desk headJudge, CancellationToken stopping)
    {
        var head = await organiser.Code(Role.HeadJudge, null, stopping).ConfigureAwait(false);
        await headJudge.Join(head.Code, "Head judge", stopping).ConfigureAwait(false);
        var announcer = await organiser.Code(Role.Announcer, null, stopping).ConfigureAwait(false);
        var codes = new Dictionary<LaneNumber, Contracts.Access.CodeMade>();
        for (var lane = 1; lane <= DemoCompetition.Lanes; lane++)
        {
            codes[new LaneNumber(lane)] = await organiser.Code(Role.Judge, new LaneNumber(lane), stopping).ConfigureAwait(false);
        }

        options.CodesMade?.Invoke(new VisitorCodes(head, announcer, Free is { } free ? codes[free] : null));
        return codes.ToDictionary(code => code.Key, code => code.Value.Code);
    }

    private SimulatedPhone NewPhone(LaneNumber lane)
    {
        var random = Seeds.For(options.Seed, lane.ToString(), "phone");
        return new SimulatedPhone(new PhoneMake(options.Server, time, random)
        {
            Crystal = options.PhoneClock,
            WallErrorMs = random.Between(-WallErrorMostMs, WallErrorMostMs),
        });
    }

    private Task Judge(SimulatedPhone phone, LaneNumber lane, string code, Desk desk, IProgress<string> say, CancellationToken stopping)
    {
        var judge = new LaneJudge(phone, new JudgeManner(time, options.Seed) { Spared = Free });
        return lane == Free
            ? StandIn(phone, judge, code, new FreeLaneScript(desk, lane, time), say, stopping)
            : Attend(phone, judge, code, lane, stopping);
    }

    private static async Task Attend(SimulatedPhone phone, LaneJudge judge, string code, LaneNumber lane, CancellationToken stopping)
    {
        await phone.Join(code, NameOf(lane), stopping).ConfigureAwait(false);
        await (await Task.WhenAny(phone.Life, judge.Run(stopping)).ConfigureAwait(false)).ConfigureAwait(false);
    }

    /// <summary>The free lane's judge comes only when no visitor did.</summary>
    private static async Task StandIn(SimulatedPhone phone, LaneJudge judge, string code, FreeLaneScript free, IProgress<string> say, CancellationToken stopping)
    {
        while (true)
        {
            var heat = await free.UntilNobodyCame(stopping).ConfigureAwait(false);
            say.Report($"Nobody took lane {DemoCompetition.FreeLane}: a simulated judge does.");
            if (phone.Pad is null)
            {
                await phone.Join(code, NameOf(DemoCompetition.FreeLane), stopping).ConfigureAwait(false);
            }

            await (await Task.WhenAny(phone.Life, judge.Judge(heat, stopping)).ConfigureAwait(false)).ConfigureAwait(false);
        }
    }

    private static string NameOf(LaneNumber lane) => Judges[(lane.Value - 1) % Judges.Length];

    /// <summary>Heat after heat; the review of one goes on while the next is called and started.</summary>
    private async Task<IReadOnlyList<ResultTable>> Script(ProgramList programme, Desk organiser, Desk headJudge, IProgress<string> say, CancellationToken stopping)
    {
        var heats = programme.Heats.OrderBy(heat => heat.Number).Take(options.Heats).ToList();
        var starts = heats.Select(_ => new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously)).ToList();
        var reviews = new List<Task>();
        for (var i = 0; i < heats.Count; i++)
        {
            await new FloorScript(organiser, headJudge, time, say).Run(heats[i].Heat, heats[i].Title, starts[i], stopping).ConfigureAwait(false);
            var nextRuns = i + 1 < starts.Count ? starts[i + 1].Task : Task.CompletedTask;
            reviews.Add(new ReviewScript(organiser, headJudge, time, say).Run(heats[i].Heat, heats[i].Title, nextRuns, stopping));
            await Task.Delay(options.UntilCertified ? BetweenHeatsInHaste : BetweenHeats, time, stopping).ConfigureAwait(false);
        }

        await Task.WhenAll(reviews).ConfigureAwait(false);
        if (!options.UntilCertified)
        {
            say.Report("What is left of the programme is yours: call the next heat from the desk, the judges are there.");
            await Task.Delay(Timeout.InfiniteTimeSpan, time, stopping).ConfigureAwait(false);
        }

        var results = new List<ResultTable>();
        foreach (var heat in heats)
        {
            results.Add(await organiser.Result(heat.Heat, stopping).ConfigureAwait(false));
        }

        return results;
    }
}
