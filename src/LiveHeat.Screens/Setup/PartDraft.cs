using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Setup;

/// <summary>A part that is scored apart while it is written.</summary>
public sealed class PartDraft
{
    public string Name { get; set; } = "";

    /// <summary>The set it ends with; nothing for the last.</summary>
    public TiebreakSet? Last { get; set; }

    /// <summary>Another one like it.</summary>
    public PartDraft Copy() => (PartDraft)MemberwiseClone();
}

/// <summary>Rounds by the clock while they are written: times as typed.</summary>
public sealed class ClockDraft
{
    /// <summary>Whether the rounds begin by the clock at all.</summary>
    public bool On { get; set; }

    public string Work { get; set; } = "3:00";

    public string Rest { get; set; } = "1:00";

    public bool Repeat { get; set; } = true;

    /// <summary>Another one like it.</summary>
    public ClockDraft Copy() => (ClockDraft)MemberwiseClone();

    /// <summary>What is there, or the usual, switched off.</summary>
    public static ClockDraft Of(WorkClock? clock) => clock is null
        ? new ClockDraft()
        : new ClockDraft { On = true, Work = Words.TimeWords.Clock(clock.WorkMs), Rest = Words.TimeWords.Clock(clock.RestMs), Repeat = clock.Repeat };

    internal WorkClock? Make(WorkoutDraft workout, string at) => On
        ? new WorkClock(workout.Time(Work, $"{at}.clock"), workout.Time(Rest, $"{at}.clock"), Repeat)
        : null;
}
