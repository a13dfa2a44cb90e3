using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Rules;

public class EndRulesTests
{
    private static readonly FactId Id = Some.Id("asks", 1);

    private static HeatScript Ended(string more = "") => new HeatScript().Then($"""
        start
        lane 1 step 1 done at 0:40
        end at 10:10
        {more}
        """);

    private static Verdict Freeze(HeatScript heat, long head, string? over = null, params MissingTaps[] missing) =>
        HeatRules.Decide(heat.State, new HeatCommand.Freeze { Id = Id, Head = head, Over = over }, Some.Asking(Some.Organiser, HeatScript.At("20:00"), missing: missing));

    private static Verdict Certify(HeatScript heat, By by, long? head = null) =>
        HeatRules.Decide(heat.State, new HeatCommand.Certify { Id = Id, Head = head ?? heat.State.SignedHead }, Some.Asking(by, HeatScript.At("20:00")));

    private static string Code(Verdict verdict) => verdict is Verdict.Refused refused ? refused.Code : "ok";

    [Fact]
    public void A_freeze_names_the_head_its_author_saw()
    {
        var heat = Ended();

        Assert.Equal(heat.State.Head, Assert.IsType<HeatFact.Frozen>(Assert.IsType<Verdict.Accepted>(Freeze(heat, heat.State.Head)).Fact).Head);
    }

    [Fact]
    public void A_freeze_of_what_has_moved_is_refused_with_how_much_is_new()
    {
        var heat = Ended();
        var seen = heat.State.Head;
        heat.Then("lane 2 step 1 done at 0:41\nlane 2 step 2 done at 1:10");
        var refused = Assert.IsType<Verdict.Refused>(Freeze(heat, seen));

        Assert.Equal("head-moved", refused.Code);
        Assert.Contains("2 new", refused.Why.Sentence(), StringComparison.Ordinal);
        Assert.Equal("head-moved", Code(Freeze(heat, heat.State.Head + 1)));
    }

    [Fact]
    public void What_has_not_arrived_is_frozen_over_only_with_a_reason_that_stays()
    {
        var (heat, missing) = (Ended(), new MissingTaps(Some.Lane(2), 3, HeatScript.At("11:00")));

        Assert.Equal("reason-needed", Code(Freeze(heat, heat.State.Head, null, missing)));
        var refused = Assert.IsType<Verdict.Refused>(Freeze(heat, heat.State.Head, "  ", missing));
        Assert.Equal(("reason-needed", "Not all has arrived: lane 2: 3 taps still on the phone, last seen 10:04:40. Wait for it, or freeze over it with a reason."), (refused.Code, refused.Why.Sentence()));
        var frozen = Assert.IsType<HeatFact.Frozen>(Assert.IsType<Verdict.Accepted>(Freeze(heat, heat.State.Head, "phone fell into the pool", missing)).Fact);
        Assert.Equal("phone fell into the pool", frozen.Over);
        Assert.Equal([missing], frozen.Missing!.Value);
        Assert.Null(frozen.NoTiebreak);
        Assert.Null(Assert.IsType<HeatFact.Frozen>(Assert.IsType<Verdict.Accepted>(Freeze(heat, heat.State.Head, "for no reason")).Fact).Over);
    }

    [Fact]
    public void Organiser_and_head_judge_sign_the_same_head_from_sign_ins_of_their_own()
    {
        var heat = Ended("freeze at 11:00");
        Assert.Equal("ok", Code(Certify(heat, Some.Organiser)));

        heat.Then("sign organiser");
        Assert.Equal("already-signed", Code(Certify(heat, Some.Organiser)));
        Assert.Equal("already-signed", Code(Certify(heat, Some.HeadJudge with { SignIn = Some.Organiser.SignIn })));
        Assert.Equal("already-signed", Code(Certify(heat, Some.Organiser with { SignIn = "in-second-desk" })));
        Assert.Equal("ok", Code(Certify(heat, Some.HeadJudge)));

        heat.Then("sign head judge");
        Assert.Equal(Phase.Certified, heat.State.Told);
        Assert.Equal("already-signed", Code(Certify(heat, Some.HeadJudge)));
    }

    [Fact]
    public void Either_may_sign_first()
    {
        var heat = Ended("freeze at 11:00\nsign head judge");

        Assert.Equal("ok", Code(Certify(heat, Some.Organiser)));
        Assert.Equal(Phase.Certified, heat.Then("sign organiser").State.Told);
    }

    [Fact]
    public void What_is_new_between_two_signatures_is_told_and_both_sign_again()
    {
        var heat = Ended("freeze at 11:00\nsign organiser");
        var seen = heat.State.SignedHead;
        heat.Then("lane 2 step 1 done at 0:41 arriving 12:00");

        Assert.Equal("head-moved", Code(Certify(heat, Some.HeadJudge, seen)));
        Assert.Equal("ok", Code(Certify(heat, Some.HeadJudge)));
        Assert.Equal("ok", Code(Certify(heat, Some.Organiser)));
        Assert.Equal(Phase.Frozen, heat.Then("sign head judge").State.Told);
        Assert.Equal(Phase.Certified, heat.Then("sign organiser").State.Told);
    }

    [Fact]
    public void A_near_tie_is_decided_before_anybody_signs()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 step 9 done at 5:00
            lane 2 step 9 done at 5:00.1
            end at 10:10
            freeze at 11:00
            """);
        Assert.Equal("near-tie-open", Code(Certify(heat, Some.Organiser)));
        Assert.Equal("ok", Code(Certify(heat.Then("decide lanes 2,1"), Some.Organiser)));
    }

    [Fact]
    public void A_heat_is_reopened_with_a_reason()
    {
        var heat = Ended("freeze at 11:00");
        string Reopen(string reason) => Code(HeatRules.Decide(heat.State, new HeatCommand.Reopen { Id = Id, Reason = reason }, Some.Asking(Some.Organiser, HeatScript.At("12:00"))));

        Assert.Equal(("reason-needed", "ok"), (Reopen(""), Reopen("protest")));
    }

    [Fact]
    public void A_reopened_heat_is_frozen_and_signed_anew_and_what_came_late_counts()
    {
        var heat = Ended("""
            freeze at 11:00
            lane 2 step 1 done at 0:41 arriving 11:30
            sign organiser
            sign head judge
            """);
        Assert.Equal(0, heat.State.Lanes[1].Worth);

        heat.Then("reopen at 12:00");
        Assert.Equal((10, 2), (heat.State.Lanes[1].Worth, heat.State.Revision));
        Assert.Equal("ok", Code(Freeze(heat, heat.State.Head)));
        heat.Then("freeze at 13:00\nsign organiser\nsign head judge");
        Assert.Equal((Phase.Certified, 10), (heat.State.Told, heat.State.Lanes[1].Worth));
    }
}
