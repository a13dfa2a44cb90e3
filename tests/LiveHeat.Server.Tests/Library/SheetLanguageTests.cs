using System.Text.Json;
using LiveHeat.Contracts.Judging;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Server.Briefing;
using LiveHeat.Server.Rehearsal;
using LiveHeat.Testing;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Library;

/// <summary>Judges of one heat who read different languages are held to one standard, and what they tap is the same.</summary>
public sealed class SheetLanguageTests : IDisposable
{
    /// <inheritdoc/>
    public void Dispose() => Tongue.Speak("en");

    [Theory]
    [InlineData("de")]
    [InlineData("es")]
    [InlineData("fr")]
    public void The_demos_sheets_are_told_whole(string language)
    {
        var wanted = LibraryFiles.In(language).Movements.ToDictionary(movement => movement.Name);
        var english = LibraryFiles.In("en").Movements.SelectMany(LibraryTelling.Of).Where(text => text.EndsWith('.')).ToList();
        for (var number = 1; number <= DemoSheets.Setup.Heats.Count; number++)
        {
            Tongue.Speak("en");
            var recorded = DemoSheets.Sheet(number).Lanes.SelectMany(lane => lane.Steps).Select(step => step.Faults);

            Tongue.Speak(language);
            var sheet = DemoSheets.Sheet(number);

            Assert.All(sheet.Movements, told =>
            {
                var movement = wanted[told.Name];
                Assert.Equal((movement.Start, movement.Finish, movement.Caution), (told.FullStandard!.Start, told.FullStandard.Finish, told.FullStandard.Caution));
                Assert.Equal((movement.Between, movement.Allowed), (told.FullStandard.Between, told.FullStandard.Allowed));
                Assert.Equal(movement.Faults.Select(fault => new SheetFault(fault.Name, fault.How)), told.Faults);
            });
            Assert.All(sheet.Lanes.SelectMany(lane => lane.Steps).Where(step => step.Kind == StepKind.Set), step => Assert.Contains(step.Movement, wanted.Keys));
            Assert.Equal(recorded, sheet.Lanes.SelectMany(lane => lane.Steps).Select(step => step.Faults));
            Assert.Equal(sheet.Lanes.SelectMany(lane => lane.Steps).SelectMany(step => step.Faults).Distinct(), sheet.FaultWords!.Value.Select(fault => fault.Fault));
            Assert.Equal([], sheet.FaultWords.Value.Where(fault => fault.Said != LibraryTelling.Tell(fault.Fault, language) || fault.Said == fault.Fault));
            var json = JsonSerializer.Serialize(sheet, WireJson.Options);
            Assert.DoesNotContain(english, text => json.Contains(text, StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    [InlineData("es")]
    [InlineData("fr")]
    public void The_briefing_names_the_usual_tags_faults_as_a_pad_does(string language)
    {
        Tongue.Speak(language);

        Assert.Equal(new[] { "no touch", "left too early" }.Select(LibraryTelling.Tell), BriefingWords.UsualTag.Faults.Select(fault => fault.Name));
    }

    [Fact]
    public void In_the_workouts_own_language_no_fault_needs_words() =>
        Assert.Equal((null, false), (DemoSheets.Sheet(1).FaultWords, JsonSerializer.Serialize(DemoSheets.Sheet(1), WireJson.Options).Contains("faultWords", StringComparison.Ordinal)));

    [Fact]
    public async Task A_fault_is_one_fact_in_whatever_language_it_was_read()
    {
        await using var floor = await TestFloor.Open();
        var library = LibraryFiles.In("en").Movements.Single(movement => movement.Id == "wall-ball");
        (await floor.Organiser.Put("/api/setup/workouts/w1", Some.Workout() with { Movements = [library.ToMovement("wall-ball"), .. Some.Workout().Movements.Skip(1)] })).Fine();
        var heat = await floor.Run(lanes: 2);

        foreach (var (lane, language, words) in new[] { (1, "en-GB", "hips above the knees"), (2, "de-AT,de;q=0.9", "Hüfte über den Knien") })
        {
            var sheet = (await heat[lane].Phone.Get($"{heat.Path}/sheet", ("Accept-Language", language))).Read<Sheet>();
            var step = sheet.Lanes.Single(one => one.Lane.Value == lane).Steps[0];
            var tapped = step.Faults.Single(fault => Said(sheet, fault) == words);
            await heat[lane].SendOne(heat[lane].Tap("no-rep", ("step", 1), ("fault", tapped)));
            await heat[lane].SendOne(heat[lane].Done(1));
        }

        Assert.Equal(["hips above the knees", "hips above the knees"], (await heat.Taps()).Select(line => line.Fact).OfType<HeatFact.NoRep>().Select(tap => tap.Fault));
        var watch = (await floor.HeadJudge.Get($"{heat.Path}/judging", ("Accept-Language", "de"))).Read<JudgingTable>();
        Assert.All(watch.Lanes, lane => Assert.Equal(("Wall Balls", 1, 1), (lane.Movements[0].Movement, lane.Movements[0].NoReps, lane.Movements[0].FloorNoReps)));
    }

    /// <summary>As a pad shows it.</summary>
    private static string Said(Sheet sheet, string fault) => sheet.FaultWords?.FirstOrDefault(one => one.Fault == fault)?.Said ?? fault;
}
