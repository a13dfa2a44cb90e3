using System.Globalization;
using LiveHeat.Contracts.Frames;
using LiveHeat.Engine;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Screens.Announcer;

/// <summary>Callouts of rounds by the clock as sentences: three rounds of 1:00 with 0:30 rest, one athlete each.</summary>
public sealed class RoundCalloutWordsTests : IDisposable
{
    private static readonly IReadOnlyList<LaneView> Lanes = Of("open");
    private static readonly CalloutWords Words = new();
    private readonly CultureInfo before = CultureInfo.CurrentUICulture;

    public void Dispose() => CultureInfo.CurrentUICulture = before;

    private static IReadOnlyList<LaneView> Of(params string[] divisions) => [.. SomeHeat.Lanes("start", Some.Snapshot(3, Some.Workout(
        finish: FinishKind.None, prescriptions: [.. divisions.Distinct().Select(division => Some.Prescription(division, 3, 240_000) with { Clock = new WorkClock(60_000, 30_000, Repeat: false) })])
        with { Scoring = new ScoringRule.MostWork() }, 3, divisions)).Select(lane => lane with { State = lane.State with { Status = LaneStatus.Working } })];

    private static Callout About(CalloutKind kind, int round, params int[] lanes) =>
        new("id", kind, 50, Some.Go, CalloutGrounds.Clock, (lanes.Length == 0 ? [1, 2, 3] : lanes).Select(Some.Lane).ToItems()) { Round = round, Due = Some.Go + 72_000 };

    private static string Said(string language, Callout callout, IReadOnlyList<LaneView>? lanes = null)
    {
        CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(language);
        return Words.Sentence(callout, lanes ?? Lanes, Some.Go + 60_000);
    }

    [Theory]
    [InlineData("en", CalloutKind.RoundEnds, 2, "Round 2 ends in 12 seconds.")]
    [InlineData("en", CalloutKind.RoundEnds, 3, "The last round ends in 12 seconds.")]
    [InlineData("es", CalloutKind.RestBegins, 1, "La ronda 1 ha acabado. Descanso: la ronda 2 empieza en 12 segundos.")]
    [InlineData("de", CalloutKind.RestBegins, 2, "Runde 2 ist vorbei. Pause: Die letzte Runde beginnt in 12 Sekunden.")]
    [InlineData("en", CalloutKind.RoundBegins, 2, "Round 2 of 3 begins in 12 seconds.")]
    [InlineData("fr", CalloutKind.RoundBegins, 3, "Le dernier tour commence dans 12 secondes.")]
    public void A_turn_of_the_clock_is_the_heats_and_names_nobody(string language, CalloutKind kind, int round, string sentence) => Assert.Equal(sentence, Said(language, About(kind, round)));

    [Fact]
    public void Where_others_work_by_another_clock_it_says_whose_it_is()
    {
        Assert.Equal("Masters: Round 2 ends in 12 seconds.", Said("en", About(CalloutKind.RoundEnds, 2, 2), Of("open", "masters", "open")));
        Assert.Equal("Team 3: Round 2 ends in 12 seconds.", Said("en", About(CalloutKind.RoundEnds, 2, 3)));
    }

    [Theory]
    [InlineData("en", "Team 2: Bo goes in next, in 12 seconds.")]
    [InlineData("es", "Team 2: entra Bo en 12 segundos.")]
    [InlineData("fr", "Team 2 : Bo part dans 12 secondes.")]
    [InlineData("de", "Team 2: als Nächstes Bo, in 12 Sekunden.")]
    public void Who_goes_in_is_named_with_the_time_that_is_left(string language, string sentence) => Assert.Equal(sentence, Said(language, About(CalloutKind.GoesIn, 2, 2) with { Step = 3 }));

    [Theory]
    [InlineData("en", 1, 7, "After round 1, Team 1 lead with 22 reps, 7 reps ahead of Team 3.")]
    [InlineData("en", 3, 0, "After the last round, Team 1 and Team 3 share the lead with 22 reps each.")]
    [InlineData("de", 1, 7, "Nach Runde 1 führen Team 1 mit 22 Wdh., 7 Wdh. vor Team 3.")]
    public void Who_leads_after_a_round_is_told_with_the_score(string language, int round, int ahead, string sentence) =>
        Assert.Equal(sentence, Said(language, About(CalloutKind.RoundLead, round, 1, 3) with { Worth = 22, Ahead = ahead }));

    [Fact]
    public void How_much_ahead_is_left_out_where_nobody_knows_and_an_athlete_where_several_worked()
    {
        Assert.Equal("After round 1, Team 1 lead with 22 reps.", Said("en", About(CalloutKind.RoundLead, 1, 1) with { Worth = 22 }));
        Assert.Equal("Team 3: Bo with 22 reps in round 2, the best round so far.", Said("en", About(CalloutKind.BestRound, 2, 3) with { Worth = 22, Step = 3 }));
        Assert.Equal("Team 3 with 22 reps in round 2, the best round so far.", Said("en", About(CalloutKind.BestRound, 2, 3) with { Worth = 22 }));
        CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");
        Assert.Equal("Team 1: too close to the end of round 2 to measure. Do not say whether it counts.", Words.Sentence(new NotYet(NotYetWhy.NearRoundEnd, [Some.Lane(1)]) { Round = 2 }, Lanes));
    }
}
