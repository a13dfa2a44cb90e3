namespace LiveHeat.Engine.Standings;

public class RankingTests
{
    [Theory]
    // Standard competition ranking ("1224"). RosettaCode's ranking-methods data (high wins), outputs recomputed.
    [InlineData(new[] { 44, 42, 42, 41, 41, 41, 39 }, new[] { 1, 2, 2, 4, 4, 4, 7 })]
    // The same with low wins: 10, 15, 15, 20 (recomputed).
    [InlineData(new[] { 10, 15, 15, 20 }, new[] { 1, 2, 2, 4 })]
    [InlineData(new[] { 7, 7, 7 }, new[] { 1, 1, 1 })]
    [InlineData(new int[0], new int[0])]
    public void Those_who_tie_share_a_place_and_the_places_they_cover_are_not_given_again(int[] ranked, int[] places) =>
        Assert.Equal(places, Ranking.Places(ranked, (left, right) => left == right));
}
