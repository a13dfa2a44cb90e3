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
        var (rounds, before) = (0, 0);
        foreach (var step in plan.Steps.Take(doneSteps).Where(step => step is { Round: > 0, Kind: not StepKind.Tag }))
        {
            var next = plan.Steps.Skip(step.Number).FirstOrDefault(later => later.Kind != StepKind.Tag);
            if (next?.Round != step.Round && plan.WorthThrough(step.Number) <= worth)
            {
                (rounds, before) = (step.Round!.Value, plan.WorthThrough(step.Number));
            }
        }

        return new RoundsAndReps(rounds, worth - before);
    }
}
