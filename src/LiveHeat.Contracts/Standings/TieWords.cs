using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Points;

namespace LiveHeat.Contracts.Standings;

/// <summary>Why one of two teams with equal totals is ahead, in words.</summary>
public static class TieWords
{
    private static readonly Wording Words = new(typeof(TieWords));

    /// <param name="why">The reason.</param>
    /// <param name="workout">The name of the workout that it names, if any.</param>
    public static string Of(TieBreak why, string? workout) => why.Rule switch
    {
        TieRule.BestScores when why.Rank == 1 => BestPlace(why),
        TieRule.BestScores => NextBestPlace(why),
        TieRule.LatestWorkout => LatestWorkout(why, workout),
        TieRule.CountBack => CountBack(why),
        _ => Level,
    };

    private static string Level => Words[nameof(Level)];

    private static string BestPlace(TieBreak why) => Words.Say(nameof(BestPlace), Numbers.Of(why.Own), Numbers.Of(why.Other));

    private static string NextBestPlace(TieBreak why) => Words.Say(nameof(NextBestPlace), Numbers.Place(why.Rank), Numbers.Of(why.Own), Numbers.Of(why.Other));

    private static string LatestWorkout(TieBreak why, string? workout) => Words.Say(nameof(LatestWorkout), workout, Numbers.Of(why.Own), Numbers.Of(why.Other));

    private static string CountBack(TieBreak why) => Words.Say(nameof(CountBack), Numbers.Place(why.Rank), Numbers.Of(why.Own), Numbers.Of(why.Other));
}
