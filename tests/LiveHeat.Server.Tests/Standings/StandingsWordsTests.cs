using LiveHeat.Contracts.Standings;
using LiveHeat.Engine.Points;
using LiveHeat.Engine.Scoring;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Standings;

public sealed class StandingsWordsTests
{
    private static readonly StandingsScore Score = new(new("h1"), 1, 1, Taken.Placed, false, true, false, null, 122);

    [Fact]
    public void A_score_is_told_as_what_it_counts()
    {
        Assert.Equal("122 reps", StandingsWords.Score(Score));
        Assert.Equal("5 rounds + 12 reps", StandingsWords.Score(Score with { RoundsAndReps = new RoundsAndReps(5, 12) }));
        Assert.Equal("327.5 kg", StandingsWords.Score(Score with { Worth = 327_500, Score = ScoreUnit.Of(Unit.Kg) }));
        Assert.Equal("1,284 m", StandingsWords.Score(Score with { Worth = 1284, Score = ScoreUnit.Of(Unit.M) }));
        Assert.Equal("3:00.0", StandingsWords.Score(Score with { OfficialMs = 180_000 }));
        Assert.Equal("did not start", StandingsWords.Score(Score with { Taken = Taken.DidNotStart }));
    }
}
