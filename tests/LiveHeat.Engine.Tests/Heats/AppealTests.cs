using LiveHeat.Engine.Scoring;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats;

/// <summary>Appeals and disqualification as the fold has them.</summary>
public class AppealTests
{
    private const string Through = "start\nlane 1 step 9 done at 2:00\nlane 2 step 9 done at 2:10\nlane 3 step 2 done at 2:20\n";

    private static HeatScript Heat(string score = "") => new HeatScript().Then(Through + score);

    private static string Result(HeatState heat) =>
        string.Join(' ', HeatResult.Of(heat, HeatScript.At("11:00")).Select(line => $"{line.Lane.Lane}:{line.Outcome}:{line.Place?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "-"}"));

    [Fact]
    public void An_appeal_is_open_until_it_is_decided_and_open_again_when_the_decision_is_voided()
    {
        var script = Heat("lane 2 appeals [appeal]");
        Assert.Equal([new LaneNumber(2)], script.State.Pending);

        script.Then("decide appeal: no change [decision]");
        Assert.Empty(script.State.Pending);

        script.Then("void decision");
        Assert.Equal([new LaneNumber(2)], script.State.Pending);

        script.Then("void appeal");
        Assert.Empty(script.State.Pending);
        Assert.Empty(script.State.Find(Some.Lane(2))!.Appeals);
    }

    [Fact]
    public void Seconds_of_either_sign_move_the_time_and_the_order()
    {
        var script = Heat("lane 2 appeals [appeal]\ndecide appeal: -15000 ms [decision]");
        Assert.Equal(115_000, script.State.Find(Some.Lane(2))!.MeasuredMs);
        Assert.Equal("2 1 3", HeatScript.Board(script.State));

        Assert.Equal("1 2 3", HeatScript.Board(script.Then("void decision").State));
        Assert.Equal("2 1 3", HeatScript.Board(script.Then("lane 1 appeals [other]\ndecide other: 15000 ms").State));
    }

    [Fact]
    public void Reps_of_either_sign_move_the_worth_and_never_make_it_more_than_there_is()
    {
        static int Worth(string reps) => LiveOrder.Worth(Heat($"lane 3 appeals [appeal]\ndecide appeal: {reps} reps").State.Find(Some.Lane(3))!);

        Assert.Equal(27, Worth("-5"));
        Assert.Equal(17, Worth("5"));
        Assert.Equal(66, Worth("-1000"));
        Assert.Equal(0, Worth("1000"));
    }

    [Fact]
    public void A_rerun_by_appeal_is_a_rerun_and_falls_with_the_decision()
    {
        var script = Heat("lane 2 appeals [appeal]\ndecide appeal: rerun in h9 [decision]");
        Assert.Equal((new HeatId("h9"), new LaneNumber(2)), (script.State.Reruns.Single().InHeat, script.State.Reruns.Single().Lanes.Single()));

        Assert.Empty(script.Then("void decision").State.Reruns);
    }

    [Fact]
    public void A_freeze_posts_the_result_and_opens_the_window_and_a_reopening_closes_neither_door()
    {
        var script = Heat("end at 10:10");
        Assert.Null(script.State.AppealsUntil);

        script.Then("freeze at 12:00");
        Assert.Equal(HeatScript.At("27:00"), script.State.AppealsUntil);

        script.Then("sign organiser at 13:00\nsign head judge at 13:10");
        Assert.Equal(HeatScript.At("27:00"), script.State.AppealsUntil);

        Assert.Null(script.Then("reopen at 14:00").State.AppealsUntil);
        Assert.Equal(HeatScript.At("35:00"), script.Then("freeze at 20:00").State.AppealsUntil);
    }

    [Fact]
    public void The_window_is_as_long_as_the_competition_says()
    {
        var script = new HeatScript(Some.Snapshot() with { AppealMinutes = 5 }).Then(Through + "end at 10:10\nfreeze at 12:00");

        Assert.Equal(HeatScript.At("17:00"), script.State.AppealsUntil);
    }

    [Fact]
    public void A_disqualified_team_has_no_place_stands_last_and_comes_back_when_the_ruling_is_voided()
    {
        var script = Heat("disqualify lane 1 [out]");
        Assert.Equal("2 3", HeatScript.Board(script.State));
        Assert.Equal("2:Finished:1 3:Capped:2 1:Disqualified:-", Result(script.State));

        Assert.Equal("1:Finished:1 2:Finished:2 3:Capped:3", Result(script.Then("void out").State));
    }

    [Fact]
    public void Who_is_disqualified_before_go_is_not_waited_for()
    {
        var script = new HeatScript(seated: false).Then("""
            lane 1 seat s-1 taken as primary at -0:50
            lane 2 seat s-2 taken as primary at -0:50
            lane 1 ready with s-1
            lane 2 ready with s-2
            """);
        Assert.Equal(Phase.Called, script.State.PhaseAt(HeatScript.At("-0:30")));

        Assert.Equal(Phase.Armed, script.Then("disqualify lane 3").State.PhaseAt(HeatScript.At("-0:30")));
    }

    [Fact]
    public void A_call_replaced_forgets_who_was_disqualified_on_the_lane_before()
    {
        var script = new HeatScript().Then("disqualify lane 1 at -0:30");
        Assert.True(script.State.Find(Some.Lane(1))!.Out);

        Assert.False(script.Then("call again at -0:20").State.Find(Some.Lane(1))!.Out);
    }

    [Fact]
    public void News_tells_of_a_disqualification_once()
    {
        var before = Heat();
        var (state, places) = (before.State, LiveOrder.Of(before.State));
        var after = before.Then("disqualify lane 1").State;

        Assert.Equal([NewsKind.Disqualified], News.Between(state, places, after, LiveOrder.Of(after), after.Entries[^1].Fact).Select(item => item.Kind));
        var again = before.Then("disqualify lane 1").State;
        Assert.Empty(News.Between(after, LiveOrder.Of(after), again, LiveOrder.Of(again), again.Entries[^1].Fact));
    }

    [Fact]
    public void Over_several_heats_who_ranks_below_comes_after_all_others_and_who_is_out_has_no_place()
    {
        var setting = Some.Snapshot(workout: Some.Workout() with { Consequences = new(Consequence.RanksBelow) });
        var one = HeatScript.Play(Through + "lane 1 athlete 3 works step 1 at 0:10", setting);
        var other = HeatScript.Play("start\nlane 1 step 9 done at 4:00\nlane 2 athlete 3 works step 1 at 0:10\nlane 2 step 9 done at 1:00\nlane 3 step 9 done at 2:00\ndisqualify lane 3", setting);

        var places = WorkoutOrder.Of(Results(one, "a").Concat(Results(other, "b")));

        Assert.Equal(["a2 1", "b1 2", "a3 3", "b2 4", "a1 5", "b3 0 Disqualified"],
            places.Select(place => $"{place.Team} {place.Place}{(place.Taken == Points.Taken.Placed ? "" : $" {place.Taken}")}"));
    }

    private static IEnumerable<TeamResult> Results(HeatState heat, string name) => HeatResult.Of(heat, HeatScript.At("11:00"))
        .Select(line => new TeamResult($"{name}{line.Lane.Lane}", new HeatId(name), line, Certified: true));
}
