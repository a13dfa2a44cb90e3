using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Rehearsal.Phones;

namespace LiveHeat.Rehearsal.Judging;

/// <summary>How a judge of the rehearsal judges.</summary>
/// <param name="Time">What everything waits by.</param>
/// <param name="Seed">Of teams and mistakes.</param>
public sealed record JudgeManner(TimeProvider Time, int Seed)
{
    public MistakeRates Rates { get; init; } = MistakeRates.Usual;

    /// <summary>A lane without trouble of its own; null: none.</summary>
    public LaneNumber? Spared { get; init; }
}

/// <summary>A volunteer with a phone who judges a lane, heat after heat.</summary>
public sealed class LaneJudge(SimulatedPhone phone, JudgeManner manner)
{
    private static readonly TimeSpan LookAgain = TimeSpan.FromSeconds(3);

    private readonly HashSet<HeatId> judged = [];

    /// <summary>Judges every heat that the lane is called to, until stopped.</summary>
    public async Task Run(CancellationToken stopping)
    {
        while (true)
        {
            var called = phone.ProgramChanged.Next;
            if (await HeatToJudge(stopping).ConfigureAwait(false) is { } heat)
            {
                await Judge(heat, stopping).ConfigureAwait(false);
            }
            else
            {
                await manner.Time.For(LookAgain, called, stopping).ConfigureAwait(false);
            }
        }
    }

    /// <summary>Judges one heat from the call to the score read back.</summary>
    public async Task Judge(HeatId heat, CancellationToken stopping)
    {
        judged.Add(heat);
        var random = Seeds.For(manner.Seed, heat.Value, phone.Lane.ToString(), "judge");
        await phone.Enter(heat, stopping).ConfigureAwait(false);
        await Pause(random.Between(2, 8), stopping).ConfigureAwait(false);
        if (!await Sit(stopping).ConfigureAwait(false))
        {
            return;
        }

        await Pause(random.Between(3, 12), stopping).ConfigureAwait(false);
        var day = new FloorDay(manner.Seed);
        var story = LaneStory.Of(phone.Sheet!, day, manner.Seed, manner.Spared)[phone.Lane];
        var watch = new LaneWatch(phone, manner.Time);
        while (await watch.UntilWork(stopping).ConfigureAwait(false))
        {
            var team = new SimulatedTeam(phone.Sheet!, phone.Line!, story, day, manner.Rates, random);
            await new LaneWork(phone, watch, team, story, manner.Time, random).Follow(stopping).ConfigureAwait(false);
        }

        await phone.UntilSafe(stopping).ConfigureAwait(false);
    }

    /// <returns>False when the heat was closed meanwhile.</returns>
    private async Task<bool> Sit(CancellationToken stopping)
    {
        try
        {
            await phone.TakeSeat(Duty.Primary, stopping).ConfigureAwait(false);
            return true;
        }
        catch (SiteRefusedException refused) when (refused.Code == "wrong-phase")
        {
            return false;
        }
    }

    private async Task<HeatId?> HeatToJudge(CancellationToken stopping)
    {
        try
        {
            return (await phone.ReadPad(stopping).ConfigureAwait(false)).Heat is { Phase: < Phase.Ended } heat && !judged.Contains(heat.Id) ? heat.Id : null;
        }
        catch (Exception trouble) when (trouble is SiteSilentException or SiteRefusedException { MayPass: true })
        {
            return null;
        }
    }

    private Task Pause(double seconds, CancellationToken stopping) => Task.Delay(TimeSpan.FromSeconds(seconds), manner.Time, stopping);
}
