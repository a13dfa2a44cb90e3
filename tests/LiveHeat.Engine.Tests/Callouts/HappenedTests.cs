using LiveHeat.Testing;

namespace LiveHeat.Engine.Callouts;

/// <summary>Callouts from what has happened: each kind, how long it lives, and that it is one thing however often it is told.</summary>
public class HappenedTests
{
    private const string LeadTaken = "start\nlane 1 step 1 done at 0:40\nlane 2 step 2 done at 1:05";

    [Fact]
    public void A_lead_taken_names_who_from_whom_and_since_when()
    {
        var lead = SaidAt.One(SaidAt.Of(LeadTaken, "1:06"), CalloutKind.Lead);

        Assert.Equal((HeatScript.At("1:05"), CalloutGrounds.Confirmed, 2, 1), (lead.At, lead.Grounds, lead.Step, lead.Place));
        Assert.Equal([Some.Lane(2), Some.Lane(1)], lead.Lanes);
        Assert.Null(lead.Due);
        Assert.Null(lead.Chance);
    }

    [Fact]
    public void An_overtake_further_back_names_the_place_it_made()
    {
        var pass = SaidAt.One(SaidAt.Of("start\nlane 1 step 2 done at 1:00\nlane 2 step 1 done at 0:50\nlane 3 step 1 done at 0:49", "1:01"), CalloutKind.Overtake);

        Assert.Equal([Some.Lane(3), Some.Lane(2)], pass.Lanes);
        Assert.Equal(2, pass.Place);
    }

    [Fact]
    public void A_tag_is_told_of_the_newest_only_for_each_team()
    {
        var sheet = SaidAt.Of("start\nlane 1 step 2 done at 0:55\nlane 1 tag 3 at 0:57\nlane 1 step 5 done at 1:01\nlane 1 tag 6 at 1:03", "1:04");

        Assert.Equal(6, SaidAt.One(sheet, CalloutKind.Tag).Step);
    }

    [Fact]
    public void A_finish_has_its_time_and_its_place()
    {
        var finish = SaidAt.One(SaidAt.Of("start\nlane 2 step 9 done at 5:00.3\nlane 1 step 9 done at 5:10", "5:11"), CalloutKind.Finish, Some.Lane(1));

        Assert.Equal((310_000L, 2), (finish.Ms, finish.Place));
    }

    [Fact]
    public void A_team_that_stopped_is_told_of() => Assert.Equal("Stopped 1", SaidAt.Told(SaidAt.Of("start\nlane 1 step 2 done at 1:00\nlane 1 stopped medical at 2:00", "2:01")));

    [Theory]
    [InlineData("1:29", true)]
    [InlineData("1:31", false)]
    public void A_lead_that_nobody_told_of_in_time_is_dropped(string at, bool told) =>
        Assert.Equal(told, SaidAt.Of(LeadTaken, at).Callouts.Any(callout => callout.Kind == CalloutKind.Lead));

    [Theory]
    [InlineData(CalloutKind.Finish, "start\nlane 1 step 9 done at 5:00", "5:40", "5:41")]
    [InlineData(CalloutKind.Stopped, "start\nlane 1 stopped medical at 5:00", "5:40", "5:41")]
    [InlineData(CalloutKind.Tag, "start\nlane 1 tag 3 at 5:00", "5:12", "5:13")]
    [InlineData(CalloutKind.Overtake, "start\nlane 1 step 5 done at 4:00\nlane 2 step 1 done at 4:50\nlane 3 step 2 done at 5:00", "5:20", "5:21")]
    public void Each_kind_has_a_life_of_its_own(CalloutKind kind, string score, string alive, string stale)
    {
        Assert.Contains(SaidAt.Of(score, alive).Callouts, callout => callout.Kind == kind);
        Assert.DoesNotContain(SaidAt.Of(score, stale).Callouts, callout => callout.Kind == kind);
    }

    [Theory]
    [InlineData("halt at 5:10")]
    [InlineData("end at 5:10")]
    [InlineData("end at 5:10\nfreeze at 5:20")]
    public void A_clock_that_stands_keeps_nothing_fresh(string stands)
    {
        var score = $"start\nlane 1 step 9 done at 5:00\n{stands}";

        Assert.Equal("Finish 1", SaidAt.Told(SaidAt.Of(score, "5:40")));
        Assert.Empty(SaidAt.Of(score, "5:41").Callouts);
    }

    [Fact]
    public void A_callout_knows_by_the_instant_when_it_is_stale()
    {
        var lead = SaidAt.One(SaidAt.Of(LeadTaken, "1:06"), CalloutKind.Lead);

        Assert.Equal((false, true), (lead.IsStale(HeatScript.At("1:30")), lead.IsStale(HeatScript.At("1:30") + 1)));
    }

    [Fact]
    public void The_same_thing_has_the_same_id_at_every_moment_and_another_of_the_kind_has_another()
    {
        var first = SaidAt.One(SaidAt.Of(LeadTaken, "1:06"), CalloutKind.Lead);
        var later = SaidAt.One(SaidAt.Of($"{LeadTaken}\nlane 3 step 1 done at 1:10", "1:12"), CalloutKind.Lead);
        var again = SaidAt.One(SaidAt.Of($"{LeadTaken}\nlane 1 step 3 done at 1:15", "1:16"), CalloutKind.Lead);

        Assert.Equal(first.Id, later.Id);
        Assert.NotEqual(first.Id, again.Id);
        Assert.True(later.Weight < first.Weight, "It weighs less the older it is.");
    }

    [Fact]
    public void A_lead_that_was_taken_back_or_lost_again_is_not_said()
    {
        Assert.Empty(SaidAt.Of("start\nlane 1 step 1 done at 0:40\nlane 2 step 2 done at 1:05 [wrong]\nlane 2 undo wrong at 1:06", "1:07").Callouts);
        Assert.Equal("Lead 1,2", SaidAt.Told(SaidAt.Of($"{LeadTaken}\nlane 1 step 3 done at 1:08", "1:09")).Split("; ")[0]);
    }

    [Fact]
    public void Before_GO_and_after_the_result_is_signed_nothing_is_said()
    {
        Assert.Equal(CalloutSheet.Empty, SaidAt.Of("", "0:01"));
        Assert.Empty(SaidAt.Of("start\nlane 1 step 9 done at 5:00", "-0:05").Callouts);
    }
}
