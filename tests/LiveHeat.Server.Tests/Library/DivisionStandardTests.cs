using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Library;

public sealed class DivisionStandardTests
{
    [Fact]
    public async Task Each_division_of_a_heat_is_held_to_the_standard_that_the_organiser_chose_for_it()
    {
        await using var floor = await TestFloor.Open();
        var library = (await floor.Organiser.Get("/api/library")).Read<MovementLibrary>().Movements.Single(movement => movement.Id == "box-jump-over");
        var own = library with { Id = "box-jump-over-low", Start = "Standing beside a low box.", BasedOn = library.Id };
        var kept = (await floor.Organiser.Put($"/api/setup/movements/{own.Id}", own)).Read<LibraryMovement>();
        var workout = Some.Workout(prescriptions:
        [
            Some.Prescription("open", 1, 600_000, new PrescribedSet("over", 12)), Some.Prescription("scaled", 1, 600_000, new PrescribedSet("over-low", 9)),
        ]) with
        { Movements = [library.ToMovement("over"), kept.ToMovement("over-low")] };
        (await floor.Organiser.Put("/api/setup/workouts/w1", workout)).Fine();
        var heat = await floor.Plan();
        // Team 1 is in the open division, team 4 in the scaled one.
        (await floor.Organiser.Put($"/api/setup/heats/{heat.Id}", new HeatSetup(heat.Id, 1, "Heat 1", "w1", null, [new(new(1), "t1"), new(new(2), "t4")]))).Fine();
        await heat.Do(floor.Organiser, "call");

        // What happens to the organiser's own movement after the call touches no heat.
        (await floor.Organiser.Put($"/api/setup/movements/{own.Id}", own with { Start = "Anywhere." })).Fine();
        var sheet = (await floor.Visitor().Get($"{heat.Path}/sheet")).Read<Sheet>();

        var standards = sheet.Lanes.Select(lane => sheet.Movements.Single(movement => movement.Id == lane.Steps[0].MovementId)).ToList();
        Assert.Equal([library.Start, "Standing beside a low box."], standards.Select(standard => standard.FullStandard!.Start));
        Assert.Equal(library.Faults.Select(fault => new SheetFault(fault.Name, fault.How)), standards[0].Faults);
        Assert.Equal(["one-foot take-off", "hand on the box"], sheet.Lanes[0].Steps[0].Faults.Take(2));
    }
}
