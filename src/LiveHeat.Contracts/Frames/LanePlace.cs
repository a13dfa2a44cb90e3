using LiveHeat.Contracts.Sheets;

namespace LiveHeat.Contracts.Frames;

/// <summary>Where a lane is, by its taps and by the clock: what only time changes is not in the frame. The board's where.js and the pad's roundNow say the same; all answer to one table of cases.</summary>
/// <param name="Open">Number of the open step; while resting the first of the next round; the number of steps and one more when nothing is left.</param>
/// <param name="Round">By the clock, from 1; null where one round follows the other.</param>
/// <param name="Resting">Nobody works until the next round begins.</param>
/// <param name="TurnsMs">Lane time at which the round ends or, while resting, the next begins; null when nothing more does.</param>
public sealed record LanePlace(int Open, int? Round, bool Resting, long? TurnsMs)
{
    /// <summary>In rounds by the clock what was not done when one is over stays undone, and who is through rests.</summary>
    /// <param name="sheet">What is to be done.</param>
    /// <param name="lane">What is confirmed.</param>
    /// <param name="laneMs">Lane time; null and before GO it is the first round.</param>
    public static LanePlace Of(SheetLane sheet, LaneFrame lane, long? laneMs)
    {
        if (sheet.Windows is not { Count: > 0 } windows)
        {
            return new LanePlace(lane.Open, null, false, null);
        }

        var at = Math.Max(0, windows.Count(window => window.FromMs <= (laneMs ?? 0)) - 1);
        var (round, next) = (windows[at], at + 1 < windows.Count ? windows[at + 1] : null);
        var open = Math.Max(lane.Open, round.First);
        return (laneMs ?? 0) <= round.UntilMs && open <= round.Last
            ? new LanePlace(open, at + 1, false, round.UntilMs)
            : new LanePlace(Math.Max(lane.Open, next?.First ?? sheet.Steps.Count + 1), at + 1, next is not null, next?.FromMs);
    }
}
