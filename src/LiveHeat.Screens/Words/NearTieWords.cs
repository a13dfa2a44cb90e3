using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Screens.Words;

/// <summary>What was too close to measure.</summary>
public static class NearTieWords
{
    private static readonly Wording Words = new(typeof(NearTieWords));

    public static string Heading => Words[nameof(Heading)];
    public static string Help => Words[nameof(Help)];
    public static string Tie => Words[nameof(Tie)];
    public static string InTime => Words[nameof(InTime)];
    public static string TooLate => Words[nameof(TooLate)];
    public static string ReplayHappened => Words[nameof(ReplayHappened)];
    public static string ReplayKnown => Words[nameof(ReplayKnown)];
    public static string Export => Words[nameof(Export)];

    public static string First(string team) => Words.Say(nameof(First), team);

    public static string Says(NearTie tie, Func<LaneNumber, string> name) => tie.AtCap
        ? Words.Say(
            $"{nameof(Says)}.{(tie.ApartMs > 0 ? "After" : "Before")}{(tie.Round is null ? "Cap" : "Round")}",
            tie.Lanes[0], name(tie.Lanes[0]), SecondsText.Of(Math.Abs(tie.ApartMs)), SecondsText.Of(tie.WithinMs), tie.Round)
        : Words.Say(
            $"{nameof(Says)}.Two",
            tie.Lanes[0], name(tie.Lanes[0]), tie.Lanes[1], name(tie.Lanes[1]), SecondsText.Of(tie.ApartMs), SecondsText.Of(tie.WithinMs));
}
