using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Live;

/// <summary>Makes what other people's pages may show of a heat, from its frame and sheet.</summary>
public static class LiveMaking
{
    /// <summary>The heat as the stands see it.</summary>
    public static LiveHeatFrame Of(Frame frame, Sheet sheet) => new(
        frame.Heat, sheet.Competition, sheet.Title, sheet.Workout.Name, frame.Sequence, frame.MadeAt, frame.Phase, frame.Phase == Phase.Certified, frame.Start?.GoAt,
        frame.HaltedAt, frame.HaltedMs, frame.EndedAt, frame.CapMs,
        (from lane in sheet.Lanes from state in frame.Lanes where state.Lane == lane.Lane select Lane(frame, lane, state)).ToItems());

    private static LiveLane Lane(Frame frame, SheetLane lane, LaneFrame state)
    {
        // No clock goes on for who stopped.
        var byClock = lane.Windows is not null && state.Status is not (LaneStatus.Stopped or LaneStatus.Withdrawn or LaneStatus.Disqualified);
        var place = byClock ? LanePlace.Of(lane, state, HeatTime.LaneMs(frame, state, frame.MadeAt)) : new LanePlace(state.Open, null, false, null);
        var open = place is { Resting: false } && place.Open <= lane.Steps.Count && state.Status is not LaneStatus.Finished ? lane.Steps[place.Open - 1] : null;
        return new LiveLane(
            lane.Lane, lane.Name, lane.DivisionName, state.Status, place.Round ?? (open?.Round is > 0 and var round ? round : null),
            // A tag's words name an athlete.
            open is null ? null : open.Kind == StepKind.Tag ? StepWords.AnyTag : open.Label,
            state.Worth, lane.ExpectedSteps is null ? lane.Steps.Sum(step => step.Worth) : null, state.Place, state.Tied, state.GapMs, state.OfficialMs)
        {
            Resting = byClock ? place.Resting : null,
            TurnsAt = TurnsAt(frame, state, place),
        };
    }

    /// <summary>While the heat is halted or the lane held nobody knows.</summary>
    private static Instant? TurnsAt(Frame frame, LaneFrame state, LanePlace place) => frame is { Start: { } start, HaltedAt: null, EndedAt: null } && state.HeldAt is null && place.TurnsMs is { } turnsMs
        ? start.GoAt + (frame.HaltedMs + state.CreditMs + turnsMs)
        : null;
}
