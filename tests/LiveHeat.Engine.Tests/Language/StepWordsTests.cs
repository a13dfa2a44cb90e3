using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Language;

/// <summary>In English, with the workout's own names, labels are the engine's to the letter: a result reads as it was signed.</summary>
public sealed class StepWordsTests
{
    private static readonly PrescribedSet[] Everything =
        [new("wall-ball", 1200), new("row", 12), new("carry", 40), new("wall-ball", 2) { Together = 2 }, new("row", 75) { MinimumEach = 5 }, new("bar", 1, Reading: true), new("row", 20, Reading: true)];

    /// <summary>Every kind of step, in every relay order, scored in every way.</summary>
    private static IEnumerable<(Workout Workout, RelayPlan Plan)> Plans()
    {
        RelayOrder[] orders = [new RelayOrder.InTurn(), new RelayOrder.Blocks(2), new RelayOrder.EachMovement(), new RelayOrder.Listed([1, 3, 2]), new RelayOrder.Together()];
        foreach (var order in orders)
        {
            var sets = order is RelayOrder.Together ? Everything.Where(set => set is { Together: null, MinimumEach: null }).ToArray() : Everything;
            foreach (var finish in Enum.GetValues<FinishKind>())
            {
                yield return Compiled(Some.Workout(order, finish: finish, prescriptions: Some.Prescription(round: sets)));
            }

            yield return Compiled(Some.Workout(order, Counting.Sets, FinishKind.None, Some.Prescription(round: new PrescribedSet("row", 20, Reading: true))) with { Scoring = new ScoringRule.MostReading() });
            yield return Compiled(Some.Lifting(order: order is RelayOrder.Blocks or RelayOrder.Listed ? null : order));
        }
    }

    /// <summary>With names that are the organiser's own.</summary>
    private static (Workout, RelayPlan) Compiled(Workout named)
    {
        var workout = named with { Movements = named.Movements.Select(movement => movement with { Name = $"our {movement.Name}" }).ToItems() };
        return (workout, PlanCompiler.Compile(workout, Some.LineUp()) is Compiled.Plan(var plan) ? plan : throw new InvalidOperationException(string.Join('\n', ((Compiled.Impossible)PlanCompiler.Compile(workout, Some.LineUp())).Errors)));
    }

    [Fact]
    public void In_English_every_label_and_movement_is_the_engines_own()
    {
        var steps = Plans().SelectMany(one => one.Plan.Steps.Select(step => (one.Workout, one.Plan, Step: step))).ToList();

        Assert.Equal(Enum.GetValues<StepKind>(), steps.Select(one => one.Step.Kind).Distinct().Order());
        Assert.All(steps, one => Assert.Equal((one.Step.Label, one.Step.Movement), (StepWords.Label(one.Workout, one.Plan, one.Step), StepWords.Movement(one.Workout, one.Step))));
    }

    [Fact]
    public void A_changed_line_up_and_a_variant_keep_the_engines_labels()
    {
        var heat = HeatScript.Play("""
            start
            lane 1 line-up Cy,Bo,Ann from step 4 at 0:20
            lane 2 variant scaled from step 7 at 0:20
            """);
        var lifts = HeatScript.Play("start\nlane 1 line-up Ann,Cy,Bo from step 4 at 0:20", Some.Snapshot(2, Some.Lifting(attempts: 2)));

        Assert.All(
            from state in new[] { heat, lifts } from lane in state.Lanes from step in lane.Plan.Steps select (step.Label, StepWords.Label(state.Snapshot!.Workout, lane.Plan, step)),
            pair => Assert.Equal(pair.Label, pair.Item2));
    }

    [Theory]
    [InlineData("es", "10 our wall balls|12 cal our row|relevo: Bo|cruzar la línea|2 our wall balls en sincronía|our one lift, intento 3")]
    [InlineData("fr", "10 our wall balls|12 cal our row|relais : Bo|passer la ligne|2 our wall balls synchro|our one lift, essai 3")]
    [InlineData("de", "10 our wall balls|12 cal our row|Wechsel: Bo|über die Linie|2 our wall balls synchron|our one lift, Versuch 3")]
    public void Other_languages_tell_the_same_step(string language, string labels)
    {
        var (workout, plan) = Compiled(Some.Workout());
        var (synchro, both) = Compiled(Some.Workout(prescriptions: Some.Prescription(round: Everything)));
        var (lifting, lifts) = Compiled(Some.Lifting());

        Tongue.Speak(language);

        Assert.Equal(labels, string.Join('|',
            StepWords.Label(workout, plan, plan.Steps[0]), StepWords.Label(workout, plan, plan.Steps[1]), StepWords.Label(workout, plan, plan.Steps[2]),
            StepWords.Label(workout, plan, plan.Steps[^1]), StepWords.Label(synchro, both, both.Steps[3]), StepWords.Label(lifting, lifts, lifts.Steps[2])));
    }

    [Fact]
    public void A_name_that_stands_as_the_library_has_it_is_told_as_the_library_tells_it()
    {
        var workout = Some.Workout();
        var plan = ((Compiled.Plan)PlanCompiler.Compile(workout, Some.LineUp())).Relay;

        var told = Tongue.In("de", () => StepWords.Label(workout, plan, plan.Steps[0]));

        Assert.Equal($"10 {LibraryTelling.Tell("wall balls", "de")}", told);
        Assert.NotEqual(plan.Steps[0].Label, told);
    }
}
