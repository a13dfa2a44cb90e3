using LiveHeat.Testing;
using LiveHeat.Testing.Steps;

namespace LiveHeat.Engine.Heats;

/// <summary>The pad's one law, held to the table that the pad is held to in a browser.</summary>
public class PadLawTests
{
    public static TheoryData<string> Cases => [.. StepCases.All.Select(steps => steps.Name)];

    [Fact]
    public void There_are_cases_with_names_of_their_own_on_the_plan_that_the_table_tells()
    {
        var plan = HeatScript.Play("", StepCases.Heat).Find(StepCases.Lane)!.Plan;

        Assert.Equal(["Set 20", "Set 20", "Tag 0", "Set 20", "Value 1", "Finish 0"], plan.Steps.Select(step => $"{step.Kind} {step.Quantity}"));
        Assert.Equal(
            ["Attempt", "Attempt", "Attempt", "Tag", "Attempt", "Attempt", "Attempt"],
            HeatScript.Play("", StepCases.AttemptsHeat).Find(StepCases.Lane)!.Plan.Steps.Select(step => $"{step.Kind}"));
        Assert.True(StepCases.All.Count > 40);
        Assert.Equal(StepCases.All.Count, StepCases.All.DistinctBy(steps => steps.Name).Count());
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_open_step_follows_the_highest_step_with_a_standing_done_fact(string name)
    {
        var steps = StepCases.All.Single(steps => steps.Name == name);
        var script = new HeatScript(steps.Heat, seated: false).Then("""
            lane 2 seat s-1 taken as primary at -0:50
            lane 2 ready with s-1
            lane 3 seat s-3 taken as primary at -0:50
            """);
        if (!steps.Facts.Any(step => step.Fact is HeatFact.StartScheduled or HeatFact.StartObserved))
        {
            script.Then("start");
        }

        foreach (var (fact, flags) in steps.Facts)
        {
            script.Append(fact, fact is HeatFact.Floor tap ? tap.Seat.Value.Replace("s-", "in-", StringComparison.Ordinal) : "in-head");
            Assert.Equal(flags, flags & (script.State.Find(fact.AboutLane() ?? StepCases.Lane)?.FlagsOf(fact.Id) ?? FactFlags.None));
        }

        var lane = script.State.Find(StepCases.Lane)!;
        Assert.Equal((steps.Open, steps.Count, steps.Owed), (lane.Open, lane.Count, lane.Owed));
    }
}
