using LiveHeat.Contracts.Frames;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Announcer;

/// <summary>Something that just happened, in words.</summary>
/// <param name="At">When; null when the frame does not say.</param>
/// <param name="Words">One sentence.</param>
/// <param name="Weight">2 for the lead and the heat itself, 1 for overtakes and finishes, 0 for tags.</param>
public sealed record Saying(Instant? At, string Words, int Weight);

/// <summary>Recent changes, from the frame's news and its phases.</summary>
public static class Sayings
{
    private const int Most = 12;

    /// <summary>Newest first.</summary>
    public static IReadOnlyList<Saying> Of(Frame frame, IReadOnlyList<LaneView> lanes, Instant now)
    {
        var phase = HeatTime.PhaseAt(frame, now);
        var standing = NewsWords.Of(phase) is { } words && phase is not (Phase.Halted or Phase.Ended) ? [new Saying(null, words, 2)] : Array.Empty<Saying>();
        var dated = frame.News.Select(item => new Saying(item.Instant, NewsWords.Of(item, lanes), Weight(item.Kind)))
            .Concat(frame.Start is { } start && now >= start.GoAt ? [new Saying(start.GoAt, NewsWords.Go, 2)] : [])
            .Concat(frame.HaltedAt is { } halted ? [new Saying(halted, NewsWords.Of(Phase.Halted)!, 2)] : [])
            .Concat(frame.EndedAt is { } ended ? [new Saying(ended, NewsWords.Of(Phase.Ended)!, 2)] : []);
        return [.. standing, .. dated.OrderByDescending(saying => saying.At).Take(Most)];
    }

    private static int Weight(Engine.Standings.NewsKind kind) => kind switch
    {
        Engine.Standings.NewsKind.Lead => 2,
        Engine.Standings.NewsKind.Tag => 0,
        _ => 1,
    };
}
