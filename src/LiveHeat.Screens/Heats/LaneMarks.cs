using LiveHeat.Contracts.Frames;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Heats;

/// <summary>How loud a mark is.</summary>
public enum MarkKind
{
    /// <summary>Somebody waits for somebody now.</summary>
    Loud,

    /// <summary>To be put right before the result.</summary>
    Trouble,

    /// <summary>Good to know.</summary>
    Plain,
}

/// <summary>Something to be said about a lane beside its work.</summary>
public sealed record LaneMark(MarkKind Kind, string Words);

/// <summary>What is to be said about a lane, loudest first; and which lanes are in trouble.</summary>
public static class LaneMarks
{
    /// <summary>All marks of a lane.</summary>
    public static IEnumerable<LaneMark> Of(LaneView lane, Frame frame)
    {
        var state = lane.State;
        if (IsCalling(lane, frame))
        {
            yield return new(MarkKind.Loud, HeatDeskWords.Calls);
        }

        if (state.Flags.HasFlag(FactFlags.Quarantined))
        {
            yield return new(MarkKind.Trouble, HeatDeskWords.TapsHeld);
        }

        if (IsTooClose(lane, frame))
        {
            yield return new(MarkKind.Trouble, LaneMarkWords.TooClose);
        }

        if (state.ReadBack is { Agreed: false } read)
        {
            yield return new(MarkKind.Trouble, LaneMarkWords.Disputed(read.Name));
        }

        if (frame.Pending.Contains(lane.Lane))
        {
            yield return new(MarkKind.Trouble, LaneMarkWords.AppealOpen);
        }

        if (state is { Status: LaneStatus.Finished, FinishMs: null })
        {
            yield return new(MarkKind.Trouble, LaneMarkWords.FinishUnknown);
        }

        foreach (var flag in FlagWords.Of(state.Flags & ~FactFlags.Quarantined))
        {
            yield return new(MarkKind.Trouble, flag);
        }

        if (state.Status == LaneStatus.Held)
        {
            yield return new(MarkKind.Plain, LaneMarkWords.Held);
        }

        if (state.Owed > 0)
        {
            yield return new(MarkKind.Plain, LaneMarkWords.Owed(state.Owed));
        }

        if (state.PenaltyMs > 0 || state.PenaltyReps > 0)
        {
            yield return new(MarkKind.Plain, LaneMarkWords.Penalty(state.PenaltyMs, state.PenaltyReps, state.Score));
        }

        if (HeatTime.IsLive(frame.Phase) && state.Judge is null && state.Status is not (LaneStatus.Withdrawn or LaneStatus.Disqualified or LaneStatus.Finished or LaneStatus.Through))
        {
            yield return new(MarkKind.Trouble, LaneMarkWords.NoJudge);
        }
    }

    /// <summary>The lane's judge waits for the head judge; nobody waits any more once the result is signed.</summary>
    public static bool IsCalling(LaneView lane, Frame frame) => frame.Phase != Phase.Certified && frame.Calls.Contains(lane.Lane);

    /// <summary>Another finish, or the cap, is nearer than can be measured, and nobody has decided yet.</summary>
    public static bool IsTooClose(LaneView lane, Frame frame) => frame.NearTies.Any(tie => !tie.Decided && tie.Lanes.Contains(lane.Lane));

    /// <summary>Lanes by trouble, then by number: who calls, then who has something to be put right, then the others.</summary>
    public static IReadOnlyList<LaneView> TroubleFirst(IEnumerable<LaneView> lanes, Frame frame) =>
        [.. lanes.OrderBy(lane => Of(lane, frame).Select(mark => (int)mark.Kind).DefaultIfEmpty(int.MaxValue).Min() switch
            {
                (int)MarkKind.Loud => 0,
                (int)MarkKind.Trouble => 1,
                _ => 2,
            }).ThenBy(lane => lane.Lane)];
}
