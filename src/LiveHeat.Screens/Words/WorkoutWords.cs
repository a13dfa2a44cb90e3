using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Setup;

namespace LiveHeat.Screens.Words;

/// <summary>The form of a workout.</summary>
public static class WorkoutWords
{
    public const string Name = "Name of the workout";
    public const string NeedsNumber = "Write a whole number.";
    public const string NeedsSeconds = "Write seconds, such as 2.5.";
    public const string NeedsTime = "Write minutes and seconds, such as 12:00.";

    public const string Order = "Who does what";
    public const string BlockSize = "Rounds in a block";
    public const string ListedLabel = "Who does each round";
    public const string ListedHelp = "Athletes' numbers in the team, such as 1, 2, 1, 3. A short list starts again from its beginning.";
    public const string Counting = "What judges report";
    public const string CheckpointEvery = "A report every so many";
    public const string Finish = "After the last work";

    public const string Movements = "Movements";
    public const string MovementName = "Movement, as said on the floor";
    public const string Unit = "Counted in";
    public const string Seconds = "Seconds for one, expected";
    public const string SecondsHelp = "For the width of the strip and the pace. Never a judgement.";
    public const string Fastest = "Nobody is faster than";
    public const string FastestHelp = "An earlier tap must be held on the phone.";
    public const string Standard = "What a good one is";
    public const string InShort = "In short";
    public const string InShortHelp = "Empty: made of start and finish.";
    public const string Faults = "Reasons for a no-rep, one a line";
    public const string AddMovement = "Add a movement";

    public const string Work = "Work by division";
    public const string Cap = "Time cap (m:ss)";
    public const string Rounds = "Rounds";
    public const string Before = "Before the rounds";
    public const string Round = "In each round";
    public const string Lifted = "What is lifted";
    public const string After = "After the rounds";
    public const string AddSet = "Add";
    public const string Quantity = "How many";
    public const string Movement = "Movement";
    public const string Load = "Load";
    public const string Worth = "Worth";
    public const string WorthHelp = "Empty: as many points as reps. A 400 m run is not 400 reps.";
    public const string Increment = "Counts in steps of";
    public const string Reading = "A value is entered";
    public const string Remove = "Remove";
    public const string Up = "Up";
    public const string AddDivision = "does this workout too";
    public const string Preview = "What a lane does";
    public const string PreviewHelp = "With a team of four: A, B, C, D.";
    public const string Somebody = "whole team";

    public static string OrderOf(OrderKind order) => order switch
    {
        OrderKind.InTurn => "one round each in turn: A, B, C, A …",
        OrderKind.Blocks => "several rounds each before the tag: A, A, B, B …",
        OrderKind.EachMovement => "a tag after every movement",
        OrderKind.Listed => "as written in a list",
        _ => "the team as one, nobody tags",
    };

    public static string CountingOf(Counting counting) => counting == Engine.Workouts.Counting.Sets ? "whole sets only" : "reps, at checkpoints within a set";

    public static string FinishOf(FinishKind finish) => finish switch { FinishKind.None => "nothing more", FinishKind.Line => "across a line", _ => "all on a mat" };

    public static string UnitOf(Unit unit) => unit switch
    {
        Engine.Workouts.Unit.Reps => "reps",
        Engine.Workouts.Unit.Cal => "calories",
        Engine.Workouts.Unit.M => "metres",
        Engine.Workouts.Unit.Lb => "pounds",
        _ => "kilograms",
    };

    public static string Removed(string what) => $"{what} is removed.";

    public static string MoreSteps(int count, string expected) => $"… {count} steps in all, about {expected} at the expected pace.";
}
