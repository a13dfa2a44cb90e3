using System.Globalization;
using LiveHeat.Engine.Points;

namespace LiveHeat.Contracts.Standings;

/// <summary>Why one of two teams with equal totals is ahead, in words.</summary>
public static class TieWords
{
    /// <param name="why">The reason.</param>
    /// <param name="workout">The name of the workout that it names, if any.</param>
    public static string Of(TieBreak why, string? workout) => why.Rule switch
    {
        TieRule.BestScores when why.Rank == 1 => $"ahead on best place: {Number(why.Own)} against {Number(why.Other)}",
        TieRule.BestScores => $"ahead on {Ordinal(why.Rank)} best place: {Number(why.Own)} against {Number(why.Other)}",
        TieRule.LatestWorkout => $"ahead in {workout}: {Number(why.Own)} against {Number(why.Other)}",
        TieRule.CountBack => $"ahead on {Ordinal(why.Rank)} places: {Number(why.Own)} against {Number(why.Other)}",
        _ => "level: nothing parts them",
    };

    private static string Number(decimal points) => points.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Ordinal(int rank) => rank.ToString(CultureInfo.InvariantCulture) + (rank % 100 is 11 or 12 or 13 ? "th" : (rank % 10) switch
    {
        1 => "st", 2 => "nd", 3 => "rd", _ => "th",
    });
}
