namespace LiveHeat.Engine.Workouts;

/// <summary>Changes the rest of a plan from a step on: others work, or another prescription is taken.</summary>
public static class PlanSplice
{
    /// <summary>The plan with another line-up from a step on.</summary>
    /// <param name="plan">The plan so far.</param>
    /// <param name="fromStep">The first step of the new order.</param>
    /// <param name="names">Names in relay order, as many as before.</param>
    /// <param name="workout">The heat's workout.</param>
    /// <param name="team">The team as it stood.</param>
    public static Compiled LineUp(RelayPlan plan, int fromStep, Items<string> names, Workout workout, LineUp team)
    {
        if (names.Count != team.Athletes.Count)
        {
            return No("athletes", $"The new line-up has {names.Count} names; the team started with {team.Athletes.Count}. Name as many.");
        }

        if (PlanCompiler.Compile(workout, team with { Athletes = names, Division = plan.Division }) is not Compiled.Plan(var renamed))
        {
            return No("athletes", "The new line-up does not fit the workout.");
        }

        var all = plan.Athletes.Concat(names.Where(name => !plan.Athletes.Contains(name))).Distinct().ToItems();
        int NumberOf(int inNames) => inNames == 0 ? 0 : all.ToList().IndexOf(names[inNames - 1]) + 1;
        var rest = renamed.Steps.Select(step => step with { Athlete = NumberOf(step.Athlete), To = NumberOf(step.To) });
        return Join(plan, fromStep, rest.ToItems(), plan.Group, plan.CapMs, all);
    }

    /// <summary>The plan with another division's prescription from a step on. It can no longer be compared with others.</summary>
    public static Compiled Variant(RelayPlan plan, int fromStep, string prescription, Workout workout, LineUp team)
    {
        if (PlanCompiler.Compile(workout, team with { Division = prescription }) is not Compiled.Plan(var other))
        {
            return No("prescription", $"The workout has no prescription called {prescription}.");
        }

        return Join(plan, fromStep, other.Steps, $"{plan.Division}+{prescription}@{fromStep}", plan.CapMs, plan.Athletes);
    }

    private static Compiled Join(RelayPlan plan, int fromStep, Items<Step> rest, string group, int capMs, Items<string> athletes)
    {
        if (rest.Count != plan.LastStep)
        {
            return No("fromStep", $"The rest has {rest.Count} steps where the plan has {plan.LastStep}: they cannot be joined.");
        }

        if (fromStep < 1 || fromStep > plan.LastStep)
        {
            return No("fromStep", $"The plan has no step {fromStep}. It has 1 to {plan.LastStep}.");
        }

        var steps = plan.Steps.Take(fromStep - 1).Concat(rest.Skip(fromStep - 1)).ToItems();
        return new Compiled.Plan(new RelayPlan(group, plan.Division, plan.DivisionName, capMs, athletes, [new Track(steps)]));
    }

    private static Compiled.Impossible No(string field, string message) => new([new FieldError(field, message)]);
}
