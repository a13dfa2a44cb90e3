using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Screens;

/// <summary>A heat as a screen gets it: folded by the engine from a score sheet, then put into frames and sheets as the server does.</summary>
internal static class SomeHeat
{
    public const string Epoch = "e1";

    /// <summary>The instant at which frames are made: well after all that a score sheet tells.</summary>
    public static readonly Instant Now = Some.Go + 500_000;

    /// <summary>One lane; the first round is scored apart from the rest.</summary>
    public static readonly HeatSnapshot InParts = Some.Snapshot(1, Some.Workout(prescriptions: Some.Prescription() with { Parts = (Items<WorkoutPart>)[new("First buy-in", new TiebreakSet(1, 2)), new("The rest", null)] }));

    public static (Frame Frame, Sheet Sheet) Told(string score, long sequence = 0, HeatSnapshot? heat = null)
    {
        var state = HeatScript.Play(score, heat);
        var frame = FrameMaking.Of(state, LiveOrder.Of(state), [], Epoch, Now);
        return (sequence > 0 ? frame with { Sequence = sequence } : frame, SheetMaking.Of(state, Epoch)!);
    }

    public static IReadOnlyList<LaneView> Lanes(string score, HeatSnapshot? heat = null)
    {
        var (frame, sheet) = Told(score, heat: heat);
        return [.. sheet.Lanes.Zip(frame.Lanes, (lane, state) => new LaneView(lane, state))];
    }

    public static LaneView Lane(string score, int number, HeatSnapshot? heat = null) => Lanes(score, heat).Single(lane => lane.Lane == new LaneNumber(number));
}
