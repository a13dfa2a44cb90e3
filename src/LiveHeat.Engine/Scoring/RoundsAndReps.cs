using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Scoring;

/// <summary>Work without an end as it is said: whole rounds, and what is done of the one begun.</summary>
/// <param name="Rounds">Whole rounds, from 0.</param>
/// <param name="Reps">Worth beyond them, not negative; before the first whole round also what the work before the rounds is worth.</param>
public readonly record struct RoundsAndReps(int Rounds, int Reps)
{
    /// <summary>What a team has done.</summary>
    /// <param name="plan">Its plan.</param>
    /// <param name="doneSteps">Steps that count.</param>
    /// <param name="worth">Its worth less the reps of penalties, which may take a whole round away.</param>
    public static RoundsAndReps Of(RelayPlan plan, int doneSteps, int worth)
    {
        for (var number = Math.Min(doneSteps, plan.LastStep); number > 0; number--)
        {
            if (plan.WorthThrough(number) <= worth && EndsRound(plan, number))
            {
                return new RoundsAndReps(plan.Steps[number - 1].Round!.Value, worth - plan.WorthThrough(number));
            }
        }

        return new RoundsAndReps(0, worth);
    }

    private static bool EndsRound(RelayPlan plan, int number)
    {
        var (step, next) = (plan.Steps[number - 1], number);
        while (next < plan.LastStep && plan.Steps[next].Kind == StepKind.Tag)
        {
            next++;
        }

        return step is { Round: > 0, Kind: not StepKind.Tag } && (next == plan.LastStep ? null : plan.Steps[next].Round) != step.Round;
    }
}
