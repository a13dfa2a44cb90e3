using System.Text.Json;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Result;

/// <summary>How far every team got: what the strips on the result page are drawn from, and the same in words.</summary>
/// <param name="Sheet">What was to be done.</param>
/// <param name="Frame">Where everybody was when the page was made.</param>
public sealed record HowFar(Sheet Sheet, Frame Frame)
{
    /// <summary>Null before the heat has a start: there is nothing to show.</summary>
    public static HowFar? Of(HeatState heat, Items<Placing> placings, Instant now) =>
        heat.Clock.Start is null || SheetMaking.Of(heat, epoch: "") is not { } sheet ? null : new HowFar(sheet, FrameMaking.Of(heat, placings, news: [], epoch: "", now));

    /// <summary>Rounds that begin and end by the clock are in it.</summary>
    public bool ByTheClock => Sheet.Lanes.Any(lane => lane.Windows is not null);

    /// <summary>Sheet and frame, no more of them than strips are drawn from. The default encoder writes "&lt;" as \u003c, so that no name can end the script element.</summary>
    public string ToJson() => JsonSerializer.Serialize(
        new
        {
            Sheet = Sheet with { Movements = [], FaultWords = null, Lanes = Sheet.Lanes.Select(Drawn).ToItems() },
            Frame = Frame with { Disagreements = [], NearTies = [], Lanes = Frame.Lanes.Select(lane => lane with { Judge = null, Seat = null, ReadBack = null }).ToItems() },
        },
        WireJson.Options);

    /// <summary>
    /// The step that a lane was in and whose it was; empty where it has nothing left or did nothing, and in rounds by the clock, where what was not done in time stays undone.
    /// </summary>
    public string Where(LaneNumber number)
    {
        var (lane, sheet) = (Frame.Lanes.Single(one => one.Lane == number), Sheet.Lanes.Single(one => one.Lane == number));
        var atWork = lane.Status is LaneStatus.Working or LaneStatus.Held or LaneStatus.Capped or LaneStatus.Stopped;
        if (!atWork || sheet.Windows is not null || sheet.Steps.FirstOrDefault(step => step.Step == lane.Open) is not { } open)
        {
            return "";
        }

        var work = lane.Count is { } count ? ResultPageWords.Counted(open.Label, count) : open.Label;
        return string.Join(" · ", Workers(sheet, open).Prepend(work));
    }

    /// <summary>A tag's label has the names.</summary>
    private static IEnumerable<string> Workers(SheetLane lane, SheetStep step) =>
        step.Kind is StepKind.Tag or StepKind.Finish || step.Athlete == 0 ? [] : [string.Join(" + ", (step.With ?? []).Prepend(step.Athlete).Select(athlete => lane.Athletes[athlete - 1]))];

    private static SheetLane Drawn(SheetLane lane) => lane with
    {
        Steps = lane.Steps.Take(lane.ExpectedSteps ?? lane.Steps.Count).Select(step => step with { Faults = [] }).ToItems(),
    };
}
