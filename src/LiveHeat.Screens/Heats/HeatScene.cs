using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Clock;

namespace LiveHeat.Screens.Heats;

/// <summary>A heat to be drawn, the one that is on or one that is played again: parts that take a scene draw both alike.</summary>
/// <param name="Frame">Where everybody is; null before the call.</param>
/// <param name="Sheet">What is to be done; null before the call.</param>
/// <param name="Lanes">Both, lane by lane, in floor order.</param>
/// <param name="Clock">The time by which it is drawn.</param>
public sealed record HeatScene(Frame? Frame, Sheet? Sheet, IReadOnlyList<LaneView> Lanes, ISceneClock Clock)
{
    /// <summary>The phase at the moment shown.</summary>
    public Phase Phase => Frame is { } frame ? HeatTime.PhaseAt(frame, Clock.Now) : Phase.Planned;

    /// <summary>Sheet and frame, lane by lane; empty while one is missing or of another heat.</summary>
    public static IReadOnlyList<LaneView> Join(Sheet? sheet, Frame? frame, ISceneClock clock) => frame is not null && sheet is not null && sheet.Heat == frame.Heat
        ? [.. from lane in sheet.Lanes from state in frame.Lanes where state.Lane == lane.Lane select new LaneView(lane, state) { Now = () => HeatTime.LaneMs(frame, state, clock.Now) }]
        : [];
}
