using LiveHeat.Engine.Forecasts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Callouts;

/// <summary>Results of earlier heats of the workout, told while the next one is on. All heats have the same GO here: what matters is when their results came in.</summary>
public class ResultsTests
{
    private const string Raced = "start\nlane 1 step 9 done at 5:00\nlane 2 step 9 done at 5:04.2\nlane 3 step 4 done at 6:00\nend at 10:10";
    private const string Posted = $"{Raced}\nfreeze at 12:00";

    [Fact]
    public void A_result_that_is_signed_says_who_won_with_what_and_by_how_much()
    {
        var won = One(Told("12:30", Heat("h1", Posted, certified: true)), CalloutKind.HeatResult);

        Assert.Equal((HeatScript.At("12:20"), CalloutGrounds.Confirmed, 0), (won.At, won.Grounds, won.Lanes.Count));
        Assert.Equal(new EarlierResult(new HeatId("h1"), "Heat 1", null, ["Team 1"], true, 300_000, 80) { Second = "Team 2", AheadMs = 4_200 }, won.Earlier! with { Worth = 80 });
    }

    [Fact]
    public void Posted_it_is_not_official_and_signed_it_is_another_thing_worth_saying()
    {
        var (posted, signed) = (One(Told("12:10", Heat("h1", Posted)), CalloutKind.HeatResult), One(Told("12:30", Heat("h1", Posted, certified: true)), CalloutKind.HeatResult));

        Assert.Equal((false, true), (posted.Earlier!.Official, signed.Earlier!.Official));
        Assert.NotEqual(posted.Id, signed.Id);
        Assert.Equal(signed.Id, One(Told("13:00", Heat("h1", Posted, certified: true)), CalloutKind.HeatResult).Id);
    }

    [Fact]
    public void Signed_with_a_lane_pending_it_is_not_final() =>
        Assert.False(One(Told("12:30", Heat("h1", $"{Posted}\nlane 3 appeals at 12:05", certified: true)), CalloutKind.HeatResult).Earlier!.Official);

    [Theory]
    [InlineData("start\nlane 1 step 9 done at 5:00\nlane 2 step 9 done at 5:00.1\nend at 10:10\nfreeze at 12:00")]
    [InlineData("start\nlane 1 step 9 done at 5:00\nlane 2 step 9 done at 5:04\nlane 2 reads back disputed at 5:05\nend at 10:10\nfreeze at 12:00")]
    [InlineData(Raced)]
    public void Nobody_is_named_while_something_is_open_or_nothing_is_posted(string score) => Assert.Empty(Told("12:10", Heat("h1", score)));

    [Theory]
    [InlineData("15:00", true)]
    [InlineData("15:01", false)]
    public void It_lives_three_minutes(string at, bool told) => Assert.Equal(told, Told(at, Heat("h1", Posted)).Count > 0);

    [Fact]
    public void By_how_much_is_told_in_reps_where_nobody_finished_and_not_at_all_where_only_one_did()
    {
        var capped = One(Told("12:10", Heat("h1", "start\nlane 1 step 4 done at 5:00\nlane 2 step 2 done at 5:04\nend at 10:10\nfreeze at 12:00")), CalloutKind.HeatResult).Earlier!;
        Assert.Equal(("Team 2", null, 10, null), (capped.Second, capped.AheadMs, capped.AheadWorth, capped.Ms));

        var alone = One(Told("12:10", Heat("h1", "start\nlane 1 step 9 done at 5:00\nlane 2 step 2 done at 5:04\nend at 10:10\nfreeze at 12:00")), CalloutKind.HeatResult).Earlier!;
        Assert.Equal((null, null, null, 300_000L), (alone.Second, alone.AheadMs, alone.AheadWorth, alone.Ms));
    }

    [Fact]
    public void Two_divisions_are_told_by_themselves_and_what_is_open_in_one_keeps_back_nothing_of_the_other()
    {
        var heat = Some.Snapshot(4, null, 3, "open", "scaled");
        var told = Told("12:10", Heat("h1", "start\nlane 1 step 9 done at 5:00\nlane 3 step 9 done at 5:02\nlane 2 step 9 done at 6:00\nlane 4 step 9 done at 6:00.1\nend at 10:10\nfreeze at 12:00", heat: heat));

        Assert.Equal([("Open", "Team 1")], told.Select(one => (one.Earlier!.Division!, one.Earlier.Teams[0])));
    }

