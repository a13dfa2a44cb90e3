using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Testing.Simulation;

/// <summary>A heat full of faults must come to what the same heat comes to without any.</summary>
internal static class Likeness
{
    /// <summary>The grid of official times: two that are closer than it may share one.</summary>
    private const int TenthMs = 100;

    /// <summary>How the two differ beyond what their clocks allow; none when they agree.</summary>
    /// <param name="played">With faults.</param>
    /// <param name="calm">Without.</param>
    public static IEnumerable<string> Of(Played played, Played calm)
    {
        foreach (var (lane, line) in Lanes(played))
        {
            var (other, quiet) = Lanes(calm).Single(pair => pair.Lane.Lane == lane.Lane);
            if (!Certain(played, lane.Lane))
            {
                continue;
            }

            if ((lane.Open, lane.DoneSteps, lane.Worth, lane.Count, lane.Stopped, line.Outcome) != (other.Open, other.DoneSteps, other.Worth, other.Count, other.Stopped, quiet.Outcome)
                || !lane.NoReps.SequenceEqual(other.NoReps))
            {
                yield return $"Lane {lane.Lane}: {Gist(lane, line)}; without faults {Gist(other, quiet)}.";
            }

            for (var step = 0; step < lane.Splits.Count; step++)
            {
                var (mine, theirs) = (lane.Splits[step], other.Splits[step]);
                if (mine.HasValue != theirs.HasValue || (mine is { } a && theirs is { } b && Math.Abs(a.LaneMs - b.LaneMs) > a.UncertaintyMs + b.UncertaintyMs))
                {
                    yield return $"Lane {lane.Lane}: step {step + 1} at {mine}; without faults {theirs}.";
                }
            }

            if (lane.Finish is { } finish && quiet.OfficialMs is { } official
                && !(line.OfficialMs >= Rounded(official - TenthMs - finish.UncertaintyMs) && line.OfficialMs <= Rounded(official + finish.UncertaintyMs + 1)))
            {
                yield return $"Lane {lane.Lane}: official {line.OfficialMs} ms within {finish.UncertaintyMs}; without faults {official} ms.";
            }
        }

        foreach (var wrong in Places(played, calm))
        {
            yield return wrong;
        }
    }

    /// <summary>Lanes whose figures leave no doubt: no tap so uncertain that its order to another phone's, or its side of the cap, is open.</summary>
    public static bool Certain(Played played, LaneNumber lane)
    {
        var taps = played.State.EntriesOf(lane).Where(entry => entry.Fact is HeatFact.Floor)
            .Select(entry => (Tap: (HeatFact.Floor)entry.Fact, Made: played.Taps.Single(tap => tap.Id == entry.Fact.Id))).OrderBy(pair => pair.Made.Moment.Number).ToList();
        var cap = played.GoAt + played.Plot.CapMs;
        return taps.TrueForAll(pair => Math.Abs(pair.Tap.Instant - cap) > pair.Tap.UncertaintyMs + 1)
            && taps.Zip(taps.Skip(1)).All(pair => pair.First.Made.Phone == pair.Second.Made.Phone
                || pair.Second.Tap.Instant - pair.First.Tap.Instant > pair.First.Tap.UncertaintyMs + pair.Second.Tap.UncertaintyMs);
    }

    /// <summary>Places are the same wherever two lanes are further apart than can be mistaken.</summary>
    private static IEnumerable<string> Places(Played played, Played calm)
    {
        var (mine, theirs) = (Lanes(played), Lanes(calm));
        for (var i = 0; i < mine.Count; i++)
        {
            for (var j = i + 1; j < mine.Count; j++)
            {
                var apart = Apart(theirs[i].Lane, theirs[j].Lane, Doubt(played, mine[i].Lane) + Doubt(played, mine[j].Lane) + Doubt(calm, theirs[i].Lane) + Doubt(calm, theirs[j].Lane));
                if (apart && Certain(played, mine[i].Lane.Lane) && Certain(played, mine[j].Lane.Lane)
                    && Math.Sign(mine[i].Line.Place!.Value - mine[j].Line.Place!.Value) != Math.Sign(theirs[i].Line.Place!.Value - theirs[j].Line.Place!.Value))
                {
                    yield return $"Lanes {mine[i].Lane.Lane} and {mine[j].Lane.Lane} have places {mine[i].Line.Place} and {mine[j].Line.Place}; without faults {theirs[i].Line.Place} and {theirs[j].Line.Place}.";
                }
            }
        }
    }

    private static bool Apart(LaneState one, LaneState other, int doubtMs)
    {
        if (one.Worth != other.Worth || one.DoneSteps != other.DoneSteps || one.Finished != other.Finished || one.Stopped is null != other.Stopped is null)
        {
            return true;
        }

        return doubtMs + TenthMs < (one.Finished ? Math.Abs(one.MeasuredMs!.Value - other.MeasuredMs!.Value) : Math.Abs(one.ReachedMs - other.ReachedMs));
    }

    /// <summary>How wrong the time may be that the lane's place hangs on.</summary>
    private static int Doubt(Played played, LaneState lane) => lane.Finish?.UncertaintyMs
        ?? played.State.EntriesOf(lane.Lane).Select(entry => (entry.Fact as HeatFact.Floor)?.UncertaintyMs ?? 0).Max();

    private static long Rounded(long ms) => Rounding.UpTenth.Official(Math.Max(0, ms));

    private static List<(LaneState Lane, ResultLane Line)> Lanes(Played played) =>
        [.. played.State.Lanes.Select(lane => (lane, played.Result.Lanes.Single(line => line.Lane == lane.Lane)))];

    private static string Gist(LaneState lane, ResultLane line) =>
        $"open {lane.Open}, done {lane.DoneSteps}, worth {lane.Worth}, count {lane.Count}, no-reps {string.Join(' ', lane.NoReps)}, {line.Outcome}";
}
