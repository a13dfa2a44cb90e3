using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Callouts;

/// <summary>Who leads a division over the whole competition since a result came in.</summary>
/// <param name="Heat">The heat whose result it was.</param>
/// <param name="Division">The division's name; null where the competition has only one.</param>
/// <param name="Workouts">How many workouts count by now.</param>
/// <param name="Teams">Their names; several share the place.</param>
/// <param name="Official">All that counts is signed, and nothing pending in it: else it may still change, and must not be said as final.</param>
/// <param name="Points">Their total.</param>
public sealed record OverallLead(HeatId Heat, string? Division, int Workouts, Items<string> Teams, bool Official, decimal Points)
{
    /// <summary>Who comes next; null where nobody does, or a tie rule alone parts them.</summary>
    public string? Second { get; init; }

    /// <summary>By how many points; null without a second.</summary>
    public decimal? Ahead { get; init; }

    /// <summary>Whether they led before that result too; null where nobody did, or where it was told when it was posted.</summary>
    public bool? Kept { get; init; }
}

/// <summary>A lead over the whole competition as a thing worth saying.</summary>
/// <param name="Id">The same for the same thing: posted and signed are two, and so is each revision.</param>
/// <param name="At">When the result came in.</param>
/// <param name="Lead">Who leads.</param>
public sealed record OverallNews(string Id, Instant At, OverallLead Lead)
{
    /// <summary>A lead that was taken is worth more than one that stands as it stood.</summary>
    private const double ShareOfOld = 0.75;

    internal Callout? Callout(Instant now) => CalloutWeight.Now(CalloutKind.OverallLead, 1, now - At, Lead.Kept == false ? 1 : ShareOfOld) is { } weight
        ? new Callout(Id, CalloutKind.OverallLead, weight, At, CalloutGrounds.Confirmed, []) { Overall = Lead }
        : null;
}
