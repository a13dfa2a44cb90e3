using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Briefing;

/// <summary>Who does what in a relay, in sentences that can be read aloud.</summary>
internal static class RelayWords
{
    public static IReadOnlyList<string> Of(Workout workout)
    {
        var before = workout.Prescriptions.Any(prescription => prescription.Before.Count > 0 && BriefingWords.Rounds(workout, prescription) is not null);
        var after = workout.Prescriptions.Any(prescription => prescription.After.Count > 0 && prescription.Rounds > 0);
        var together = workout.Order is RelayOrder.Together;
        string?[] sentences =
        [
            workout.Scoring is ScoringRule.HeaviestLoad load ? Attempts(workout.Order, load.Attempts) : Order(workout.Order),
            together ? null : "One athlete works at a time.",
            before && !together ? "What stands before the rounds is done by whoever begins." : null,
            after && !together ? "What stands after the rounds is done by whoever did the last round." : null,
            Scored(workout),
        ];
        return [.. sentences.OfType<string>()];
    }

    private static string Attempts(RelayOrder order, int attempts)
    {
        var each = attempts == 1 ? "1 attempt" : BriefingWords.Count(attempts, "attempts");
        return order switch
        {
            RelayOrder.EachMovement => $"Each athlete has {each}: the first of all athletes, with a tag after each, then the next of all.",
            RelayOrder.Together => $"The team has {each} as one. Nobody tags.",
            _ => $"Each athlete has {each} one after the other and tags the next in the line-up.",
        };
    }

    private static string Scored(Workout workout) => workout.Scoring switch
    {
        ScoringRule.HeaviestLoad { LoadSum: LoadSum.SumOfBest } => "The best good lift of each athlete counts, added up for the team.",
        ScoringRule.HeaviestLoad => "The team's best good lift counts.",
        ScoringRule.MostReading => "What the judge reads off the machines counts, added up for the team.",
        ScoringRule.MostWork => "The rounds go on until the time cap.",
        _ => Finish(workout.Finish),
    };

    private static string Order(RelayOrder order) => order switch
    {
        RelayOrder.InTurn => "Each athlete does one whole round and tags the next in the line-up. After the last athlete the first goes again.",
        RelayOrder.Blocks { Size: 1 } => Order(new RelayOrder.InTurn()),
        RelayOrder.Blocks blocks => BriefingWords.Count(blocks.Size, "rounds in a row for each athlete, then the tag to the next in the line-up. After the last athlete the first goes again."),
        RelayOrder.EachMovement => "The athletes change after every movement: one set, then the tag to the next in the line-up. After the last athlete the first goes again.",
        RelayOrder.Listed listed => $"Who does which round is written down: {Rounds(listed)}. After that the list starts again.",
        RelayOrder.Together => "The team works as one. Nobody tags.",
        _ => throw new ArgumentOutOfRangeException(nameof(order), order, "This relay order has no words."),
    };

    private static string Rounds(RelayOrder.Listed listed) =>
        string.Join(", ", listed.Athletes.Select((athlete, i) => $"{BriefingWords.Count("round", i + 1)} {BriefingWords.Count("athlete", athlete)}"));

    private static string Finish(FinishKind finish) => finish switch
    {
        FinishKind.Line => "The time stops when the last athlete is across the finish line.",
        FinishKind.Mat => "The time stops when the whole team is on the mat.",
        _ => "The time stops with the last rep.",
    };
}
