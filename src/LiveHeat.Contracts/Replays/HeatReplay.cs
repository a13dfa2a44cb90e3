using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Replays;

/// <summary>A heat to be played again, at any speed, forwards and back.</summary>
/// <param name="Heat">The heat.</param>
/// <param name="By"><c>happened</c> or <c>known</c>.</param>
/// <param name="Sheets">Every version of what was to be done, by its number.</param>
/// <param name="Moments">Frames in order of their instants.</param>
public sealed record HeatReplay(HeatId Heat, string By, Items<Sheet> Sheets, Items<ReplayMoment> Moments);

/// <summary>A frame and when it became so.</summary>
/// <param name="At">The instant.</param>
/// <param name="Sequence">The ledger's number of the fact behind it.</param>
/// <param name="Frame">The heat from then on.</param>
public sealed record ReplayMoment(Instant At, long Sequence, Frame Frame);

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

            var placings = LiveOrder.Of(state);
            news.AddRange(News.Between(before, placingsBefore, state, placings, entry.Fact));
            moments.Add(new ReplayMoment(at, entry.Sequence, FrameMaking.Of(state, placings, news.TakeLast(NewsKept).ToItems(), epoch, at)));
            (before, placingsBefore) = (state, placings);
        }

        return new HeatReplay(heat, asKnown ? "known" : "happened", sheets.Values.ToItems(), moments.ToItems());
    }
}
