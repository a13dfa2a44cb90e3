using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Rules;

public class CallRulesTests
{
    private static readonly FactId Id = Some.Id("asks", 1);

    private static string Code(Verdict verdict) => verdict is Verdict.Refused refused ? refused.Code : "ok";

    private static Verdict Call(HeatSnapshot? setup) => HeatRules.Decide(HeatState.Empty(Some.Heat), new HeatCommand.Call { Id = Id }, Some.Asking(Some.Organiser, Some.Go, setup: setup));

    private static Verdict Ask(HeatScript heat, HeatCommand command, By by, int? lane = null) => HeatRules.Decide(heat.State, command, Some.Asking(by, HeatScript.At("-0:30"), lane));

    [Fact]
    public void A_call_takes_the_whole_setup_along()
    {
        var snapshot = Some.Snapshot();

        Assert.Equal(snapshot, Assert.IsType<HeatFact.HeatCalled>(Assert.IsType<Verdict.Accepted>(Call(snapshot)).Fact).Snapshot);
    }

    [Fact]
    public void A_heat_that_cannot_be_run_is_not_called()
    {
        Assert.Equal("no-such-heat", Code(Call(null)));
        Assert.Equal("bad-setup", Code(Call(Some.Snapshot(0))));
        Assert.Equal("bad-setup", Code(Call(Some.Snapshot(2, divisions: ["open", "masters"]))));
        Assert.Equal("bad-setup", Code(Call(Some.Snapshot() with { Lanes = [Some.Entry(1), Some.Entry(2), Some.Entry(1)] })));
        Assert.Contains("lane 1", Assert.IsType<Verdict.Refused>(Call(Some.Snapshot() with { Lanes = [Some.Entry(1), Some.Entry(1)] })).Why.Sentence(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_stands_in_the_way_of_a_call_is_said_in_a_few_sentences()
    {
        var bad = Some.Snapshot() with { Workout = Some.Workout() with { Name = "", CheckpointEvery = 0, Movements = [], Prescriptions = [] } };

        Assert.InRange(Assert.IsType<Verdict.Refused>(Call(bad)).Why.Sentence().Count(letter => letter == '.'), 1, 8);
    }

    [Fact]
    public void A_seat_is_taken_under_a_fresh_name_by_who_asks()
    {
        var taken = Assert.IsType<HeatFact.SeatTaken>(Assert.IsType<Verdict.Accepted>(Ask(new HeatScript(), new HeatCommand.TakeSeat { Id = Id, Lane = Some.Lane(2) }, Some.Judge(2), 2)).Fact);

        Assert.Equal((new SeatId("fresh"), Duty.Primary, Some.Judge(2)), (taken.Seat, taken.Duty, taken.By));
    }

    [Fact]
    public void A_judge_readies_and_gives_up_only_the_seat_of_that_very_phone()
    {
        var heat = new HeatScript();
        string Ready(string seat, By by) => Code(Ask(heat, new HeatCommand.Ready { Id = Id, Lane = Some.Lane(1), Seat = new(seat) }, by, 1));

        Assert.Equal("ok", Ready("s-1", Some.Judge(1)));
        Assert.Equal("not-yours", Ready("s-1", new By("in-other", "Ida", Role.Judge)));
        Assert.Equal("ok", Ready("s-1", Some.HeadJudge));
        Assert.Equal("seat-given-up", Ready("s-none", Some.Judge(1)));

        heat.Then("lane 1 seat s-new taken as primary");
        Assert.Equal("seat-given-up", Ready("s-1", Some.Judge(1)));
    }

    [Fact]
    public void A_seat_of_another_lane_readies_nobody() =>
        Assert.Equal("seat-given-up", Code(Ask(new HeatScript(), new HeatCommand.Ready { Id = Id, Lane = Some.Lane(1), Seat = new("s-2") }, Some.HeadJudge)));

    [Fact]
    public void A_lane_has_at_most_three_timekeepers()
    {
        // Three timekeepers is the most that the published rules combine: World Athletics TR 19, World Aquatics SW 11.3.
        var heat = new HeatScript().Then("""
            lane 1 seat s-k1 taken as timekeeper
            lane 1 seat s-k2 taken as timekeeper
            lane 1 seat s-k3 taken as timekeeper
            """);
        string Take(int lane, string signIn) => Code(Ask(heat, new HeatCommand.TakeSeat { Id = Id, Lane = Some.Lane(lane), Duty = Duty.Timekeeper }, new By(signIn, "Kim", Role.Judge), lane));

        Assert.Equal("seat-taken", Take(1, "in-k4"));
        Assert.Equal("ok", Take(1, "in-k3"));    // the same phone, again
        Assert.Equal("ok", Take(2, "in-k4"));
    }

    [Fact]
    public void Only_lanes_of_the_heat_are_made_ready_or_withdrawn()
    {
        Assert.Equal("no-such-lane", Code(Ask(new HeatScript(), new HeatCommand.OverrideReady { Id = Id, Lanes = [Some.Lane(1), Some.Lane(9)] }, Some.HeadJudge)));
        Assert.Equal("no-such-lane", Code(Ask(new HeatScript(), new HeatCommand.WithdrawLane { Id = Id, Lane = Some.Lane(9) }, Some.HeadJudge)));
        Assert.Equal("no-such-lane", Code(Ask(new HeatScript(), new HeatCommand.OverrideReady { Id = Id, Lanes = [new LaneNumber(0)] }, Some.HeadJudge)));
    }
}
