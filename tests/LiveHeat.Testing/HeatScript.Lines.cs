using System.Globalization;
using System.Text.RegularExpressions;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Testing;

public sealed partial class HeatScript
{
    private readonly HeatSnapshot snapshot;

    /// <summary>Lines about what a judge saw: "lane 2 " and one of these.</summary>
    private static readonly IReadOnlyList<(string Pattern, Func<Tap, HeatFact.Floor> Make)> Taps =
    [
        (@"step (\d+) done", tap => new HeatFact.StepDone { Id = tap.Id, Instant = tap.At, Lane = tap.Lane, Step = tap.Int(1), TimeKnown = tap.TimeKnown }),
        (@"tag (\d+)", tap => new HeatFact.TagMade { Id = tap.Id, Instant = tap.At, Lane = tap.Lane, Step = tap.Int(1), TimeKnown = tap.TimeKnown }),
        (@"value (\S+) in step (\d+)", tap => new HeatFact.ValueEntered { Id = tap.Id, Instant = tap.At, Lane = tap.Lane, Step = tap.Int(2), Value = decimal.Parse(tap.Text(1), CultureInfo.InvariantCulture) }),
        (@"(lifts|fails) (\S+) in step (\d+)", tap => new HeatFact.AttemptJudged
        {
            Id = tap.Id, Instant = tap.At, Lane = tap.Lane, Step = tap.Int(3), Load = decimal.Parse(tap.Text(2), CultureInfo.InvariantCulture), Good = tap.Text(1) == "lifts", TimeKnown = tap.TimeKnown,
        }),
        (@"count (\d+) of step (\d+)", tap => new HeatFact.CountReached { Id = tap.Id, Instant = tap.At, Lane = tap.Lane, Step = tap.Int(2), Count = tap.Int(1) }),
        (@"no-rep step (\d+)", tap => new HeatFact.NoRep { Id = tap.Id, Instant = tap.At, Lane = tap.Lane, Step = tap.Int(1) }),
        (@"tag fault step (\d+)", tap => new HeatFact.TagFault { Id = tap.Id, Instant = tap.At, Lane = tap.Lane, Step = tap.Int(1) }),
        (@"athlete (\d+) works step (\d+)", tap => new HeatFact.AthleteWorking { Id = tap.Id, Instant = tap.At, Lane = tap.Lane, Athlete = tap.Int(1), Step = tap.Int(2) }),
        (@"(\d+) reps at cap in step (\d+)", tap => new HeatFact.RepsAtCap { Id = tap.Id, Instant = tap.At, Lane = tap.Lane, Count = tap.Int(1), Step = tap.Int(2) }),
        (@"finish timed", tap => new HeatFact.FinishTimed { Id = tap.Id, Instant = tap.At, Lane = tap.Lane }),
        (@"stopped (withdrew|medical)", tap => new HeatFact.LaneStopped { Id = tap.Id, Instant = tap.At, Lane = tap.Lane, Reason = Enum.Parse<StopReason>(tap.Text(1), ignoreCase: true) }),
        (@"undo (\w+)", tap => new HeatFact.Undone { Id = tap.Id, Instant = tap.At, Lane = tap.Lane, Target = tap.Target(1) }),
        (@"calls", tap => new HeatFact.HeadJudgeCalled { Id = tap.Id, Instant = tap.At, Lane = tap.Lane }),
        (@"reads back (agreed|disputed)", tap => new HeatFact.ScoreReadBack { Id = tap.Id, Instant = tap.At, Lane = tap.Lane, Agreed = tap.Text(1) == "agreed", Name = "Ann" }),
    ];

