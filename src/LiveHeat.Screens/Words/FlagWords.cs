using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>How a fact is kept, in words.</summary>
public static class FlagWords
{
    private static readonly Wording Words = new(typeof(FlagWords));

    private static readonly FactFlags[] Gravest =
    [
        FactFlags.Quarantined, FactFlags.Late, FactFlags.Early, FactFlags.Future, FactFlags.OldStart, FactFlags.OldPlan, FactFlags.NoSuchStep, FactFlags.NoSeat,
        FactFlags.Implausible, FactFlags.Repeat, FactFlags.AfterCap, FactFlags.AfterStop, FactFlags.Disagreement,
    ];

    /// <summary>Each flag that is set, gravest first.</summary>
    public static IEnumerable<string> Of(FactFlags flags) => Gravest.Where(flag => flags.HasFlag(flag)).Select(Flag);

    private static string Flag(FactFlags flag) => Words[$"{nameof(Flag)}.{flag}"];
}
