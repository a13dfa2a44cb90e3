using LiveHeat.Contracts.Forecasts;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Screens.Announcer;

/// <summary>What a row of the order says beside what is confirmed.</summary>
/// <param name="Gained">Places gained (+) or lost (-) over the last minute.</param>
/// <param name="Tag">The next tag; null when it is not foretold.</param>
/// <param name="BeatsCap">The chance to beat the cap while it is in doubt; null otherwise.</param>
/// <param name="Wins">The chance of the first place while it is in doubt; null otherwise.</param>
public sealed record RowOutlook(int Gained, TagOutlook? Tag, double? BeatsCap, double? Wins)
{
    /// <summary>Outside of these nobody doubts it.</summary>
    private const double Surely = 0.9, Hardly = 0.1;

    /// <summary>A tag further away than this is not told of in a row, milliseconds.</summary>
    private const long TagAhead = 60_000;

    /// <summary>For one lane.</summary>
    public static RowOutlook Of(LaneOutlook? lane, TagOutlook? tag, int gained, Instant now) =>
        new(gained, tag is not null && tag.At - now < TagAhead ? tag : null, InDoubt(lane?.BeatsCap), InDoubt(lane?.Places is { Count: > 0 } places ? places[0] : null));

    /// <summary>Whether it may go either way.</summary>
    public static bool IsInDoubt(double chance) => chance is > Hardly and < Surely;

    private static double? InDoubt(double? chance) => chance is { } known && IsInDoubt(known) ? known : null;
}
