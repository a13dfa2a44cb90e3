using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Rules;

public class ClockRulesTests
{
    private static readonly FactId Id = Some.Id("asks", 1);

    private static Verdict Decide(HeatScript heat, HeatCommand command, string now) =>
        HeatRules.Decide(heat.State, command, Some.Asking(Some.Organiser, HeatScript.At(now)));

    private static string Code(Verdict verdict) => verdict is Verdict.Refused refused ? refused.Code : "ok";

    [Fact]
    public void GO_is_set_ahead_by_what_was_asked_with_a_start_of_its_own()
    {
        var fact = Assert.IsType<HeatFact.StartScheduled>(Assert.IsType<Verdict.Accepted>(Decide(new HeatScript(), new HeatCommand.ScheduleStart { Id = Id, InMs = 15_000 }, "-0:30")).Fact);

        Assert.Equal((HeatScript.At("-0:15"), "fresh"), (fact.GoAt, fact.Start));
    }

    [Theory]
    [InlineData(2_999, "unreadable")]
    [InlineData(3_000, "ok")]
    [InlineData(120_000, "ok")]
    [InlineData(120_001, "unreadable")]
    public void A_count_down_lasts_3_to_120_seconds(int inMs, string code) =>
        Assert.Equal(code, Code(Decide(new HeatScript(), new HeatCommand.ScheduleStart { Id = Id, InMs = inMs }, "-0:30")));

    [Fact]
    public void Of_two_who_press_GO_at_once_the_second_hears_that_it_is_set()
    {
        var heat = new HeatScript();
        var first = Assert.IsType<Verdict.Accepted>(Decide(heat, new HeatCommand.ScheduleStart { Id = Id }, "-0:30"));
        heat.Append(first.Fact);

        Assert.Equal("already-started", Code(Decide(heat, new HeatCommand.ScheduleStart { Id = Some.Id("other", 1) }, "-0:30")));
        Assert.Equal("already-started", Code(Decide(heat, new HeatCommand.ObserveStart { Id = Some.Id("other", 2) }, "-0:30")));
    }

    [Fact]
    public void Who_is_not_ready_is_named()
    {
        var refused = Assert.IsType<Verdict.Refused>(Decide(new HeatScript(seated: false).Then("""
            lane 1 seat s-1 taken as primary
            lane 1 ready with s-1
            """), new HeatCommand.ScheduleStart { Id = Id }, "-0:30"));

        Assert.Equal("lanes-not-ready", refused.Code);
        Assert.Contains("lanes 2 and 3.", refused.Why.Sentence(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_horn_went_so_many_seconds_ago_or_at_an_instant()
    {
        HeatFact.StartObserved Observed(HeatCommand.ObserveStart command) =>
            Assert.IsType<HeatFact.StartObserved>(Assert.IsType<Verdict.Accepted>(Decide(new HeatScript(), command, "0:30")).Fact);

        Assert.Equal(HeatScript.At("0:20"), Observed(new HeatCommand.ObserveStart { Id = Id, AgoMs = 10_000 }).GoAt);
        Assert.Equal((HeatScript.At("0:12"), "fresh", 300), Observed(new HeatCommand.ObserveStart { Id = Id, GoAt = HeatScript.At("0:12"), UncertaintyMs = 300 }) is var fact ? (fact.GoAt, fact.Start, fact.UncertaintyMs) : default);
        Assert.Equal(0, Observed(new HeatCommand.ObserveStart { Id = Id, UncertaintyMs = -5 }).UncertaintyMs);
    }

    [Theory]
    [InlineData("0:30.001", "unreadable")]    // the horn will have gone
    [InlineData("0:30", "ok")]
    [InlineData("-29:30", "ok")]
    [InlineData("-29:30.001", "unreadable")]
    public void The_horn_has_gone_within_half_an_hour(string goAt, string code) =>
        Assert.Equal(code, Code(Decide(new HeatScript(), new HeatCommand.ObserveStart { Id = Id, GoAt = HeatScript.At(goAt) }, "0:30")));

    [Fact]
    public void The_start_in_force_is_put_right_with_a_reason()
    {
        var heat = new HeatScript().Then("start");
        string Correct(string start, string goAt, string now, string reason = "late thumb") =>
            Code(Decide(heat, new HeatCommand.ObserveStart { Id = Id, Start = start, GoAt = HeatScript.At(goAt), Reason = reason }, now));

        Assert.Equal("ok", Correct("start-1", "0:02", "1:00"));
        Assert.Equal("reason-needed", Correct("start-1", "0:02", "1:00", ""));
        Assert.Equal("already-started", Correct("start-0", "0:02", "1:00"));
        Assert.Equal("ok", Correct("start-1", "0:02", "45:00"));          // a long heat: what counts is how far the start moves
        Assert.Equal("unreadable", Correct("start-1", "31:00", "45:00"));
        Assert.Equal("unreadable", Correct("start-1", "1:01", "1:00"));

        heat.Then("end at 10:00");
        Assert.Equal("ok", Correct("start-1", "0:02", "11:00"));
        heat.Then("freeze at 12:00");
        Assert.Equal("wrong-phase", Correct("start-1", "0:02", "12:30"));
    }

    [Fact]
    public void A_recall_names_the_start_in_force()
    {
        var fact = Assert.IsType<Verdict.Accepted>(Decide(new HeatScript().Then("start"), new HeatCommand.RecallStart { Id = Id, Reason = "false start" }, "0:01")).Fact;

        Assert.Equal("start-1", Assert.IsType<HeatFact.StartRecalled>(fact).Start);
    }

    [Fact]
    public void After_a_recall_there_is_a_new_GO() => Assert.Equal("ok", Code(Decide(new HeatScript().Then("""
        start
        recall at 0:03
        """), new HeatCommand.ScheduleStart { Id = Id }, "0:30")));
}
