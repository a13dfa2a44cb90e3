using System.Globalization;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Briefing;

/// <summary>The words of a briefing.</summary>
internal static class BriefingWords
{
    /// <summary>What is usually said before a heat; words of our own.</summary>
    public static readonly IReadOnlyList<string> Cautions =
    [
        "Stop at once when you feel pain, or when you are dizzy or short of breath in a way you do not know. Tell your judge.",
        "Medical staff may stop anyone at any time, and nobody argues.",
        "On a hot day: drink, keep cool until you are called, and say early that you feel unwell.",
        "Local rules and licensed practice come first, whatever is written here.",
        "This software is no safety device: it watches over nobody and calls nobody.",
    ];

    /// <summary>The tag where the workout says nothing of its own. Common practice, no source; the faults are those of the pad.</summary>
    public static readonly SheetMovement UsualTag = new(
        Movement.TagId, "tag", Unit.Reps, "The athlete coming in and the athlete going out touch hands at every change. Until they have, the next athlete may not start.", null,
        [new("no touch", "The hands did not meet."), new("left too early", "The next athlete was on the way before the touch.")]);

    /// <summary>Where nothing is to be told about a heat that is not there.</summary>
    public const string NoHeat = "No such heat";
    public const string NoHeatNext = "No heat of this name was set up here. Look at the address again, or set the heat up at the desk, under Setup.";
    public const string NobodyOnLanes = "No team stands on a lane of this heat yet, so all divisions are shown. Put teams on lanes at the desk, under Setup.";
    public const string NoStandard = "Nobody has written this standard down yet. Write it at the desk, under Setup, or let the head judge say it aloud.";
    public const string NoFaults = "No faults are named. A no-rep is given without a reason; the head judge says what counts.";

    /// <summary>Over a movement's faults.</summary>
    public static string FaultsOf(SheetMovement movement) => movement.Id == Movement.TagId ? "Tag fault" : "No-rep";

    public static string Count(int number, string what) => string.Create(CultureInfo.InvariantCulture, $"{number} {what}");

    public static string Count(string what, int number) => string.Create(CultureInfo.InvariantCulture, $"{what} {number}");

    /// <summary>What stands over the sets that are repeated; null where none are.</summary>
    public static string? Rounds(Workout workout, Prescription prescription) => workout.Scoring switch
    {
        ScoringRule.MostWork => "Again and again until the time cap",
        ScoringRule.HeaviestLoad { Attempts: 1 } => "1 attempt at",
        ScoringRule.HeaviestLoad load => Count(load.Attempts, "attempts each at"),
        _ => prescription.Rounds switch { 0 => null, 1 => "1 round of", var rounds => Count(rounds, "rounds of") },
    };

    public static BriefedSet Set(PrescribedSet set, Movement movement, ScoringRule? scoring)
    {
        var what = movement.Unit switch
        {
            _ when set.Reading && scoring is ScoringRule.MostReading => movement.Name,
            Unit.Cal => Count(set.Quantity, $"cal {movement.Name}"),
            Unit.M => Count(set.Quantity, $"m {movement.Name}"),
            Unit.Kg or Unit.Lb => movement.Name,
            _ => Count(set.Quantity, movement.Name),
        };
        string?[] notes =
        [
            set.Load,
            set.Worth is { } worth && worth != set.Quantity ? Count("counts as", worth) : null,
            set.Increment > 1 ? Count("counted in steps of", set.Increment) : null,
            set.Reading || scoring is ScoringRule.HeaviestLoad ? movement.Unit is Unit.Kg or Unit.Lb ? "the judge enters the load" : "the judge enters the reading" : null,
        ];
        return new BriefedSet(what, string.Join(" · ", notes.Where(note => !string.IsNullOrWhiteSpace(note))));
    }
}
