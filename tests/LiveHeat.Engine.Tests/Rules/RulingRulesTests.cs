using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Rules;

public class RulingRulesTests
{
    private static readonly FactId Id = Some.Id("asks", 1);
    private static readonly LaneNumber Lane1 = new(1);

    private static Verdict Ask(HeatScript heat, HeatCommand command, string now = "5:00") => HeatRules.Decide(heat.State, command, Some.Asking(Some.HeadJudge, HeatScript.At(now)));

    private static string Code(HeatCommand command, string score = "") => Ask(new HeatScript().Then("start\n" + score), command) is Verdict.Refused refused ? refused.Code : "ok";

    [Fact]
    public void Rulings_name_steps_and_numbers_that_can_be()
    {
        Assert.Equal("no-such-step", Code(new HeatCommand.SendBack { Id = Id, Lane = Lane1, Step = 0 }));
        Assert.Equal("no-such-step", Code(new HeatCommand.SendBack { Id = Id, Lane = Lane1, Step = 10 }));
        Assert.Equal("no-such-step", Code(new HeatCommand.OweReps { Id = Id, Lane = Lane1, Step = 10, Reps = 1 }));
        Assert.Equal("unreadable", Code(new HeatCommand.OweReps { Id = Id, Lane = Lane1, Step = 1, Reps = 0 }));
        Assert.Equal("unreadable", Code(new HeatCommand.OweReps { Id = Id, Lane = Lane1, Step = 1, Reps = 10_001 }));
        Assert.Equal("no-such-lane", Code(new HeatCommand.Warn { Id = Id, Lane = new LaneNumber(9) }));
        Assert.Equal("unreadable", Code(new HeatCommand.AdjustTime { Id = Id, Lane = Lane1, AdjustMs = 0 }));
        Assert.Equal("unreadable", Code(new HeatCommand.AdjustTime { Id = Id, Lane = Lane1, AdjustMs = 3_600_001 }));
        Assert.Equal("ok", Code(new HeatCommand.AdjustTime { Id = Id, Lane = Lane1, AdjustMs = -3_600_000 }));
    }

    [Theory]
    [InlineData(0, 0, "unreadable")]
    [InlineData(-1, 5, "unreadable")]
    [InlineData(5, -1, "unreadable")]
    [InlineData(30_000, 0, "ok")]
    [InlineData(0, 5, "ok")]
    [InlineData(1, 1, "ok")]
    [InlineData(3_600_000, 10_000, "ok")]
    [InlineData(3_600_001, 0, "unreadable")]
    [InlineData(0, 10_001, "unreadable")]
    public void A_penalty_adds_seconds_or_takes_reps(int addMs, int reps, string code) => Assert.Equal(code, Code(new HeatCommand.Penalise { Id = Id, Lane = Lane1, AddMs = addMs, Reps = reps }));

    /// <summary>Two parts; 0 is the whole of it.</summary>
    [Theory]
    [InlineData(null, "ok", "ok")]
    [InlineData(0, "ok", "unreadable")]
    [InlineData(2, "ok", "unreadable")]
    [InlineData(3, "unreadable", "unreadable")]
    [InlineData(-1, "unreadable", "unreadable")]
    public void A_penalty_names_a_part_that_the_work_has(int? part, string apart, string whole)
    {
        var parts = Some.Snapshot(1, Some.Workout(prescriptions: Some.Prescription() with { Parts = (Items<WorkoutPart>)[new("a", new TiebreakSet(1, 2)), new("b", null)] }));
        var command = new HeatCommand.Penalise { Id = Id, Lane = Lane1, AddMs = 5_000, Part = part };

        Assert.Equal(whole, Code(command));
        Assert.Equal(apart, Ask(new HeatScript(parts).Then("start"), command) is Verdict.Refused refused ? refused.Code : "ok");
        if (apart == "ok")
        {
            Assert.Equal(part, Assert.IsType<HeatFact.Penalised>(Assert.IsType<Verdict.Accepted>(Ask(new HeatScript(parts).Then("start"), command)).Fact).Part);
        }
    }

    [Theory]
    [InlineData(AppealOutcome.Seconds, 5_000, 0, 2, "ok")]
    [InlineData(AppealOutcome.Reps, 0, -2, 0, "ok")]
    [InlineData(AppealOutcome.Reps, 0, -2, 3, "unreadable")]
    [InlineData(AppealOutcome.NoChange, 0, 0, 1, "unreadable")]
    public void An_appeal_names_a_part_only_where_something_counts_in_it(AppealOutcome outcome, int addMs, int reps, int part, string code)
    {
        var heat = new HeatScript(Some.Snapshot(1, Some.Workout(prescriptions: Some.Prescription() with { Parts = (Items<WorkoutPart>)[new("a", new TiebreakSet(1, 2)), new("b", null)] })))
            .Then("start\nlane 1 appeals at 1:00 [appeal]");
        var verdict = Ask(heat, new HeatCommand.DecideAppeal { Id = Id, Target = heat["appeal"], Outcome = outcome, AddMs = addMs, Reps = reps, Part = part, Reason = "seen on video" });

        Assert.Equal(code, verdict is Verdict.Refused refused ? refused.Code : "ok");
        Assert.Equal(code == "ok" ? part : null, ((verdict as Verdict.Accepted)?.Fact as HeatFact.AppealDecided)?.Part);
    }

