using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;
using LiveHeat.Testing.Paced;

namespace LiveHeat.Engine.Forecasts;

/// <summary>Catches and tags to come, on heats whose truth is known.</summary>
public class PassagesTests
{
    private const int Heats = 160;
    private static readonly double[] Moments = [0.3, 0.4, 0.5, 0.6, 0.7, 0.8];

    private static readonly IReadOnlyList<(PacedHeat Heat, long At, HeatState State, HeatForecast Forecast)> Played =
    [
        .. from seed in Enumerable.Range(1, Heats)
           let heat = PacedHeat.From(new Random(seed), PacedHeat.Hall(new Random(1000 + seed)))
           from share in Moments
           let at = (long)(heat.Finishes.Min() * share)
           let state = heat.At(at)
           select (heat, at, state, Forecast.Whole(state, Some.Go + at, PacePriors.None, seed)),
    ];

    [Fact]
    public void Catches_come_true_about_as_often_as_they_say()
    {
        var told = Played.SelectMany(played => played.Forecast.Catches.Select(to => (to.Chance, CameTrue: Split(played.Heat, to.Chaser, to.Step) < Split(played.Heat, to.Chased, to.Step)))).ToList();

        Assert.InRange(told.Count, 120, 800);
        var (said, held) = (told.Average(one => one.Chance), told.Average(one => one.CameTrue ? 1.0 : 0));
        Assert.InRange(held, said - 0.15, said + 0.15);
    }

    [Fact]
    public void A_catch_is_of_the_team_one_place_ahead_within_half_a_minute() =>
        Assert.All(Played, played => Assert.All(played.Forecast.Catches, to =>
        {
            var state = played.State;
            Assert.InRange(to.InMs, 0, 30_000);
            Assert.InRange(to.Chance, 0.5, 1);
            Assert.True(state.Find(to.Chaser)!.DoneSteps < to.Step && state.Find(to.Chased)!.DoneSteps < to.Step);
            var places = Standings.LiveOrder.Of(state);
            Assert.Equal(places.Single(one => one.Lane == to.Chased).Place + 1, places.Single(one => one.Lane == to.Chaser).Place);
        }));

    [Fact]
    public void The_next_tag_of_every_team_at_work_is_told_of_and_half_of_them_come_within_ten_seconds_of_that()
    {
        var wrong = Played.SelectMany(played => played.Forecast.Tags.Select(tag => Math.Abs(Split(played.Heat, tag.Lane, tag.Step) - (played.At + tag.InMs)))).Order().ToList();

        Assert.InRange(wrong.Count, 9_000, 9_600);      // ten teams at 960 moments; who is on the last leg has no tag to come
        Assert.InRange(wrong[wrong.Count / 2], 0, 10_000);
        Assert.All(Played.SelectMany(played => played.Forecast.Tags.Select(tag => played.State.Find(tag.Lane)!.Plan.Steps[tag.Step - 1].Kind)), kind => Assert.Equal(StepKind.Tag, kind));
    }

    /// <summary>Where most work wins: ten minutes, at moments up to a quarter of a minute before its end.</summary>
    private static readonly double[] Minutes = [2, 3.5, 5, 6.5, 8, 9, 9.75];

    private static readonly IReadOnlyList<(PacedHeat Heat, long At, HeatState State, HeatForecast Forecast)> Endless =
    [
        .. from seed in Enumerable.Range(1, Heats)
           let heat = PacedHeat.From(new Random(seed), PacedHeat.Hall(new Random(1000 + seed)), shape: PacedShape.MostWork)
           from minute in Minutes
           let at = (long)(minute * 60_000)
           let state = heat.At(at)
           select (heat, at, state, Forecast.Whole(state, Some.Go + at, PacePriors.None, seed)),
    ];

    [Fact]
    public void Where_most_work_wins_catches_come_true_before_the_cap_about_as_often_as_they_say()
    {
        var told = Endless.SelectMany(played => played.Forecast.Catches.Select(to => (
            to.Chance, CameTrue: Split(played.Heat, to.Chaser, to.Step) is var mine && mine <= played.Heat.CapMs && mine < Split(played.Heat, to.Chased, to.Step)))).ToList();

        Assert.InRange(told.Count, 60, 500);
        var (said, held) = (told.Average(one => one.Chance), told.Average(one => one.CameTrue ? 1.0 : 0));
        Assert.InRange(held, said - 0.08, said + 0.08);
        Assert.All(Endless, played => Assert.All(played.Forecast.Catches, to => Assert.InRange(played.At + to.InMs, 0, played.Heat.CapMs)));
    }

    [Fact]
    public void Where_most_work_wins_tags_are_told_of_that_come_before_the_cap_and_no_finish()
    {
        var tags = Endless.SelectMany(played => played.Forecast.Tags.Select(tag => (played.Heat, Due: played.At + tag.InMs, Off: Split(played.Heat, tag.Lane, tag.Step) - (played.At + tag.InMs)))).ToList();

        Assert.InRange(tags.Count, 8_000, 11_200);       // ten teams at 1,120 moments; near the end many have no tag to come
        Assert.InRange(tags.Select(tag => Math.Abs(tag.Off)).Order().ElementAt(tags.Count / 2), 0, 10_000);
        Assert.InRange(tags.Average(tag => tag.Off), -1_500, 1_500);        // neither early nor late: tiring is reckoned against the cap
        Assert.All(tags, tag => Assert.InRange(tag.Due, 0, tag.Heat.CapMs));
        Assert.All(Endless, played => Assert.Empty(played.Forecast.Lanes));
    }

    [Fact]
    public void The_whole_says_of_finishes_what_the_lanes_alone_say() =>
        Assert.All(Played.Take(6), played => Assert.Equal(played.Forecast.Lanes, Forecast.Of(played.State, Some.Go + played.At, PacePriors.None, 1)));

    private static long Split(PacedHeat heat, LaneNumber lane, int step) => heat.Splits[lane.Value - 1][step - 1];
}
