using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Rules;

public class AppealRulesTests
{
    private static readonly FactId Id = Some.Id("asks", 1);
    private static readonly LaneNumber Lane1 = new(1);
    private const string Frozen = "start\nlane 1 step 9 done at 2:00\nend at 10:10\nfreeze at 12:00\n";

    private static Verdict Ask(HeatCommand command, string score, string now, By? by = null, int venueOffsetMinutes = 0) =>
        HeatRules.Decide(new HeatScript().Then(score).State, command, Some.Asking(by ?? Some.HeadJudge, HeatScript.At(now)) with { VenueOffsetMinutes = venueOffsetMinutes });

    private static string Code(HeatCommand command, string score, string now, By? by = null) => Ask(command, score, now, by) is Verdict.Refused refused ? refused.Code : "ok";

    private static HeatCommand.FileAppeal File(string reason = "") => new() { Id = Id, Lane = Lane1, Member = "Ann", Grounds = "two reps not counted", Reason = reason };

    [Theory]
    [InlineData("-0:05", "wrong-phase")]
    [InlineData("0:00", "ok")]
    [InlineData("5:00", "ok")]
    public void An_appeal_needs_a_heat_that_has_started(string now, string code) => Assert.Equal(code, Code(File(), "start at -0:10", now.StartsWith('-') ? "-0:15" : now));

    [Theory]
    [InlineData("12:00", "ok")]
    [InlineData("27:00", "ok")]
    [InlineData("27:00.001", "appeal-window-over")]
    public void It_is_filed_within_the_window(string now, string code)
    {
        Assert.Equal(code, Code(File(), Frozen, now, Some.Organiser));
        Assert.Equal(code, Code(File(), Frozen + "sign organiser at 12:10\nsign head judge at 12:20", now, Some.HeadJudge));
    }

    [Fact]
    public void A_late_one_is_let_in_by_the_head_judge_with_a_reason_and_marked_so()
    {
        Assert.Equal("appeal-window-over", Code(File("was with the medics"), Frozen, "30:00", Some.Organiser));
        Assert.Equal("appeal-window-over", Code(File(), Frozen, "30:00"));
        Assert.True(Assert.IsType<HeatFact.AppealFiled>(Assert.IsType<Verdict.Accepted>(Ask(File("was with the medics"), Frozen, "30:00")).Fact).Late);
        Assert.False(Assert.IsType<HeatFact.AppealFiled>(Assert.IsType<Verdict.Accepted>(Ask(File(), Frozen, "20:00")).Fact).Late);
    }

    [Fact]
    public void The_refusal_says_until_when_it_was_possible_on_the_venues_clock()
    {
        // GO is at 09:53:40 UTC, the freeze 12 minutes later, and the venue two hours ahead.
        var refused = Assert.IsType<Verdict.Refused>(Ask(File(), Frozen, "30:00", Some.Organiser, venueOffsetMinutes: 120));

        Assert.Equal("Appeals were possible until 12:20, 15 minutes after the provisional result was posted. Only the head judge can let a late one in, with a reason.", refused.Why.Sentence());
    }

    [Fact]
    public void An_appeal_names_who_and_what_about()
    {
        Assert.Equal("unreadable", Code(File() with { Member = " " }, Frozen, "13:00"));
        Assert.Equal("unreadable", Code(File() with { Grounds = "" }, Frozen, "13:00"));
        Assert.Equal("unreadable", Code(File() with { Member = new string('a', 101) }, Frozen, "13:00"));
        Assert.Equal("unreadable", Code(File() with { Grounds = new string('a', 2_001) }, Frozen, "13:00"));
    }

    public static TheoryData<AppealOutcome, int, int, string?, string> Amounts => new()
    {
        { AppealOutcome.NoChange, 0, 0, null, "ok" },
        { AppealOutcome.NoChange, 1, 0, null, "unreadable" },
        { AppealOutcome.NoChange, 0, 0, "h9", "unreadable" },
        { AppealOutcome.Seconds, -5_000, 0, null, "ok" },
        { AppealOutcome.Seconds, 3_600_000, 0, null, "ok" },
        { AppealOutcome.Seconds, 3_600_001, 0, null, "unreadable" },
        { AppealOutcome.Seconds, 0, 0, null, "unreadable" },
        { AppealOutcome.Seconds, 5_000, 1, null, "unreadable" },
        { AppealOutcome.Reps, 0, -2, null, "ok" },
        { AppealOutcome.Reps, 0, 0, null, "unreadable" },
        { AppealOutcome.Reps, 0, -10_001, null, "unreadable" },
        { AppealOutcome.Rerun, 0, 0, "h9", "ok" },
        { AppealOutcome.Rerun, 0, 0, "h1", "unreadable" },
        { AppealOutcome.Rerun, 0, 0, null, "unreadable" },
    };