    [Fact]
    public void A_lane_is_held_once_and_resumed_once()
    {
        Assert.Equal("ok", Code(new HeatCommand.HoldLane { Id = Id, Lane = Lane1 }));
        Assert.Equal("wrong-phase", Code(new HeatCommand.HoldLane { Id = Id, Lane = Lane1 }, "hold lane 1 at 1:00"));
        Assert.Equal("ok", Code(new HeatCommand.ResumeLane { Id = Id, Lane = Lane1 }, "hold lane 1 at 1:00"));
        Assert.Equal("wrong-phase", Code(new HeatCommand.ResumeLane { Id = Id, Lane = Lane1 }, "hold lane 1 at 1:00\nresume lane 1 at 1:10"));
    }

    [Fact]
    public void A_line_up_or_a_variant_that_does_not_fit_is_refused_in_words()
    {
        Assert.Equal("ok", Code(new HeatCommand.ChangeLineUp { Id = Id, Lane = Lane1, FromStep = 4, Athletes = ["Ann", "Bo", "Dot"] }));
        Assert.Equal("bad-setup", Code(new HeatCommand.ChangeLineUp { Id = Id, Lane = Lane1, FromStep = 4, Athletes = ["Ann", "Bo"] }));
        Assert.Equal("bad-setup", Code(new HeatCommand.ChangeLineUp { Id = Id, Lane = Lane1, FromStep = 4, Athletes = ["Ann", "Bo", " "] }));
        Assert.Equal("bad-setup", Code(new HeatCommand.ChangeLineUp { Id = Id, Lane = Lane1, FromStep = 10, Athletes = ["Ann", "Bo", "Dot"] }));
        Assert.Equal("ok", Code(new HeatCommand.TakeVariant { Id = Id, Lane = Lane1, FromStep = 4, Prescription = "scaled" }));
        Assert.Equal("bad-setup", Code(new HeatCommand.TakeVariant { Id = Id, Lane = Lane1, FromStep = 4, Prescription = "masters" }));
    }

    [Fact]
    public void Taps_rulings_and_decisions_are_voided_starts_seats_and_signatures_are_not()
    {
        var heat = new HeatScript().Then("""
            start [go]
            lane 1 step 1 done at 0:40 [tap]
            warn lane 1 [warning]
            void warning [void1]
            rerun lane 1 in h9 [rerun]
            decide lanes 1,2 [decision]
            lane 1 seat s-x taken as witness [seat]
            end [end]
            """);
        string Void(FactId target) => Ask(heat, new HeatCommand.Void { Id = Id, Target = target }) is Verdict.Refused refused ? refused.Code : "ok";

        Assert.All(new[] { "tap", "warning", "void1", "rerun", "decision" }, name => Assert.Equal("ok", Void(heat[name])));
        Assert.All(new[] { "go", "seat", "end" }, name => Assert.Equal("wrong-phase", Void(heat[name])));
        Assert.Equal("no-such-fact", Void(Some.Id("none", 1)));
    }

    [Fact]
    public void Voiding_the_tap_inside_an_added_fact_voids_the_adding()
    {
        var heat = new HeatScript().Then("start\nadd lane 1 step 1 done at 0:40 [added]");
        var voided = Assert.IsType<HeatFact.Voided>(Assert.IsType<Verdict.Accepted>(Ask(heat, new HeatCommand.Void { Id = Id, Target = Some.Id("paper", 1) })).Fact);

        Assert.Equal(heat["added"], voided.Target);
    }

    [Fact]
    public void Only_a_judges_tap_is_admitted()
    {
        var heat = new HeatScript().Then("start\nwarn lane 1 [warning]\nlane 1 step 1 done at -0:10 [tap]");

        Assert.Equal("no-such-fact", Assert.IsType<Verdict.Refused>(Ask(heat, new HeatCommand.Admit { Id = Id, Target = heat["warning"] })).Code);
        Assert.IsType<Verdict.Accepted>(Ask(heat, new HeatCommand.Admit { Id = Id, Target = heat["tap"] }));
    }

    [Fact]
    public void A_reason_told_later_is_a_reason()
    {
        var heat = new HeatScript().Then("start\nwarn lane 1 [warning]");

        Assert.Equal("reason-needed", Assert.IsType<Verdict.Refused>(Ask(heat, new HeatCommand.GiveReason { Id = Id, Target = heat["warning"] })).Code);
        Assert.IsType<Verdict.Accepted>(Ask(heat, new HeatCommand.GiveReason { Id = Id, Target = heat["warning"], Reason = "bar dropped" }));
    }

