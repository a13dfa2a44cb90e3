using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Briefing;

/// <summary>Who does what in a relay, in sentences that can be read aloud.</summary>
internal static class RelayWords
{
    private static readonly Wording Words = new(typeof(RelayWords));

    public static IReadOnlyList<string> Of(Workout workout)
    {
        var before = workout.Prescriptions.Any(prescription => prescription.Before.Count > 0 && BriefingWords.Rounds(workout, prescription) is not null);
        var after = workout.Prescriptions.Any(prescription => prescription.After.Count > 0 && prescription.Rounds > 0);
        var together = workout.Order is RelayOrder.Together;
        string?[] sentences =
        [
            workout.Scoring is ScoringRule.HeaviestLoad load ? Attempts(workout.Order, load.Attempts) : ByClock(workout) ? OrderByClock(workout.Order) : Order(workout.Order),
            together ? null : OneAtATime,
            before && !together ? BeforeBy : null,
            after && !together ? AfterBy : null,
            Scored(workout),
            Equal(workout),
        ];
        return [.. sentences.OfType<string>()];
    }

    /// <summary>Somebody tags somebody: not where the team works as one, and not where the clock says who works.</summary>
    public static bool HasTags(Workout workout) => workout.Order is not RelayOrder.Together && (!ByClock(workout) || workout.Order is RelayOrder.EachMovement);

    private static bool ByClock(Workout workout) => workout.Prescriptions.Any(prescription => prescription.Clock is not null);

    private static string OrderByClock(RelayOrder order) => order switch
    {
        RelayOrder.InTurn or RelayOrder.Blocks { Size: 1 } => InTurnByClock,
        RelayOrder.Blocks blocks => BlocksByClock(blocks.Size),
        _ => Order(order),
    };

    private static string Attempts(RelayOrder order, int attempts) => order switch
    {
        RelayOrder.EachMovement => LiftByAttempt(attempts),
        RelayOrder.Together => LiftTogether(attempts),
        _ => LiftInTurn(attempts),
    };

    private static string Scored(Workout workout) => workout.Scoring switch
    {
        ScoringRule.HeaviestLoad { LoadSum: LoadSum.SumOfBest } => SumOfBest,
        ScoringRule.HeaviestLoad => BestLift,
        ScoringRule.MostReading => Readings,
        ScoringRule.MostWork => ByClock(workout) ? InEveryRound : UntilCap,
        _ => workout.Finish switch { FinishKind.Line => StopsAtLine, FinishKind.Mat => StopsOnMat, _ => StopsWithLastRep },
    };

    /// <summary>What becomes of teams of the same score; null where there is nothing to say: they share the place, and no cap stops anybody before another.</summary>
    private static string? Equal(Workout workout) => workout.Scoring is ScoringRule.HeaviestLoad or ScoringRule.MostReading || ByClock(workout) ? null
        : workout.EqualWork == EqualWork.Shared ? SharedAtCap : EarlierAhead;

    private static string Order(RelayOrder order) => order switch
    {
        RelayOrder.InTurn or RelayOrder.Blocks { Size: 1 } => InTurn,
        RelayOrder.Blocks blocks => Blocks(blocks.Size),
        RelayOrder.EachMovement => EachMovement,
        RelayOrder.Listed listed => Listed(string.Join(", ", listed.Athletes.Select((athlete, i) => RoundAthlete(i + 1, athlete)))),
        RelayOrder.Together => Together,
        _ => throw new ArgumentOutOfRangeException(nameof(order), order, "This relay order has no words."),
    };

    private static string EarlierAhead => Words[nameof(EarlierAhead)];

    private static string SharedAtCap => Words[nameof(SharedAtCap)];

    private static string OneAtATime => Words[nameof(OneAtATime)];

    private static string BeforeBy => Words[nameof(BeforeBy)];

    private static string AfterBy => Words[nameof(AfterBy)];

    private static string SumOfBest => Words[nameof(SumOfBest)];

    private static string BestLift => Words[nameof(BestLift)];

    private static string Readings => Words[nameof(Readings)];

    private static string UntilCap => Words[nameof(UntilCap)];

    private static string InTurn => Words[nameof(InTurn)];

    private static string InTurnByClock => Words[nameof(InTurnByClock)];

    private static string InEveryRound => Words[nameof(InEveryRound)];

    private static string EachMovement => Words[nameof(EachMovement)];

    private static string Together => Words[nameof(Together)];

    private static string StopsAtLine => Words[nameof(StopsAtLine)];

    private static string StopsOnMat => Words[nameof(StopsOnMat)];

    private static string StopsWithLastRep => Words[nameof(StopsWithLastRep)];

    private static string LiftByAttempt(int attempts) => Words.Count(nameof(LiftByAttempt), attempts);

    private static string LiftTogether(int attempts) => Words.Count(nameof(LiftTogether), attempts);

    private static string LiftInTurn(int attempts) => Words.Count(nameof(LiftInTurn), attempts);

    private static string Blocks(int rounds) => Words.Count(nameof(Blocks), rounds);

    private static string BlocksByClock(int rounds) => Words.Count(nameof(BlocksByClock), rounds);

    private static string Listed(string rounds) => Words.Say(nameof(Listed), rounds);

    private static string RoundAthlete(int round, int athlete) => Words.Say(nameof(RoundAthlete), round, athlete);
}
