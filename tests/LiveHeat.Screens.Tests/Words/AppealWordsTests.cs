using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Words;

public sealed class AppealWordsTests
{
    [Theory]
    [InlineData(null, "2 reps")]
    [InlineData(Unit.Kg, "2 kg")]
    [InlineData(Unit.Cal, "2 cal")]
    public void What_an_appeal_costs_is_told_in_what_the_score_counts(Unit? unit, string amount) => Assert.Contains(
        amount, AppealWords.Outcome(AppealOutcome.Reps, 0, 2, null, unit is { } counted ? new ScoreUnit(counted, 1) : null), StringComparison.Ordinal);
}