    [Fact]
    public void What_is_added_is_a_tap_on_the_start_and_plan_in_force()
    {
        var heat = new HeatScript().Then("start\nlane 1 line-up Ann,Dot,Bo from step 4");
        var tap = new HeatFact.StepDone { Id = Some.Id("paper", 1), Instant = HeatScript.At("0:40"), Lane = Lane1, Step = 1, Start = "start-0", Plan = 9 };
        var added = Assert.IsType<HeatFact.FactAdded>(Assert.IsType<Verdict.Accepted>(Ask(heat, new HeatCommand.Add { Id = Id, Source = Source.Paper, Tap = tap })).Fact);

        Assert.Equal(tap with { Start = null, Plan = 2 }, added.Tap);
    }

    [Fact]
    public void What_cannot_be_a_tap_of_this_heat_is_not_added()
    {
        var heat = new HeatScript().Then("start\nlane 1 step 1 done at 0:40 [tap]");
        string Add(HeatFact.Floor tap) => Ask(heat, new HeatCommand.Add { Id = Id, Source = Source.Video, Tap = tap }) is Verdict.Refused refused ? refused.Code : "ok";
        var at = HeatScript.At("0:50");

        Assert.Equal("ok", Add(new HeatFact.StepDone { Id = Some.Id("paper", 1), Instant = at, Lane = Lane1, Step = 2 }));
        Assert.Equal("no-such-lane", Add(new HeatFact.StepDone { Id = Some.Id("paper", 1), Instant = at, Lane = new(9), Step = 2 }));
        Assert.Equal("no-such-step", Add(new HeatFact.StepDone { Id = Some.Id("paper", 1), Instant = at, Lane = Lane1, Step = 10 }));
        Assert.Equal("conflict", Add(new HeatFact.StepDone { Id = heat["tap"], Instant = at, Lane = Lane1, Step = 2 }));
        Assert.Equal("unreadable", Add(new HeatFact.StepDone { Id = Some.Id("paper", 1), Instant = at, Lane = Lane1, Step = 2, UncertaintyMs = -1 }));
        Assert.Equal("unreadable", Add(new HeatFact.Undone { Id = Some.Id("paper", 1), Instant = at, Lane = Lane1, Target = heat["tap"] }));
    }

    [Fact]
    public void A_near_tie_is_decided_between_its_two_lanes_and_a_cap_once()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 step 9 done at 5:00
            lane 2 step 9 done at 5:00.1
            lane 3 step 9 done at 10:00.05
            """);
        Verdict Decide(params int[] lanes) => Ask(heat, new HeatCommand.DecideNearTie { Id = Id, Lanes = lanes.Select(lane => new LaneNumber(lane)).ToItems() }, "11:00");

        Assert.IsType<Verdict.Accepted>(Decide(2, 1));
        Assert.Equal("no-near-tie", Assert.IsType<Verdict.Refused>(Decide(1, 3)).Code);
        Assert.Equal("no-near-tie", Assert.IsType<Verdict.Refused>(Decide(1, 2, 3)).Code);
        Assert.Equal("no-near-tie", Assert.IsType<Verdict.Refused>(Decide(1, 1)).Code);

        var cap = new HeatCommand.DecideCap { Id = Id, Lane = new(3), InTime = true };
        var decided = Assert.IsType<HeatFact.CapDecided>(Assert.IsType<Verdict.Accepted>(Ask(heat, cap, "11:00")).Fact);
        Assert.Equal(107, decided.WithinMs);
        heat.Append(decided);
        Assert.Equal("no-near-tie", Assert.IsType<Verdict.Refused>(Ask(heat, cap with { Id = Some.Id("asks", 2) }, "11:00")).Code);
    }

    [Fact]
    public void A_rerun_is_ordered_of_lanes_of_this_heat_in_another_with_a_reason()
    {
        Assert.Equal("ok", Code(new HeatCommand.OrderRerun { Id = Id, Lanes = [Lane1], InHeat = new("h9"), Reason = "wet floor" }));
        Assert.Equal("reason-needed", Code(new HeatCommand.OrderRerun { Id = Id, Lanes = [Lane1], InHeat = new("h9") }));
        Assert.Equal("unreadable", Code(new HeatCommand.OrderRerun { Id = Id, Lanes = [Lane1], InHeat = Some.Heat, Reason = "wet floor" }));
        Assert.Equal("no-such-lane", Code(new HeatCommand.OrderRerun { Id = Id, Lanes = [], InHeat = new("h9"), Reason = "wet floor" }));
        Assert.Equal("no-such-lane", Code(new HeatCommand.OrderRerun { Id = Id, Lanes = [new(9)], InHeat = new("h9"), Reason = "wet floor" }));
    }
}
