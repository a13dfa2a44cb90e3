using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Cards;

/// <summary>Which steps stand on a card: all, or, where the work has no end, as many as a team at the expected pace begins and some to spare.</summary>
internal static class CardSteps
{
    /// <summary>Rounds to spare, where the rounds have no end.</summary>
    public const int SpareRounds = 2;

    /// <summary>How often more a round by the clock stands on the card than a team at the expected pace begins it, where it is repeated until it is over.</summary>
    public const int SpareTimes = 1;

    /// <summary>In order.</summary>
    public static IEnumerable<Step> Printed(Workout workout, RelayPlan plan)
    {
        if (plan.Windows.Count > 0)
        {
            return plan.Windows.SelectMany(window => InRound(workout, plan, window));
        }

        if (!plan.Endless)
        {
            return plan.Steps;
        }

        var last = plan.Find(SheetMaking.ExpectedSteps(plan))!.Round + SpareRounds;
        return plan.Steps.Where(step => step.Round <= last);
    }

    /// <summary>Once, where it is done once: nothing is to spare then.</summary>
    private static IEnumerable<Step> InRound(Workout workout, RelayPlan plan, Window window)
    {
        var steps = plan.Steps.Skip(window.First - 1).Take(window.Last - window.First + 1).ToList();
        var sets = workout.Prescriptions.First(prescription => prescription.Division == plan.PrescribedBy).SetsIn(steps[0].Round!.Value).Count;
        var times = 1 + SpareTimes + ((Begun(plan, window, steps) - 1) / sets);
        var ends = steps.Where(step => step.Kind != StepKind.Tag).Skip((times * sets) - 1).FirstOrDefault();
        return ends is null ? steps : steps.TakeWhile(step => step.Number <= ends.Number);
    }

    /// <summary>How many sets a team at the expected pace begins in the round, from 1.</summary>
    private static int Begun(RelayPlan plan, Window window, List<Step> steps) => steps.Count(step =>
        step.Kind != StepKind.Tag && plan.ExpectedMsThrough(step.Number - 1) - plan.ExpectedMsThrough(window.First - 1) < window.UntilMs - window.FromMs);
}