    /// <summary>Lines of the desk.</summary>
    private static readonly IReadOnlyList<(string Pattern, Func<Line, HeatFact> Make)> DeskLines =
    [
        ("call", line => new HeatFact.HeatCalled { Id = line.Id, Instant = line.At, By = Some.Organiser, Snapshot = line.Script.snapshot }),
        ("call again", line => new HeatFact.CallReplaced { Id = line.Id, Instant = line.At, By = Some.Organiser, Snapshot = line.Script.snapshot }),
        (@"lane (\d+) seat (\S+) taken as (primary|witness|timekeeper)", line => new HeatFact.SeatTaken
        {
            Id = line.Id, Instant = line.At, Lane = line.Lane(1), Seat = new SeatId(line.Text(2)), Duty = Enum.Parse<Duty>(line.Text(3), ignoreCase: true),
            By = new By(line.Text(2).Replace("s-", "in-", StringComparison.Ordinal), $"Judge {line.Text(2)}", Role.Judge),
        }),
        (@"lane (\d+) seat (\S+) given up", line => new HeatFact.SeatGivenUp { Id = line.Id, Instant = line.At, By = Some.Judge(line.Int(1)), Lane = line.Lane(1), Seat = new SeatId(line.Text(2)) }),
        (@"lane (\d+) ready with (\S+)", line => new HeatFact.LaneReady { Id = line.Id, Instant = line.At, By = Some.Judge(line.Int(1)), Lane = line.Lane(1), Seat = new SeatId(line.Text(2)) }),
        (@"override lanes ([\d,]+)", line => new HeatFact.LanesOverridden { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Lanes = line.Text(1).Split(',').Select(lane => new LaneNumber(int.Parse(lane, CultureInfo.InvariantCulture))).ToItems() }),
        (@"withdraw lane (\d+)", line => new HeatFact.LaneWithdrawn { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Lane = line.Lane(1) }),
        ("start", line => new HeatFact.StartScheduled { Id = line.Id, Instant = line.GoAt + -10_000, By = Some.Organiser, Start = line.Script.NextStart(), GoAt = line.GoAt }),
        (@"observe start give or take (\d+)", line => new HeatFact.StartObserved { Id = line.Id, Instant = line.Script.latest, By = Some.Organiser, Start = line.Script.NextStart(), GoAt = line.GoAt, UncertaintyMs = line.Int(1) }),
        (@"correct start (\S+)", line => new HeatFact.StartObserved { Id = line.Id, Instant = line.Script.latest, By = Some.Organiser, Start = line.Text(1), GoAt = line.GoAt, UncertaintyMs = 0, Reason = "late thumb" }),
        ("recall", line => new HeatFact.StartRecalled { Id = line.Id, Instant = line.At, By = Some.Organiser, Start = line.Script.State.Clock.Start?.Id ?? "none" }),
        ("halt", line => new HeatFact.HeatHalted { Id = line.Id, Instant = line.At, By = Some.HeadJudge }),
        ("resume", line => new HeatFact.HeatResumed { Id = line.Id, Instant = line.At, By = Some.Organiser }),
        ("return to call", line => new HeatFact.CallReturned { Id = line.Id, Instant = line.At, By = Some.Organiser }),
        ("end", line => new HeatFact.HeatEnded { Id = line.Id, Instant = line.At, By = Some.Organiser }),
        (@"lane (\d+) sent back to (\d+)", line => new HeatFact.SentBack { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Lane = line.Lane(1), Step = line.Int(2) }),
        (@"lane (\d+) owes (\d+) of step (\d+)", line => new HeatFact.RepsOwed { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Lane = line.Lane(1), Reps = line.Int(2), Step = line.Int(3) }),
        (@"hold lane (\d+)( cap stays)?", line => new HeatFact.LaneHeld { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Lane = line.Lane(1), MovesCap = line.Text(2).Length == 0 }),
        (@"resume lane (\d+)", line => new HeatFact.LaneResumed { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Lane = line.Lane(1) }),
        (@"adjust lane (\d+) by (-?\d+) ms( moving the cap)?", line => new HeatFact.TimeAdjusted { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Lane = line.Lane(1), AdjustMs = line.Int(2), MovesCap = line.Text(3).Length > 0 }),
        (@"lane (\d+) line-up ([\w,]+) from step (\d+)", line => new HeatFact.LineUpChanged { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Lane = line.Lane(1), Athletes = line.Text(2).Split(',').ToItems(), FromStep = line.Int(3) }),
        (@"lane (\d+) variant (\w+) from step (\d+)", line => new HeatFact.VariantTaken { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Lane = line.Lane(1), Prescription = line.Text(2), FromStep = line.Int(3) }),
        (@"void (\w+)", line => new HeatFact.Voided { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Target = line.Target(1), Reason = "seen otherwise" }),
        (@"admit (\w+)", line => new HeatFact.Admitted { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Target = line.Target(1), Reason = "seen" }),
        (@"reason for (\w+)", line => new HeatFact.ReasonGiven { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Target = line.Target(1), Reason = "told later" }),
        (@"warn lane (\d+)", line => new HeatFact.Warned { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Lane = line.Lane(1) }),
        (@"penalise lane (\d+) by (\d+) (ms|reps)( in part (\d+))?", line => new HeatFact.Penalised { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Lane = line.Lane(1), AddMs = line.Text(3) == "ms" ? line.Int(2) : 0, Reps = line.Text(3) == "reps" ? line.Int(2) : 0, Part = line.Text(4).Length > 0 ? line.Int(5) : null }),
        (@"decide lanes (\d+),(\d+)( tie)?", line => new HeatFact.NearTieDecided { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Lanes = [line.Lane(1), line.Lane(2)], Tie = line.Text(3).Length > 0 }),
        (@"decide lane (\d+) (in time|too late) by (\d+) ms(?: in round (\d+))?", line => new HeatFact.CapDecided
        {
            Id = line.Id, Instant = line.At, By = Some.HeadJudge, Lane = line.Lane(1), InTime = line.Text(2) == "in time", WithinMs = line.Int(3), Round = line.Text(4).Length > 0 ? line.Int(4) : null,
        }),
        (@"rerun lane (\d+) in (\w+)", line => new HeatFact.RerunOrdered { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Lanes = [line.Lane(1)], InHeat = new(line.Text(2)), Reason = "wet floor" }),
        (@"disqualify lane (\d+)", line => new HeatFact.Disqualified { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Lane = line.Lane(1), Reason = "left the floor" }),
        (@"lane (\d+) appeals( late)?", line => new HeatFact.AppealFiled { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Lane = line.Lane(1), Member = "Ann", Grounds = "a rep", Late = line.Text(2).Length > 0 }),
        (@"decide (\w+): (-?\d+) (ms|reps)( in part (\d+))?", line => new HeatFact.AppealDecided
        {
            Id = line.Id, Instant = line.At, By = Some.HeadJudge, Target = line.Target(1), Outcome = line.Text(3) == "ms" ? AppealOutcome.Seconds : AppealOutcome.Reps,
            AddMs = line.Text(3) == "ms" ? line.Int(2) : 0, Reps = line.Text(3) == "reps" ? line.Int(2) : 0, Part = line.Text(4).Length > 0 ? line.Int(5) : null, Reason = "seen on video",
        }),
        (@"decide (\w+): no change", line => new HeatFact.AppealDecided { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Target = line.Target(1), Outcome = AppealOutcome.NoChange, Reason = "seen on video" }),
        (@"decide (\w+): rerun in (\w+)", line => new HeatFact.AppealDecided { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Target = line.Target(1), Outcome = AppealOutcome.Rerun, InHeat = new(line.Text(2)), Reason = "wet floor" }),
        (@"answer lane (\d+)", line => new HeatFact.CallAnswered { Id = line.Id, Instant = line.At, By = Some.HeadJudge, Lane = line.Lane(1) }),
        ("freeze", line => new HeatFact.Frozen { Id = line.Id, Instant = line.At, By = Some.Organiser, Head = line.Script.State.Head }),
        ("sign (organiser|head judge)", line => new HeatFact.Certified { Id = line.Id, Instant = line.At, By = line.Text(1) == "organiser" ? Some.Organiser : Some.HeadJudge, Head = line.Script.State.SignedHead }),
        ("reopen", line => new HeatFact.Reopened { Id = line.Id, Instant = line.At, By = Some.Organiser, Reason = "protest" }),
    ];

