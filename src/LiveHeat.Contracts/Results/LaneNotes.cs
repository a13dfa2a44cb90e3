using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Contracts.Results;

/// <summary>What stands beside a team's result and is no penalty, in words. In English they are signed.</summary>
internal static class LaneNotes
{
    private static readonly Wording Words = new(typeof(LaneNotes));

    /// <summary>Nobody has decided yet what was too close to measure.</summary>
    public static string NearTie => Words[nameof(NearTie)];

    /// <summary>What became of a finish too close to the cap to measure.</summary>
    public static string Of(HeatFact.CapDecided decided) => decided.InTime ? InTime(decided.By.Name) : TooLate(decided.By.Name);

    /// <summary>What became of work too close to the end of a round by the clock to measure.</summary>
    public static string OfRound(int? round, bool inTime, By by) => inTime ? RoundInTime(round, by.Name) : RoundTooLate(round, by.Name);

    /// <summary>What became of finishes too close to each other to measure.</summary>
    public static string Of(HeatFact.NearTieDecided decided) => decided.Tie ? Tie(decided.By.Name) : Order(decided.By.Name);

    /// <summary>Why a team has no place in its division: whose work it did; null where it was nobody's of this workout.</summary>
    public static string NotRanked(string? division, int step, string own) =>
        division is null ? NotRankedOther(step, own) : Words.Say(nameof(NotRanked), division, step, own);

    /// <summary>A tiebreak: "10 wall balls (round 2)".</summary>
    public static string Tiebreak(string label, int? round) => round is > 0 and var number ? TiebreakInRound(label, number) : label;

    private static string RoundInTime(int? round, string by) => Words.Say(nameof(RoundInTime), round, by);

    private static string RoundTooLate(int? round, string by) => Words.Say(nameof(RoundTooLate), round, by);

    private static string InTime(string by) => Words.Say(nameof(InTime), by);

    private static string TooLate(string by) => Words.Say(nameof(TooLate), by);

    private static string Tie(string by) => Words.Say(nameof(Tie), by);

    private static string Order(string by) => Words.Say(nameof(Order), by);

    private static string NotRankedOther(int step, string own) => Words.Say(nameof(NotRankedOther), step, own);

    private static string TiebreakInRound(string label, int round) => Words.Say(nameof(TiebreakInRound), label, round);
}