    [Theory]
    [MemberData(nameof(Amounts))]
    public void Only_what_belongs_to_an_outcome_is_given_with_it(AppealOutcome outcome, int addMs, int reps, string? inHeat, string code)
    {
        var script = new HeatScript().Then(Frozen + "lane 1 appeals [appeal]");
        var command = new HeatCommand.DecideAppeal
        {
            Id = Id,
            Target = script["appeal"],
            Outcome = outcome,
            AddMs = addMs,
            Reps = reps,
            InHeat = inHeat is null ? null : new HeatId(inHeat),
            Reason = "seen on video",
        };

        Assert.Equal(code, HeatRules.Decide(script.State, command, Some.Asking(Some.HeadJudge, HeatScript.At("13:00"))) is Verdict.Refused refused ? refused.Code : "ok");
    }

    [Fact]
    public void It_is_decided_once_by_the_head_judge_with_a_reason_and_not_when_taken_back()
    {
        var script = new HeatScript().Then(Frozen + "lane 1 appeals [appeal]\nwarn lane 1 [warning]");
        string Decide(string named, string reason = "seen on video", By? by = null) => HeatRules.Decide(
            script.State, new HeatCommand.DecideAppeal { Id = Id, Target = script[named], Outcome = AppealOutcome.NoChange, Reason = reason },
            Some.Asking(by ?? Some.HeadJudge, HeatScript.At("13:00"))) is Verdict.Refused refused ? refused.Code : "ok";
        string Void(string named) => HeatRules.Decide(
            script.State, new HeatCommand.Void { Id = Id, Target = script[named], Reason = "r" }, Some.Asking(Some.HeadJudge, HeatScript.At("13:00"))) is Verdict.Refused refused ? refused.Code : "ok";

        Assert.Equal(("ok", "reason-needed", "not-yours", "no-such-fact"), (Decide("appeal"), Decide("appeal", " "), Decide("appeal", by: Some.Organiser), Decide("warning")));
        Assert.Equal("ok", Void("appeal"));

        script.Then("decide appeal: no change [decision]");
        Assert.Equal(("wrong-phase", "wrong-phase", "ok"), (Decide("appeal"), Void("appeal"), Void("decision")));

        script.Then("void decision\nvoid appeal");
        Assert.Equal("no-such-fact", Decide("appeal"));
    }

    [Fact]
    public void Whoever_signs_over_an_open_appeal_names_its_lane_as_pending()
    {
        var script = new HeatScript().Then(Frozen + "lane 1 appeals [appeal]");
        Verdict Certify(params int[] pending) => HeatRules.Decide(
            script.State, new HeatCommand.Certify { Id = Id, Head = script.State.SignedHead, Pending = pending.Select(lane => new LaneNumber(lane)).ToItems() },
            Some.Asking(Some.HeadJudge, HeatScript.At("13:00")));

        var refused = Assert.IsType<Verdict.Refused>(Certify());
        Assert.Equal(("appeal-open", "An appeal is open on lane 1. Decide it first, or sign with this lane marked as pending: a later revision settles it."), (refused.Code, refused.Why.Sentence()));
        Assert.IsType<Verdict.Refused>(Certify(2));
        Assert.Equal([Lane1], Assert.IsType<HeatFact.Certified>(Assert.IsType<Verdict.Accepted>(Certify(1)).Fact).Pending);

        script.Then("decide appeal: no change");
        Assert.IsType<Verdict.Refused>(Certify(1));
        Assert.Null(Assert.IsType<HeatFact.Certified>(Assert.IsType<Verdict.Accepted>(Certify()).Fact).Pending);
    }

    [Fact]
    public void A_disqualification_has_a_reason_and_is_said_once()
    {
        var command = new HeatCommand.Disqualify { Id = Id, Lane = Lane1, Reason = "left the floor" };

        Assert.Equal("ok", Code(command, Frozen, "13:00"));
        Assert.Equal("reason-needed", Code(command with { Reason = "" }, Frozen, "13:00"));
        Assert.Equal("wrong-phase", Code(command, Frozen + "disqualify lane 1", "13:00"));
        Assert.Equal("ok", Code(command, Frozen + "disqualify lane 1 [out]\nvoid out", "13:00"));
    }
}
