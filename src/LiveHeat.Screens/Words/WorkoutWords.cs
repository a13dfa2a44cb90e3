using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Setup;

namespace LiveHeat.Screens.Words;

/// <summary>The form of a workout.</summary>
public static class WorkoutWords
{
    private static readonly Wording Words = new(typeof(WorkoutWords));

    public static string Name => Words[nameof(Name)];
    public static string NeedsNumber => Words[nameof(NeedsNumber)];
    public static string NeedsSeconds => Words[nameof(NeedsSeconds)];
    public static string NeedsTime => Words[nameof(NeedsTime)];

    public static string Order => Words[nameof(Order)];
    public static string BlockSize => Words[nameof(BlockSize)];
    public static string ListedLabel => Words[nameof(ListedLabel)];
    public static string ListedHelp => Words[nameof(ListedHelp)];
    public static string Counting => Words[nameof(Counting)];
    public static string CheckpointEvery => Words[nameof(CheckpointEvery)];
    public static string Finish => Words[nameof(Finish)];

    public static string Movements => Words[nameof(Movements)];
    public static string MovementName => Words[nameof(MovementName)];
    public static string Unit => Words[nameof(Unit)];
    public static string Seconds => Words[nameof(Seconds)];
    public static string SecondsHelp => Words[nameof(SecondsHelp)];
    public static string Fastest => Words[nameof(Fastest)];
    public static string FastestHelp => Words[nameof(FastestHelp)];
    public static string Standard => Words[nameof(Standard)];
    public static string InShort => Words[nameof(InShort)];
    public static string InShortHelp => Words[nameof(InShortHelp)];
    public static string Faults => Words[nameof(Faults)];
    public static string AddMovement => Words[nameof(AddMovement)];

    public static string Work => Words[nameof(Work)];
    public static string Cap => Words[nameof(Cap)];
    public static string Rounds => Words[nameof(Rounds)];
    public static string Before => Words[nameof(Before)];
    public static string Round => Words[nameof(Round)];
    public static string Lifted => Words[nameof(Lifted)];
    public static string After => Words[nameof(After)];
    public static string AddSet => Words[nameof(AddSet)];
    public static string Quantity => Words[nameof(Quantity)];
    public static string Movement => Words[nameof(Movement)];
    public static string Load => Words[nameof(Load)];
    public static string Worth => Words[nameof(Worth)];
    public static string WorthHelp => Words[nameof(WorthHelp)];
    public static string Increment => Words[nameof(Increment)];
    public static string Reading => Words[nameof(Reading)];
    public static string Remove => Words[nameof(Remove)];
    public static string Up => Words[nameof(Up)];
    public static string PreviewHelp => Words[nameof(PreviewHelp)];
    public static string Somebody => Words[nameof(Somebody)];

    public static string AddDivision(string division) => Words.Say(nameof(AddDivision), division);

    public static string Preview(string division) => Words.Say(nameof(Preview), division);

    public static string OrderOf(OrderKind order) => Words[$"{nameof(OrderOf)}.{order}"];

    public static string CountingOf(Counting counting) => Words[$"{nameof(CountingOf)}.{counting}"];

    public static string FinishOf(FinishKind finish) => Words[$"{nameof(FinishOf)}.{finish}"];

    public static string UnitOf(Unit unit) => Words[$"{nameof(UnitOf)}.{unit}"];

    public static string Removed(string what) => Words.Say(nameof(Removed), what);

    public static string MoreSteps(int count, string expected) => Words.Count(nameof(MoreSteps), count, expected);
}
