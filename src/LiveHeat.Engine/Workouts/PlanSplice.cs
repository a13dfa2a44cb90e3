namespace LiveHeat.Engine.Workouts;

/// <summary>Changes the rest of a plan from a step on: others work, or another prescription is taken. What was changed before stays changed.</summary>
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
            return No("athletes", WorkoutRefusals.LineUpCount(names.Count, team.Athletes.Count));
        }

        if (PlanCompiler.Compile(workout, team with { Athletes = names, Division = plan.PrescribedBy }) is not Compiled.Plan(var renamed))
        {
            return No("athletes", WorkoutRefusals.LineUpDoesNotFit);
        }

        return Join(plan, fromStep, renamed, plan.Group, plan.VariantFrom);
    }

    /// <summary>The plan with another division's prescription from a step on. Unless the workout says otherwise it can no longer be compared with others.</summary>
    public static Compiled Variant(RelayPlan plan, int fromStep, string prescription, Workout workout, LineUp team)
    {
        if (PlanCompiler.Compile(workout, team with { Athletes = plan.TeamOrder, Division = prescription }) is not Compiled.Plan(var other))
        {
            return No("prescription", WorkoutRefusals.NoPrescriptionCalled(prescription));
        }

        // Where the workout ranks those who take a variant with their division, they are compared with it.
        var withDivision = workout.Consequences?.Variant is { } consequence && consequence != Consequence.Void;
        return Join(plan, fromStep, other, withDivision ? plan.Group : $"{plan.Group}+{prescription}@{fromStep}", Math.Min(fromStep, plan.VariantFrom ?? fromStep));
    }

    private static Compiled Join(RelayPlan plan, int fromStep, RelayPlan rest, string group, int? variantFrom)
    {
        // Rounds without an end may be laid out more or fewer times; what must be the same is a round.
        if (plan.Endless && plan.Windows.Count == 0 ? FirstRound(rest) != FirstRound(plan) : rest.LastStep != plan.LastStep)
        {
            return No("fromStep", WorkoutRefusals.CannotBeJoined(rest.LastStep, plan.LastStep));
        }

        if (fromStep < 1 || fromStep > Math.Min(plan.LastStep, rest.LastStep))
        {
            return No("fromStep", WorkoutRefusals.PlanHasNoStep(fromStep, plan.LastStep));
        }

        var (all, numbers) = Renumber(plan.Athletes, rest.Athletes);
        var steps = plan.Steps.Take(fromStep - 1)
            .Concat(rest.Steps.Skip(fromStep - 1).Select(step => step with { Athlete = numbers[step.Athlete], To = numbers[step.To], With = step.With.Select(other => numbers[other]).ToItems() })).ToItems();
        return new Compiled.Plan(new RelayPlan(group, plan.Division, plan.DivisionName, plan.CapMs, all, [new Track(steps)])
        {
            TeamOrder = rest.Athletes,
            PrescribedBy = rest.PrescribedBy,
            VariantFrom = variantFrom,
            Scoring = plan.Scoring,
            EqualWork = plan.EqualWork,
            TiebreakStep = rest.TiebreakStep,
            Parts = rest.Parts,
            Windows = rest.Windows,
        });
    }

    private static int FirstRound(RelayPlan plan) => plan.Steps.Count(step => step.Round <= 1);

    /// <summary>Everybody keeps the number they had; who is new comes behind. Two of one name stay two.</summary>
    /// <returns>All names, and the number of each place in the new order; 0 stays 0, the team as one.</returns>
    private static (Items<string> All, int[] Numbers) Renumber(Items<string> before, Items<string> now)
    {
        var all = before.ToList();
        var numbers = new int[now.Count + 1];
        for (var place = 1; place <= now.Count; place++)
        {
            var known = Enumerable.Range(1, all.Count).FirstOrDefault(number => all[number - 1] == now[place - 1] && !numbers.Contains(number));
            if (known == 0)
            {
                all.Add(now[place - 1]);
                known = all.Count;
            }

            numbers[place] = known;
        }

        return (all.ToItems(), numbers);
    }

    private static Compiled.Impossible No(string field, Telling why) => new([new FieldError(field, why)]);
}
