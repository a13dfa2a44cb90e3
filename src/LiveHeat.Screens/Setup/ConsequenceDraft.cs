using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Setup;

/// <summary>What may follow when a variant is taken, as a form offers it.</summary>
public enum VariantChoice
{
    /// <summary>No place in the division.</summary>
    Apart,

    /// <summary>It counts like the prescribed work.</summary>
    Allowed,

    /// <summary>The workout's penalty.</summary>
    Penalty,

    /// <summary>After all who did as prescribed.</summary>
    RanksBelow,

    /// <summary>The result is void.</summary>
    Void,
}

/// <summary>A workout's penalty and consequences while they are written.</summary>
public sealed class ConsequenceDraft
{
    private Consequences? before;

    /// <summary>Minutes and seconds; empty: none.</summary>
    public string Time { get; set; } = "";

    /// <summary>A number; empty: none.</summary>
    public string Reps { get; set; } = "";

    public bool WarnFirst { get; set; } = true;

    public Consequence WrongAthlete { get; set; }

    public Consequence LineUpChange { get; set; }

    public VariantChoice Variant { get; set; }

    /// <summary>A workout's, or what holds where it says nothing.</summary>
    public static ConsequenceDraft Of(Workout workout) => new()
    {
        before = workout.Consequences,
        Time = workout.Penalty is { AddMs: > 0 and var ms } ? TimeWords.Exact(ms) : "",
        Reps = workout.Penalty is { Reps: > 0 and var reps } ? WorkoutDraft.Text(reps) : "",
        WarnFirst = workout.Penalty?.WarnFirst ?? true,
        WrongAthlete = workout.Consequences?.WrongAthlete ?? Consequence.Allowed,
        LineUpChange = workout.Consequences?.LineUpChange ?? Consequence.Allowed,
        Variant = workout.Consequences?.Variant is { } variant ? Enum.Parse<VariantChoice>(variant.ToString()) : VariantChoice.Apart,
    };

    /// <summary>The workout with what is written here; what cannot be read is noted in its draft.</summary>
    internal Workout Put(Workout workout, WorkoutDraft draft) => workout with { Penalty = Penalty(draft), Consequences = Make() };

    /// <summary>Nothing is said where all is as usual, as before there was a choice.</summary>
    private Consequences? Make()
    {
        var made = new Consequences(WrongAthlete, LineUpChange) { Variant = Variant == VariantChoice.Apart ? null : Enum.Parse<Consequence>(Variant.ToString()) };
        return made == (before ?? new Consequences()) ? before : made;
    }

    private PenaltyRule? Penalty(WorkoutDraft draft) => string.IsNullOrWhiteSpace(Time) && string.IsNullOrWhiteSpace(Reps) ? null : new PenaltyRule(
        string.IsNullOrWhiteSpace(Time) ? 0 : draft.Time(Time, "penalty.addMs"), string.IsNullOrWhiteSpace(Reps) ? 0 : draft.Number(Reps, "penalty.reps"), WarnFirst);
}
