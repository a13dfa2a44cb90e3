using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Replays;

/// <summary>Makes replays from entries.</summary>
public static class ReplayMaking
{
    private const int NewsKept = 12;

    /// <summary>The replay; empty before the call.</summary>
    public static HeatReplay Of(HeatId heat, IEnumerable<Entry> entries, bool asKnown, string epoch)
    {
        var sheets = new SortedDictionary<int, Sheet>();
        var moments = new List<ReplayMoment>();
        var before = HeatState.Empty(heat);
        var placingsBefore = LiveOrder.Of(before);
        var news = new List<NewsItem>();
        foreach (var (at, entry, state) in asKnown ? Replay.AsKnown(heat, entries) : Replay.AsHappened(heat, entries))
        {
            if (state.Snapshot is null)
            {
                continue;
            }

            if (!sheets.ContainsKey(state.SheetVersion))
            {
                sheets.Add(state.SheetVersion, SheetMaking.Of(state, epoch)!);
            }

            if (moments.Count > 0)
            {
                var last = moments[^1];
                moments.AddRange(TurnsBetween(before, last.At, at).Select(turn =>
                    new ReplayMoment(turn, last.Sequence, FrameMaking.Of(before, placingsBefore, last.Frame.News, epoch, turn))));
            }

            var placings = LiveOrder.Of(state);
            news.AddRange(News.Between(before, placingsBefore, state, placings, entry.Fact));
            moments.Add(new ReplayMoment(at, entry.Sequence, FrameMaking.Of(state, placings, news.TakeLast(NewsKept).ToItems(), epoch, at)));
            (before, placingsBefore) = (state, placings);
        }

        var start = before.Clock.Start is { } go ? new StartFrame(go.Id, go.GoAt, go.UncertaintyMs, go.Observed) : null;
        return new HeatReplay(heat, asKnown ? "known" : "happened", sheets.Values.ToItems(), moments.ToItems(), start) { Halts = before.Clock.Halts };
    }

    /// <summary>Where a frame changes without a fact, after one instant and before another: at GO lanes begin to work, past its cap a lane is through.</summary>
    private static IEnumerable<Instant> TurnsBetween(HeatState heat, Instant after, Instant before)
    {
        if (heat.Clock.Start is not { } start || heat.Told is not (Phase.CountingDown or Phase.Running))
        {
            return [];
        }

        var caps = heat.Lanes.Select(lane => lane.CapHeatMs).OfType<long>().Distinct().Select(cap => heat.Clock.InstantOf(cap + 1)!.Value);
        return caps.Append(start.GoAt).Where(turn => turn > after && turn < before).Order();
    }
}
