using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Screens.Words;

/// <summary>What was too close to measure.</summary>
public static class NearTieWords
{
    public const string Heading = "Too close to measure";
    public const string Help = "Clocks and hands cannot tell these apart. Ask the judges, look at the replay, then decide; the result names who did.";
    public const string Tie = "They tie";
    public const string InTime = "In time";
    public const string TooLate = "Too late";
    public const string ReplayHappened = "Replay, as it happened";
    public const string ReplayKnown = "Replay, as it was known";
    public const string Export = "Export for checking";

    public static string First(string team) => $"{team} first";

    public static string Says(NearTie tie, Func<LaneNumber, string> name) => tie.AtCap
        ? $"Lane {tie.Lanes[0]}, {name(tie.Lanes[0])}: last step {SecondsText.Of(Math.Abs(tie.ApartMs))} {(tie.ApartMs > 0 ? "after" : "before")} the cap, known to ±{SecondsText.Of(tie.WithinMs)}"
        : $"Lane {tie.Lanes[0]}, {name(tie.Lanes[0])}, and lane {tie.Lanes[1]}, {name(tie.Lanes[1])}: {SecondsText.Of(tie.ApartMs)} apart, known to ±{SecondsText.Of(tie.WithinMs)}";
}
