using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>How a fact is kept, in words.</summary>
public static class FlagWords
{
    private static readonly (FactFlags Flag, string Words)[] Table =
    [
        (FactFlags.Quarantined, "held for the head judge"),
        (FactFlags.Late, "came after the freeze"),
        (FactFlags.Early, "before GO"),
        (FactFlags.Future, "the phone's clock was ahead"),
        (FactFlags.OldStart, "tapped on a recalled start"),
        (FactFlags.OldPlan, "tapped on an older plan"),
        (FactFlags.NoSuchStep, "does not fit the plan"),
        (FactFlags.NoSeat, "not the lane's judge then"),
        (FactFlags.Implausible, "faster than anybody can be"),
        (FactFlags.Repeat, "was done already"),
        (FactFlags.AfterCap, "after the time cap"),
        (FactFlags.AfterStop, "after the team stopped"),
        (FactFlags.Disagreement, "witness disagrees"),
    ];

    /// <summary>Each flag that is set, gravest first.</summary>
    public static IEnumerable<string> Of(FactFlags flags) => Table.Where(pair => flags.HasFlag(pair.Flag)).Select(pair => pair.Words);
}
