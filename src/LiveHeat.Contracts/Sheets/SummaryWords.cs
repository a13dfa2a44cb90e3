using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Sheets;

/// <summary>A workout's shape in a few words: "8 rounds, one each in turn".</summary>
public static class SummaryWords
{
    private static readonly Wording Words = new(typeof(SummaryWords));

    /// <summary>The words: the work, then who does it.</summary>
    public static string Of(Workout workout) => Both(Work(workout), Order(workout));

    private static string Work(Workout workout)
    {
        var rounds = workout.Prescriptions.Select(prescription => prescription.Rounds).ToList();
        var (least, most) = (rounds.Min(), rounds.Max());
        return workout.Scoring switch
        {
            _ when workout.Prescriptions.Select(prescription => prescription.Clock).FirstOrDefault(clock => clock is not null) is { } clock =>
                clock.RestMs > 0 ? ByClockRest(least, most, TimeText.Whole(clock.WorkMs), TimeText.Whole(clock.RestMs)) : ByClock(least, most, TimeText.Whole(clock.WorkMs)),
            ScoringRule.MostWork => MostWork,
            ScoringRule.HeaviestLoad load => Attempts(load.Attempts),
            _ => most == 0 ? OnePiece : Rounds(least, most),
        };
    }

    private static string Order(Workout workout) => workout.Order switch
    {
        RelayOrder.InTurn when workout.Scoring is ScoringRule.HeaviestLoad => LiftInTurn,
        RelayOrder.EachMovement when workout.Scoring is ScoringRule.HeaviestLoad => LiftByAttempt,
        RelayOrder.InTurn => InTurn,
        RelayOrder.Blocks blocks => Blocks(blocks.Size),
        RelayOrder.EachMovement => EachMovement,
        RelayOrder.Listed => Listed,
        _ => Together,
    };

    private static string MostWork => Words[nameof(MostWork)];

    private static string OnePiece => Words[nameof(OnePiece)];

    private static string LiftInTurn => Words[nameof(LiftInTurn)];

    private static string LiftByAttempt => Words[nameof(LiftByAttempt)];

    private static string InTurn => Words[nameof(InTurn)];

    private static string EachMovement => Words[nameof(EachMovement)];

    private static string Listed => Words[nameof(Listed)];

    private static string Together => Words[nameof(Together)];

    private static string Rounds(int least, int most) => least == most ? Words.Count(nameof(Rounds), most) : RoundsBetween(least, most);

    private static string RoundsBetween(int least, int most) => Words.Say(nameof(RoundsBetween), least, most);

    private static string ByClock(int least, int most, string work) => least == most ? Words.Count(nameof(ByClock), most, work) : ByClockBetween(least, most, work);

    private static string ByClockBetween(int least, int most, string work) => Words.Say(nameof(ByClockBetween), least, most, work);

    private static string ByClockRest(int least, int most, string work, string rest) =>
        least == most ? Words.Count(nameof(ByClockRest), most, work, rest) : ByClockRestBetween(least, most, work, rest);

    private static string ByClockRestBetween(int least, int most, string work, string rest) => Words.Say(nameof(ByClockRestBetween), least, most, work, rest);

    private static string Attempts(int attempts) => Words.Count(nameof(Attempts), attempts);

    private static string Blocks(int rounds) => Words.Count(nameof(Blocks), rounds);

    private static string Both(string work, string order) => Words.Say(nameof(Both), work, order);
}
