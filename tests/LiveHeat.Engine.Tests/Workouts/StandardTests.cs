using System.Text.Json;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Workouts;

/// <summary>The standard that a workout's movement carries, from the ledger's JSON to the sheet.</summary>
public class StandardTests
{
    private const string Before = """{"id":"row","name":"row","unit":"cal","secondsPerUnit":3,"fastestSecondsPerUnit":1,"standard":"Seated.","faults":["left the seat"]}""";

    private static readonly Standard Full = new(
        "Seated, the display at zero.", "The display shows the number.", ["Stay seated."], ["Setting the fan."], [new("left the seat", "The athlete got up too early.")], "Hair off the chain.");

    private static readonly Movement Row = new("row", "row", Unit.Cal, 3, 1, "Seated.", ["left the seat", "somebody helped"]);

    [Fact]
    public void What_was_written_before_there_were_parts_is_read_and_written_the_same()
    {
        var movement = JsonSerializer.Deserialize<Movement>(Before, WireJson.Options)!;

        Assert.Null(movement.FullStandard);
        Assert.Equal(Before, JsonSerializer.Serialize(movement, WireJson.Options));
    }

    [Fact]
    public void The_parts_are_read_back()
    {
        var movement = Row with { FullStandard = Full };

        var json = JsonSerializer.Serialize(movement, WireJson.Options);

        Assert.Contains(
            ""","fullStandard":{"start":"Seated, the display at zero.","finish":"The display shows the number.","between":["Stay seated."],"allowed":["Setting the fan."],"faults":[{"name":"left the seat","how":"The athlete got up too early."}],"caution":"Hair off the chain.","picture":null}""",
            json, StringComparison.Ordinal);
        Assert.Equal(movement, JsonSerializer.Deserialize<Movement>(json, WireJson.Options));
    }

    [Fact]
    public void The_sheet_tells_each_standard_once_with_what_its_faults_mean()
    {
        var sheet = Sheet(Some.Workout() with { Movements = [Some.Movement(), Row with { FullStandard = Full }] }, "open");

        Assert.Equal(["wall-ball", "row"], sheet.Movements.Select(movement => movement.Id));
        Assert.Equal((null, "Below parallel, above the line."), (sheet.Movements[0].FullStandard, sheet.Movements[0].Standard));
        Assert.Equal([new("short of the line", null), new SheetFault("not low enough", null)], sheet.Movements[0].Faults);
        Assert.Equal([new("left the seat", "The athlete got up too early."), new SheetFault("somebody helped", null)], sheet.Movements[1].Faults);
        Assert.Equal(("Seated, the display at zero.", "Hair off the chain."), (sheet.Movements[1].FullStandard!.Start, sheet.Movements[1].FullStandard!.Caution));
        Assert.Equal(["wall-ball", "row", null, "wall-ball", "row", null, "wall-ball", "row", null], sheet.Lanes[0].Steps.Select(step => step.MovementId));
    }

    [Fact]
    public void Each_division_is_held_to_the_standard_that_its_sets_name()
    {
        // Two of one name, as two divisions have them.
        var strict = Row with { Id = "row-open", FullStandard = Full };
        var easy = Row with { Id = "row-scaled", FullStandard = Full with { Start = "Seated or kneeling." } };
        var workout = Some.Workout(prescriptions: [Some.Prescription("open", 1, 600_000, new PrescribedSet("row-open", 12)), Some.Prescription("scaled", 1, 600_000, new PrescribedSet("row-scaled", 9))])
            with
        { Movements = [strict, easy] };

        var sheet = Sheet(workout, "open", "scaled");

        Assert.Equal(["Seated, the display at zero.", "Seated or kneeling."], sheet.Lanes.Select(lane =>
            sheet.Movements.Single(movement => movement.Id == lane.Steps[0].MovementId).FullStandard!.Start));
        Assert.All(sheet.Lanes, lane => Assert.Equal("row", lane.Steps[0].Movement));
    }

    [Fact]
    public void A_movement_called_tag_says_what_a_good_tag_is()
    {
        var tag = new Movement(Movement.TagId, "tags", Unit.Reps, 2, 0.2, "Hands touch.", ["no baton"]);
        var sheet = Sheet(Some.Workout() with { Movements = [Some.Movement(), Row, tag] }, "open");

        var step = sheet.Lanes[0].Steps.First(step => step.Kind == StepKind.Tag);
        Assert.Equal((Movement.TagId, "no baton"), (step.MovementId, Assert.Single(step.Faults)));
        Assert.Equal(["no touch", "left too early"], Sheet(Some.Workout(), "open").Lanes[0].Steps.First(step => step.Kind == StepKind.Tag).Faults);
    }

    private static Sheet Sheet(Workout workout, params string[] divisions)
    {
        var called = new HeatFact.HeatCalled { Id = Some.Id("desk", 1), Instant = Some.Go, By = Some.Organiser, Snapshot = Some.Snapshot(divisions.Length, workout, divisions: divisions) };
        return SheetMaking.Of(HeatState.Empty(Some.Heat).Apply(new Entry(1, Some.Go, "desk", called)), "e")!;
    }
}
