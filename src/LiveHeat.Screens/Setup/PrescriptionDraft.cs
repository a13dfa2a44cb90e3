using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Setup;

/// <summary>A division's amount of the work while it is written.</summary>
public sealed class PrescriptionDraft
{
    public required string Division { get; init; }

    public required string DivisionName { get; init; }

    /// <summary>m:ss as typed.</summary>
    public string Cap { get; set; } = "12:00";

    public string Rounds { get; set; } = "4";

    /// <summary>The set whose end breaks ties.</summary>
    public TiebreakDraft Tiebreak { get; set; } = TiebreakDraft.None;

    public ClockDraft Clock { get; private init; } = new();

    public List<PartDraft> Parts { get; } = [];

    public List<SetDraft> Before { get; } = [];

    public List<SetDraft> Round { get; } = [];

    public List<SetDraft> After { get; } = [];

    /// <summary>One that is there.</summary>
    /// <param name="prescription">It.</param>
    /// <param name="scoring">How the workout is scored: where no rounds are counted, their number is not shown.</param>
    public static PrescriptionDraft Of(Prescription prescription, ScoringDraft scoring)
    {
        var draft = new PrescriptionDraft
        {
            Division = prescription.Division,
            DivisionName = prescription.DivisionName,
            Cap = TimeWords.Clock(prescription.CapMs),
            Tiebreak = TiebreakDraft.Of(prescription.Tiebreak),
            Clock = ClockDraft.Of(prescription.Clock),
        };
        draft.Parts.AddRange((prescription.Parts ?? []).Select(part => new PartDraft { Name = part.Name, Last = part.Last }));
        draft.Rounds = prescription.Rounds == 0 && !scoring.HasRounds ? draft.Rounds : WorkoutDraft.Text(prescription.Rounds);
        draft.Before.AddRange(prescription.Before.Select(SetDraft.Of));
        draft.Round.AddRange(prescription.Round.Select(SetDraft.Of));
        draft.After.AddRange(prescription.After.Select(SetDraft.Of));
        return draft;
    }

    /// <summary>The same work for another division, to be changed from there.</summary>
    public PrescriptionDraft CopyFor(DivisionSetup division)
    {
        var copy = new PrescriptionDraft { Division = division.Id, DivisionName = division.Name, Cap = Cap, Rounds = Rounds, Tiebreak = Tiebreak, Clock = Clock.Copy() };
        copy.Parts.AddRange(Parts.Select(part => part.Copy()));
        copy.Before.AddRange(Before.Select(set => set.Copy()));
        copy.Round.AddRange(Round.Select(set => set.Copy()));
        copy.After.AddRange(After.Select(set => set.Copy()));
        return copy;
    }

    internal Prescription Make(WorkoutDraft workout, string at)
    {
        var (scoring, clock) = (workout.Scoring, workout.Scoring.MayFollowClock ? Clock.Make(workout, at) : null);
        var rounds = scoring.HasRounds || clock is not null ? workout.Number(Rounds, $"{at}.rounds") : 0;
        return new Prescription(
            Division, DivisionName, clock is null ? workout.Time(Cap, $"{at}.capMs") : (int)Math.Min(int.MaxValue, clock.LengthMs(rounds)), rounds,
            scoring.HasBefore && clock is null ? Sets(workout, Before, $"{at}.before") : [], Sets(workout, Round, $"{at}.round", clock is not null), scoring.HasAfter && clock is null ? Sets(workout, After, $"{at}.after") : [])
        {
            Tiebreak = Tiebreak.Make(workout, at),
            Clock = clock,
            Parts = Parts.Count == 0 || scoring.Kind == ScoringKind.HeaviestLoad ? null : Parts.Select((part, i) => new WorkoutPart(part.Name.Trim(), i == Parts.Count - 1 ? null : part.Last)).ToItems(),
        };
    }

    private static Items<PrescribedSet> Sets(WorkoutDraft workout, List<SetDraft> sets, string at, bool byClock = false) =>
        sets.Select((set, i) => set.Make(workout, WorkoutDraft.Path(at, i), byClock)).ToItems();
}

/// <summary>A set while it is written.</summary>
public sealed class SetDraft
{
    public string Movement { get; set; } = "";

    public string Quantity { get; set; } = "10";

    /// <summary>Empty: its quantity.</summary>
    public string Worth { get; set; } = "";

    public string Increment { get; set; } = "1";

    public string Load { get; set; } = "";

    /// <summary>It is completed by entering a machine's or a bar's value.</summary>
    public bool Reading { get; set; }

    /// <summary>Athletes at the same moment; empty for one alone.</summary>
    public string Together { get; set; } = "";

    /// <summary>The least that each does of a set that the team shares; empty where nothing is shared.</summary>
    public string MinimumEach { get; set; } = "";

    /// <summary>The round by the clock that it is done in; empty for every round.</summary>
    public string InRound { get; set; } = "";

    /// <summary>One that is there.</summary>
    public static SetDraft Of(PrescribedSet set) => new()
    {
        Movement = set.Movement,
        Quantity = WorkoutDraft.Text(set.Quantity),
        Worth = set.Worth is { } worth && worth != set.Quantity ? WorkoutDraft.Text(worth) : "",
        Increment = WorkoutDraft.Text(set.Increment),
        Load = set.Load ?? "",
        Reading = set.Reading,
        Together = set.Together is { } together ? WorkoutDraft.Text(together) : "",
        MinimumEach = set.MinimumEach is { } least ? WorkoutDraft.Text(least) : "",
        InRound = set.InRound is { } round ? WorkoutDraft.Text(round) : "",
    };

    /// <summary>Another one like it.</summary>
    public SetDraft Copy() => (SetDraft)MemberwiseClone();

    /// <summary>What was typed.</summary>
    /// <param name="workout">Where what cannot be read is told.</param>
    /// <param name="at">The field.</param>
    /// <param name="byClock">Its rounds begin by the clock: otherwise all sets are of every round.</param>
    internal PrescribedSet Make(WorkoutDraft workout, string at, bool byClock) => new(
        Movement, workout.Number(Quantity, $"{at}.quantity"), Worth.Trim().Length == 0 ? null : workout.Number(Worth, $"{at}.worth"),
        workout.Number(Increment, $"{at}.increment"), Load.Trim().Length == 0 ? null : Load.Trim(), Reading)
    {
        Together = Together.Trim().Length == 0 ? null : workout.Number(Together, $"{at}.together"),
        MinimumEach = MinimumEach.Trim().Length == 0 ? null : workout.Number(MinimumEach, $"{at}.minimumEach"),
        InRound = !byClock || InRound.Trim().Length == 0 ? null : workout.Number(InRound, $"{at}.inRound"),
    };
}
