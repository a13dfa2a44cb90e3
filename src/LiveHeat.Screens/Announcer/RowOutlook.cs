using LiveHeat.Contracts.Forecasts;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Screens.Announcer;

/// <summary>What a row of the order says beside what is confirmed.</summary>
/// <param name="Gained">Places gained (+) or lost (-) over the last minute.</param>
/// <param name="Tag">The next tag; null when it is not foretold.</param>
/// <param name="BeatsCap">The chance to beat the cap; null where it is not foretold.</param>
/// <param name="Wins">The chance of the first place while it is in doubt; null otherwise.</param>
public sealed record RowOutlook(int Gained, TagOutlook? Tag, double? BeatsCap, double? Wins)
{
    /// <summary>Outside of these nobody doubts it.</summary>
    private const double Surely = 0.9, Hardly = 0.1;

    /// <summary>A tag further away than this is not told of in a row, milliseconds.</summary>
    private const long TagAhead = 60_000;

    /// <summary>For one lane.</summary>
    public static RowOutlook Of(LaneOutlook? lane, TagOutlook? tag, int gained, Instant now) =>
        new(gained, tag is not null && tag.At - now < TagAhead ? tag : null, lane?.BeatsCap, InDoubt(lane?.Places is { Count: > 0 } places ? places[0] : null));

    /// <summary>Whether it may go either way: 0; or hardly happens, below it; or surely, above it. A forecast is no certainty, so the words are not either.</summary>
    public static int Doubt(double chance) => chance switch { <= Hardly => -1, >= Surely => 1, _ => 0 };

    private static double? InDoubt(double? chance) => chance is { } known && Doubt(known) == 0 ? known : null;
}
