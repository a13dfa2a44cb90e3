using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Testing;

/// <summary>One example of every fact and every command, with every field told.</summary>
public static class Examples
{
    private const string Outbox = "Zm9vYmFyYmF6cXV4MTIzNA";
    private static readonly Instant At = new(1_795_600_841_200);
    private static readonly LaneNumber Lane2 = new(2);
    private static readonly SeatId Seat = new("s-2");
    private static readonly PhoneReadings Phone = new(81_234.5, 1_795_600_841_010, 190.25);

    public static readonly IReadOnlyList<HeatFact> Facts =
    [
        new HeatFact.StepDone { Id = Id(1), Instant = At, Lane = Lane2, Seat = Seat, UncertaintyMs = 12, Start = "k7f3", Plan = 1, Phone = Phone, Step = 5 },
        new HeatFact.TagMade { Id = Id(2), Instant = At, Lane = Lane2, Seat = Seat, UncertaintyMs = 12, Start = "k7f3", Plan = 1, Step = 6, TimeKnown = false },
        new HeatFact.ValueEntered { Id = Id(3), Instant = At, Lane = Lane2, Seat = Seat, UncertaintyMs = 12, Start = "k7f3", Plan = 1, Step = 7, Value = 132.5m },
        new HeatFact.AttemptJudged { Id = Id(49), Instant = At, Lane = Lane2, Seat = Seat, UncertaintyMs = 12, Start = "k7f3", Plan = 1, Step = 7, Load = 102.5m, Good = false, Fault = "not locked out" },
        new HeatFact.CountReached { Id = Id(4), Instant = At, Lane = Lane2, Seat = Seat, UncertaintyMs = 12, Start = "k7f3", Plan = 1, Step = 5, Count = 14 },
        new HeatFact.NoRep { Id = Id(5), Instant = At, Lane = Lane2, Seat = Seat, UncertaintyMs = 12, Start = "k7f3", Plan = 1, Step = 5, Fault = "not low enough" },
        new HeatFact.TagFault { Id = Id(6), Instant = At, Lane = Lane2, Seat = Seat, UncertaintyMs = 12, Start = "k7f3", Plan = 1, Step = 6, Fault = "no touch" },
        new HeatFact.AthleteWorking { Id = Id(7), Instant = At, Lane = Lane2, Seat = Seat, UncertaintyMs = 12, Start = "k7f3", Plan = 1, Step = 5, Athlete = 3 },
        new HeatFact.RepsAtCap { Id = Id(8), Instant = At, Lane = Lane2, Seat = Seat, UncertaintyMs = 12, Start = "k7f3", Plan = 1, Step = 5, Count = 9 },
        new HeatFact.FinishTimed { Id = Id(9), Instant = At, Lane = Lane2, Seat = Seat, UncertaintyMs = 12, Start = "k7f3", Plan = 1 },
        new HeatFact.LaneStopped { Id = Id(10), Instant = At, Lane = Lane2, Seat = Seat, UncertaintyMs = 12, Start = "k7f3", Plan = 1, Reason = StopReason.Medical },
        new HeatFact.Undone { Id = Id(11), Instant = At, Lane = Lane2, Seat = Seat, UncertaintyMs = 12, Start = "k7f3", Plan = 1, Target = Id(1) },
        new HeatFact.HeadJudgeCalled { Id = Id(12), Instant = At, Lane = Lane2, Seat = Seat, UncertaintyMs = 12, Start = "k7f3", Plan = 1, Note = "which line?" },
        new HeatFact.ScoreReadBack { Id = Id(13), Instant = At, Lane = Lane2, Seat = Seat, UncertaintyMs = 12, Start = null, Plan = 1, Agreed = true, Name = "Ann" },
        new HeatFact.HeatCalled { Id = Id(14), Instant = At, By = Some.Organiser, Snapshot = Small },
        new HeatFact.CallReplaced { Id = Id(15), Instant = At, By = Some.Organiser, Snapshot = Small },
        new HeatFact.SeatTaken { Id = Id(16), Instant = At, By = Some.Judge(2), Lane = Lane2, Seat = Seat, Duty = Duty.Primary },
        new HeatFact.SeatGivenUp { Id = Id(17), Instant = At, By = Some.Judge(2), Lane = Lane2, Seat = Seat },
        new HeatFact.LaneReady { Id = Id(18), Instant = At, By = Some.Judge(2), Lane = Lane2, Seat = Seat },
        new HeatFact.LanesOverridden { Id = Id(19), Instant = At, By = Some.HeadJudge, Lanes = [Lane2, new(3)], Reason = "phones in hand" },
        new HeatFact.LaneWithdrawn { Id = Id(20), Instant = At, By = Some.HeadJudge, Lane = Lane2, Reason = "not here" },
        new HeatFact.StartScheduled { Id = Id(21), Instant = At, By = Some.Organiser, Start = "k7f3", GoAt = At + 10_000 },
        new HeatFact.StartObserved { Id = Id(22), Instant = At, By = Some.Organiser, Start = "k7f3", GoAt = At, UncertaintyMs = 500, Reason = "seen on video" },
        new HeatFact.StartRecalled { Id = Id(23), Instant = At, By = Some.Organiser, Start = "k7f3", Reason = "false start" },
        new HeatFact.HeatHalted { Id = Id(24), Instant = At, By = Some.HeadJudge, Reason = "fire alarm" },
        new HeatFact.HeatResumed { Id = Id(25), Instant = At, By = Some.Organiser, Reason = "all clear" },
        new HeatFact.CallReturned { Id = Id(26), Instant = At, By = Some.Organiser, Reason = "start again" },
        new HeatFact.HeatEnded { Id = Id(27), Instant = At, By = Some.Organiser, Reason = "cap" },
        new HeatFact.SentBack { Id = Id(28), Instant = At, By = Some.HeadJudge, Lane = Lane2, Step = 4, Reason = "skipped a set" },
        new HeatFact.RepsOwed { Id = Id(29), Instant = At, By = Some.HeadJudge, Lane = Lane2, Step = 4, Reps = 2, Reason = "two short" },
        new HeatFact.LaneHeld { Id = Id(30), Instant = At, By = Some.HeadJudge, Lane = Lane2, MovesCap = true, Reason = "rower broke" },
        new HeatFact.LaneResumed { Id = Id(31), Instant = At, By = Some.HeadJudge, Lane = Lane2, Reason = "rower changed" },
        new HeatFact.TimeAdjusted { Id = Id(32), Instant = At, By = Some.HeadJudge, Lane = Lane2, AdjustMs = -12_000, MovesCap = false, Reason = "blocked by a judge" },
        new HeatFact.LineUpChanged { Id = Id(33), Instant = At, By = Some.HeadJudge, Lane = Lane2, FromStep = 4, Athletes = ["Ann", "Dot"], Reason = "injury" },
        new HeatFact.VariantTaken { Id = Id(34), Instant = At, By = Some.HeadJudge, Lane = Lane2, FromStep = 4, Prescription = "scaled", Reason = "asked for it" },
        new HeatFact.Voided { Id = Id(35), Instant = At, By = Some.HeadJudge, Target = Id(1), Reason = "wrong lane" },
        new HeatFact.Admitted { Id = Id(36), Instant = At, By = Some.HeadJudge, Target = Id(1), Reason = "seen" },
        new HeatFact.ReasonGiven { Id = Id(37), Instant = At, By = Some.HeadJudge, Target = Id(30), Reason = "chain came off" },
        new HeatFact.FactAdded
        {
            Id = Id(38), Instant = At, By = Some.HeadJudge, Source = Source.Video, Reason = "phone died",
            Tap = new HeatFact.StepDone { Id = Id(39), Instant = At, Lane = Lane2, Step = 5 },
        },
        new HeatFact.Warned { Id = Id(40), Instant = At, By = Some.HeadJudge, Lane = Lane2, Reason = "bar dropped" },
        new HeatFact.Penalised { Id = Id(41), Instant = At, By = Some.HeadJudge, Lane = Lane2, AddMs = 30_000, Reps = 0, Reason = "again" },
        new HeatFact.NearTieDecided { Id = Id(46), Instant = At, By = Some.HeadJudge, Lanes = [new(3), Lane2], Tie = false, Reason = "seen on video" },
        new HeatFact.CapDecided { Id = Id(47), Instant = At, By = Some.HeadJudge, Lane = Lane2, InTime = true, WithinMs = 107, Reason = "bar at lock-out" },
        new HeatFact.RerunOrdered { Id = Id(48), Instant = At, By = Some.HeadJudge, Lanes = [Lane2], InHeat = new("h9"), Reason = "floor was wet" },
        new HeatFact.Disqualified { Id = Id(49), Instant = At, By = Some.HeadJudge, Lane = Lane2, Reason = "left the floor" },
        new HeatFact.AppealFiled { Id = Id(50), Instant = At, By = Some.Organiser, Lane = Lane2, Member = "Ann", Grounds = "two reps not counted", Late = true, Reason = "phone was dead" },
        new HeatFact.AppealDecided { Id = Id(51), Instant = At, By = Some.HeadJudge, Target = Id(50), Outcome = AppealOutcome.Reps, AddMs = 0, Reps = -2, Reason = "seen on video" },
        new HeatFact.CallAnswered { Id = Id(42), Instant = At, By = Some.HeadJudge, Lane = Lane2, Reason = "" },
        new HeatFact.Frozen { Id = Id(43), Instant = At, By = Some.Organiser, Head = 412, Over = "phone of lane 2 is dead" },
        new HeatFact.Certified { Id = Id(44), Instant = At, By = Some.HeadJudge, Head = 413 },
        new HeatFact.Reopened { Id = Id(45), Instant = At, By = Some.Organiser, Reason = "protest" },
    ];

