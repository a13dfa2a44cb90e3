using LiveHeat.Contracts.Frames;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Screens.Forecasts;

/// <summary>Places gained and lost over the last minute, as this screen has seen them.</summary>
public sealed class PlaceTrend
{
    /// <summary>The minute looked back over; and how long must have been seen before anything is said, milliseconds.</summary>
    private const long Back = 60_000, Least = 15_000;

    private readonly List<(Instant At, IReadOnlyDictionary<LaneNumber, int> Places)> seen = [];
    private (HeatId Heat, string? Start, long Sequence)? last;

    /// <summary>Takes a frame; each sequence counts once.</summary>
    public void Take(Frame frame)
    {
        if (last is { } before && (before.Heat != frame.Heat || before.Start != frame.Start?.Id))
        {
            seen.Clear();
        }
        else if (last?.Sequence == frame.Sequence)
        {
            return;
        }

        last = (frame.Heat, frame.Start?.Id, frame.Sequence);
        seen.Add((frame.MadeAt, frame.Lanes.Where(lane => lane is { Place: not null, Open: > 1 }).ToDictionary(lane => lane.Lane, lane => lane.Place!.Value)));
        // The newest of those before the minute is what stood when it began.
        while (seen.Count > 1 && frame.MadeAt - seen[1].At >= Back)
        {
            seen.RemoveAt(0);
        }
    }

    /// <summary>Places gained (+) or lost (-) over the last minute; 0 when it stands where it stood, or nothing was seen long enough.</summary>
    public int Gained(LaneNumber lane, Instant now)
    {
        if (seen.Count == 0 || !seen[^1].Places.TryGetValue(lane, out var place))
        {
            return 0;
        }

        // Where a team first shows something it gained and lost nothing.
        var shown = seen.Where(one => one.Places.ContainsKey(lane)).ToList();
        var then = shown.FindLast(one => now - one.At >= Back) is { Places: not null } before ? before : shown[0];
        return now - then.At >= Least ? then.Places[lane] - place : 0;
    }
}