    private (HeatFact Fact, string Sender) Fact(Said said)
    {
        var added = Regex.Match(said.What, @"^add (.+)$");
        var what = added.Success ? added.Groups[1].Value : said.What;
        if (Regex.Match(what, @"^lane (\d+) (.+)$") is { Success: true } floor && Find(Taps, floor.Groups[2].Value) is var (match, make))
        {
            var lane = int.Parse(floor.Groups[1].Value, CultureInfo.InvariantCulture);
            var seat = new SeatId(said.Seat ?? $"s-{lane}");
            var tap = new Tap(this, said, match, NextId(added.Success ? "paper" : seat.Value), new LaneNumber(lane));
            var fact = make(tap) with
            {
                Seat = seat,
                UncertaintyMs = said.UncertaintyMs,
                Start = said.NoStart ? null : said.Start ?? State.Clock.Start?.Id,
                Plan = said.Plan is { } plan ? int.Parse(plan, CultureInfo.InvariantCulture) : State.Find(tap.Lane)?.PlanVersion ?? 1,
            };
            return added.Success
                ? (new HeatFact.FactAdded { Id = NextId("desk"), Instant = latest, By = Some.HeadJudge, Source = Source.Video, Tap = fact }, Some.HeadJudge.SignIn)
                : (fact, State.Seats.FirstOrDefault(held => held.Id == seat)?.SignIn ?? "in-nobody");
        }

        if (Find(DeskLines, said.What) is not var (desk, makeDesk))
        {
            throw new ArgumentException($"The score sheet does not know: {said.What}");
        }

        var made = makeDesk(new Line(this, said, desk, NextId("desk")));
        return (made, made is HeatFact.Desk { By.SignIn: var signIn } ? signIn : Some.Organiser.SignIn);
    }

    private static (Match Match, T Make)? Find<T>(IReadOnlyList<(string Pattern, T Make)> table, string what)
    {
        foreach (var (pattern, make) in table)
        {
            if (Regex.Match(what, $"^{pattern}$") is { Success: true } match)
            {
                return (match, make);
            }
        }

        return null;
    }

    private FactId Named(string name, LaneNumber? lane) => name != "last"
        ? named[name]
        : (lane is { } own ? State.EntriesOf(own) : State.Entries).Last(entry => lane is null || entry.Fact is HeatFact.Floor and not HeatFact.Undone).Fact.Id;

    private string NextStart() => $"start-{++starts}";

    private record Line(HeatScript Script, Said Said, Match Match, FactId Id)
    {
        public Instant At => Said.At ?? Script.latest;

        public Instant GoAt => Said.At ?? Some.Go;

        public string Text(int group) => Match.Groups[group].Value;

        public int Int(int group) => int.Parse(Text(group), CultureInfo.InvariantCulture);

        public LaneNumber Lane(int group) => new(Int(group));

        public FactId Target(int group) => Script.Named(Text(group), null);
    }

    private sealed record Tap(HeatScript Script, Said Said, Match Match, FactId Id, LaneNumber Lane) : Line(Script, Said, Match, Id)
    {
        public new LaneNumber Lane { get; } = Lane;

        public bool TimeKnown => Said.TimeKnown;

        public new FactId Target(int group) => Script.Named(Text(group), Lane);
    }
}
