using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Words;

/// <summary>The form of work that is synchronised, shared, driven by the clock or scored in parts.</summary>
public static class ShapeWords
{
    private static readonly Wording Words = new(typeof(ShapeWords));

    public static string Together => Words[nameof(Together)];
    public static string MinimumEach => Words[nameof(MinimumEach)];
    public static string InRound => Words[nameof(InRound)];
    public static string SharedHelp => Words[nameof(SharedHelp)];
    public static string ByClock => Words[nameof(ByClock)];
    public static string ClockWork => Words[nameof(ClockWork)];
    public static string ClockRest => Words[nameof(ClockRest)];
    public static string ClockRepeat => Words[nameof(ClockRepeat)];
    public static string ClockHelp => Words[nameof(ClockHelp)];
    public static string Parts => Words[nameof(Parts)];
    public static string PartsHelp => Words[nameof(PartsHelp)];
    public static string PartName => Words[nameof(PartName)];
    public static string PartEnds => Words[nameof(PartEnds)];
    public static string ToTheEnd => Words[nameof(ToTheEnd)];
    public static string AddPart => Words[nameof(AddPart)];

    /// <summary>A set by its place and what it is.</summary>
    public static string Place(TiebreakSet place, string set) => place.Round switch
    {
        0 => PlaceBefore(set),
        { } round => PlaceRound(round, set),
        null => PlaceAfter(set),
    };

    /// <summary>A round by the clock that a part may end with.</summary>
    public static string RoundEnds(int round) => Words.Say(nameof(RoundEnds), round);

    public static string LengthOf(string cap) => Words.Say(nameof(LengthOf), cap);

    private static string PlaceBefore(string set) => Words.Say(nameof(PlaceBefore), set);

    private static string PlaceRound(int round, string set) => Words.Say(nameof(PlaceRound), round, set);

    private static string PlaceAfter(string set) => Words.Say(nameof(PlaceAfter), set);
}
