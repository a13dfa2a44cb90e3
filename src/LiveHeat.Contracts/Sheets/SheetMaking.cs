using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Sheets;

/// <summary>Makes sheets from states.</summary>
public static class SheetMaking
{
    private const int LaneColours = 6;

    /// <summary>The sheet of a called heat; null before the call.</summary>
    public static Sheet? Of(HeatState heat, string epoch)
    {
        if (heat.Snapshot is not { } snapshot)
        {
            return null;
        }

        var workout = snapshot.Workout;
        return new Sheet(
            heat.Heat, heat.SheetVersion, epoch, snapshot.Competition, snapshot.Title, new SheetWorkout(workout.Name, Summary(workout)),
            workout.Counting, workout.CheckpointEvery, heat.Lanes.Select(lane => lane.Plan.CapMs).DefaultIfEmpty(0).Max(),
            heat.Lanes.Select(lane => Lane(workout, lane)).ToItems())
        { Movements = workout.Movements.Select(Movement).ToItems(), FaultWords = FaultWords(heat) };
    }

    /// <summary>What a lane's phone needs of it: its own lane, and the movements and faults of that.</summary>
    public static Sheet OfLane(this Sheet sheet, LaneNumber lane)
    {
        var lanes = sheet.Lanes.Where(one => one.Lane == lane).ToItems();
        var steps = lanes.SelectMany(one => one.Steps).ToList();
        var words = sheet.FaultWords?.Where(word => steps.Any(step => step.Faults.Contains(word.Fault))).ToItems();
        return sheet with
        {
            Lanes = lanes,
            Movements = sheet.Movements.Where(movement => steps.Any(step => step.MovementId == movement.Id)).ToItems(),
            FaultWords = words is { Count: > 0 } ? words : null,
        };
    }

    private static Items<FaultWords>? FaultWords(HeatState heat)
    {
        var words = heat.Lanes.SelectMany(lane => lane.Plan.Steps).SelectMany(step => step.Faults).Distinct()
            .Select(fault => new FaultWords(fault, LibraryTelling.Tell(fault))).Where(fault => fault.Said != fault.Fault).ToItems();
        return words.Count > 0 ? words : null;
    }

    /// <summary>The workout's shape in a few words: "8 rounds, one each in turn".</summary>
    public static string Summary(Workout workout) => SummaryWords.Of(workout);

    private static SheetLane Lane(Workout workout, LaneState lane) => new(
        lane.Lane, lane.Entry.Team, lane.Entry.Name, lane.Plan.Division, lane.Plan.DivisionName, lane.Plan.Group, lane.Plan.Athletes,
        (lane.Lane.Value - 1) % LaneColours, lane.Plan.CapMs, lane.PlanVersion, lane.Plan.Steps.Select(step => Step(workout, lane.Plan, step)).ToItems())
    {
        ExpectedSteps = lane.Plan.Endless && lane.Plan.Windows.Count == 0 ? ExpectedSteps(lane.Plan) : null,
        Windows = lane.Plan.Windows.Count > 0 ? lane.Plan.Windows : null,
        Score = ScoreWords.UnlessWork(lane.Plan),
        Parts = lane.Plan.Parts.Count > 0 ? lane.Plan.Parts.Select(part => part.Name).ToItems() : null,
    };

    /// <summary>See <see cref="SheetLane.ExpectedSteps"/>.</summary>
    public static int ExpectedSteps(RelayPlan plan)
    {
        var atCap = plan.Steps.FirstOrDefault(step => plan.ExpectedMsThrough(step.Number) >= plan.CapMs) ?? plan.Steps[^1];
        return plan.Steps.Last(step => step.Round == atCap.Round).Number;
    }

    private static SheetStep Step(Workout workout, RelayPlan plan, Step step) => new(
        step.Number, step.Kind, step.Round, step.Leg, step.Athlete, step.To == 0 ? null : step.To, StepWords.Movement(workout, step), step.Quantity, step.Unit,
        step.Worth, step.Increment, step.ExpectedMs, step.EarliestMs, StepWords.Label(workout, plan, step), step.Faults, step.MovementId)
    {
        With = step.With.Count > 0 ? step.With : null,
        MinimumEach = step.MinimumEach,
    };

    /// <summary>A movement's standard as sheets and briefings tell it, in the language now.</summary>
    public static SheetMovement Movement(Movement written)
    {
        var movement = LibraryTelling.Tell(written);
        var full = movement.FullStandard;
        return new SheetMovement(
            movement.Id, movement.Name, movement.Unit, movement.Standard,
            full is null ? null : new SheetStandard(full.Start, full.Finish, full.Between, full.Allowed, full.Caution, full.Picture),
            movement.Faults.Select(name => new SheetFault(name, full?.Faults.FirstOrDefault(fault => fault.Name == name) is { How.Length: > 0 } fault ? fault.How : null)).ToItems());
    }
}