    public static readonly IReadOnlyList<HeatCommand> Commands =
    [
        new HeatCommand.Call { Id = Id(1) },
        new HeatCommand.ReplaceCall { Id = Id(2) },
        new HeatCommand.TakeSeat { Id = Id(3), Lane = Lane2, Duty = Duty.Witness },
        new HeatCommand.GiveUpSeat { Id = Id(4), Lane = Lane2, Seat = Seat },
        new HeatCommand.Ready { Id = Id(5), Lane = Lane2, Seat = Seat },
        new HeatCommand.OverrideReady { Id = Id(6), Lanes = [Lane2, new(3)], Reason = "phones in hand" },
        new HeatCommand.WithdrawLane { Id = Id(7), Lane = Lane2, Reason = "not here" },
        new HeatCommand.ScheduleStart { Id = Id(8), InMs = 10_000 },
        new HeatCommand.ObserveStart { Id = Id(9), GoAt = At, UncertaintyMs = 500, Reason = "seen on video", Start = "k7f3" },
        new HeatCommand.RecallStart { Id = Id(10), Reason = "false start" },
        new HeatCommand.Halt { Id = Id(11), Reason = "fire alarm" },
        new HeatCommand.Resume { Id = Id(12), Reason = "all clear" },
        new HeatCommand.ReturnToCall { Id = Id(13), Reason = "start again" },
        new HeatCommand.End { Id = Id(14), Reason = "cap" },
        new HeatCommand.SendBack { Id = Id(15), Lane = Lane2, Step = 4, Reason = "skipped a set" },
        new HeatCommand.OweReps { Id = Id(16), Lane = Lane2, Step = 4, Reps = 2, Reason = "two short" },
        new HeatCommand.HoldLane { Id = Id(17), Lane = Lane2, MovesCap = false, Reason = "rower broke" },
        new HeatCommand.ResumeLane { Id = Id(18), Lane = Lane2, Reason = "rower changed" },
        new HeatCommand.AdjustTime { Id = Id(19), Lane = Lane2, AdjustMs = -12_000, MovesCap = true, Reason = "blocked by a judge" },
        new HeatCommand.ChangeLineUp { Id = Id(20), Lane = Lane2, FromStep = 4, Athletes = ["Ann", "Bo", "Dot"], Reason = "injury" },
        new HeatCommand.TakeVariant { Id = Id(21), Lane = Lane2, FromStep = 4, Prescription = "scaled", Reason = "asked for it" },
        new HeatCommand.Void { Id = Id(22), Target = Id(1), Reason = "wrong lane" },
        new HeatCommand.Admit { Id = Id(23), Target = Id(1), Reason = "seen" },
        new HeatCommand.GiveReason { Id = Id(24), Target = Id(30), Reason = "chain came off" },
        new HeatCommand.Add { Id = Id(25), Source = Source.Paper, Tap = new HeatFact.TagMade { Id = Id(26), Instant = At, Lane = Lane2, Step = 3 }, Reason = "phone died" },
        new HeatCommand.Warn { Id = Id(27), Lane = Lane2, Reason = "bar dropped" },
        new HeatCommand.Penalise { Id = Id(28), Lane = Lane2, AddMs = 30_000, Reps = 0, Reason = "again" },
        new HeatCommand.DecideNearTie { Id = Id(33), Lanes = [new(3), Lane2], Tie = true, Reason = "seen on video" },
        new HeatCommand.DecideCap { Id = Id(34), Lane = Lane2, InTime = true, Reason = "bar at lock-out" },
        new HeatCommand.OrderRerun { Id = Id(35), Lanes = [Lane2], InHeat = new("h9"), Reason = "floor was wet" },
        new HeatCommand.Disqualify { Id = Id(36), Lane = Lane2, Reason = "left the floor" },
        new HeatCommand.FileAppeal { Id = Id(37), Lane = Lane2, Member = "Ann", Grounds = "two reps not counted", Reason = "" },
        new HeatCommand.DecideAppeal { Id = Id(38), Target = Id(50), Outcome = AppealOutcome.Rerun, InHeat = new("h9"), Reason = "wrong weight on the bar" },
        new HeatCommand.AnswerCall { Id = Id(29), Lane = Lane2 },
        new HeatCommand.Freeze { Id = Id(30), Head = 412, Over = "phone of lane 2 is dead" },
        new HeatCommand.Certify { Id = Id(31), Head = 413 },
        new HeatCommand.Reopen { Id = Id(32), Reason = "protest" },
    ];

    /// <summary>The smallest snapshot with a field of each kind.</summary>
    private static HeatSnapshot Small => new(
        "Breakwater Relays", "Heat 1",
        new Engine.Workouts.Workout(
            "w1", "Low Tide", new Engine.Workouts.RelayOrder.Blocks(2), Engine.Workouts.Counting.Sets, 5, Engine.Workouts.FinishKind.Line,
            [Some.Movement()],
            [new("open", "Open", 600_000, 3, [], [new("wall-ball", 18, null, 1, "6 kg")], [new("wall-ball", 1, 0, 1, null, Reading: true)])]),
        [new LaneEntry(Lane2, "t2", "Team 2", "open", ["Ann", "Bo"])], Rounding.UpTenth);

    private static FactId Id(long counter) => new(Outbox, counter);
}