    [Theory]
    [InlineData("4:50", "Team 11", false)]
    [InlineData("5:10", "Team 1", true)]
    public void Who_leads_the_workout_since_is_told_and_whether_they_did_before(string secondHeats, string leads, bool kept)
    {
        var first = Heat("h1", "start\nlane 1 step 9 done at 5:00\nlane 2 step 9 done at 5:04\nend at 10:10\nfreeze at 10:20", certified: true);
        var second = Heat("h2", $"start\nlane 1 step 9 done at {secondHeats}\nlane 2 step 9 done at 6:00\nend at 10:10\nfreeze at 14:00", heat: Others());
        var told = Told("14:10", first, second);

        var lead = One(told, CalloutKind.WorkoutLead);
        Assert.Equal((leads, kept, false, new HeatId("h2")), (lead.Earlier!.Teams[0], lead.Earlier.Kept, lead.Earlier.Official, lead.Earlier.Heat));
        Assert.Equal("Team 11", One(told, CalloutKind.HeatResult).Earlier!.Teams[0]);
    }

    [Fact]
    public void The_first_result_of_a_workout_says_nothing_of_who_leads_it() => Assert.DoesNotContain(Told("12:30", Heat("h1", Posted, certified: true)), one => one.Kind == CalloutKind.WorkoutLead);

    [Theory]
    [InlineData("", true)]
    [InlineData("start", true)]
    [InlineData("start\nend at 12:01", true)]
    [InlineData("start\nend at 12:01\nfreeze at 12:02", false)]
    public void It_is_told_while_the_next_heat_is_called_or_on(string next, bool told) => Assert.Equal(told, ToldIn(HeatScript.Play(next), "12:10", Heat("h1", Posted)).Count > 0);

    [Theory]
    [InlineData("12:15", false)]
    [InlineData("12:21", true)]
    public void In_a_count_down_nothing_is_told(string at, bool told) => Assert.Equal(told, ToldIn(HeatScript.Play("start at 12:20"), at, Heat("h1", Posted)).Count > 0);

    /// <summary>Who leads over the whole competition is worth saying with the result itself on the screen too; a lead that is old, or that stands as it stood, less so.</summary>
    [Theory]
    [InlineData("", "12:00", false, 68)]
    [InlineData("", "12:00", true, 51)]
    [InlineData("", "12:00", null, 51)]
    [InlineData("", "13:30", false, 51)]
    [InlineData("", "15:01", false, null)]
    [InlineData("start", "12:00", false, 68)]
    [InlineData("start at 12:10", "12:05", false, null)]
    [InlineData("start\nend at 11:01\nfreeze at 12:00", "12:00", false, 68)]
    public void Who_leads_over_the_whole_competition_is_told_whichever_heat_is_on_but_in_a_count_down(string heat, string at, bool? kept, int? weight)
    {
        var next = HeatScript.Play(heat);
        var news = new OverallNews("overall", HeatScript.At("12:00"), new OverallLead(new HeatId("h0"), null, 2, ["Team 1"], true, 3) { Kept = kept });

        var told = HeatCallouts.Of(next, LiveOrder.Of(next), [], (HeatForecast.Nothing, Some.Go), Bests.None, HeatScript.At(at), [], [news]).Callouts;

        Assert.Equal(weight, told.SingleOrDefault(one => one.Kind == CalloutKind.OverallLead)?.Weight);
        Assert.All(told, one => Assert.Equal(("overall", news.Lead), (one.Id, one.Overall)));
    }

    private static HeatState Heat(string id, string score, bool certified = false, HeatSnapshot? heat = null)
    {
        var script = new HeatScript(heat).Then(score);
        if (certified)
        {
            var at = script.State.Freeze!.Instant + 20_000;
            script.Append(new HeatFact.Certified { Id = Some.Id("one", 1), Instant = at, By = Some.Organiser, Head = script.State.SignedHead });
            script.Append(new HeatFact.Certified { Id = Some.Id("two", 1), Instant = at, By = Some.HeadJudge, Head = script.State.SignedHead });
        }

        return HeatState.Fold(new HeatId(id), script.Entries);
    }

    /// <summary>Other teams than those of the first heat.</summary>
    private static HeatSnapshot Others()
    {
        var heat = Some.Snapshot(2);
        return heat with { Title = "Heat 2", Lanes = heat.Lanes.Select(lane => lane with { Team = $"t1{lane.Lane}", Name = $"Team 1{lane.Lane}" }).ToItems() };
    }

    private static List<Callout> Told(string at, params HeatState[] earlier) => ToldIn(HeatScript.Play(""), at, earlier);

    private static List<Callout> ToldIn(HeatState next, string at, params HeatState[] earlier) =>
        [.. HeatCallouts.Of(next, LiveOrder.Of(next), [], (HeatForecast.Nothing, Some.Go), Bests.None, HeatScript.At(at), earlier).Callouts.Where(one => one.Earlier is not null)];

    private static Callout One(IEnumerable<Callout> told, CalloutKind kind) => Assert.Single(told, one => one.Kind == kind);
}
