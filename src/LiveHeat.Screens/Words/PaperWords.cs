using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Paper;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Words;

/// <summary>Paper scorecards: printing them, and entering them beside what the phone said.</summary>
public static class PaperWords
{
    private static readonly Wording Words = new(typeof(PaperWords));

    public static string Cards => Words[nameof(Cards)];
    public static string Title => Words[nameof(Title)];
    public static string Open => Words[nameof(Open)];
    public static string BackToHeat => Words[nameof(BackToHeat)];
    public static string BackToLanes => Words[nameof(BackToLanes)];
    public static string NotForYou => Words[nameof(NotForYou)];
    public static string NotCalled => Words[nameof(NotCalled)];
    public static string NoStart => Words[nameof(NoStart)];
    public static string Certified => Words[nameof(Certified)];
    public static string PickLane => Words[nameof(PickLane)];
    public static string Lanes => Words[nameof(Lanes)];
    public static string Help => Words[nameof(Help)];
    public static string Kept => Words[nameof(Kept)];
    public static string Step => Words[nameof(Step)];
    public static string Done => Words[nameof(Done)];
    public static string Time => Words[nameof(Time)];
    public static string Reading => Words[nameof(Reading)];
    public static string NoReps => Words[nameof(NoReps)];
    public static string Phone => Words[nameof(Phone)];
    public static string DoneUpTo => Words[nameof(DoneUpTo)];
    public static string Finish => Words[nameof(Finish)];
    public const string Nothing = "–";
    public static string BadTime => Words[nameof(BadTime)];
    public static string BadValue => Words[nameof(BadValue)];
    public static string NothingOpen => Words[nameof(NothingOpen)];
    public static string Differences => Words[nameof(Differences)];
    public static string NothingTyped => Words[nameof(NothingTyped)];
    public static string PutRight => Words[nameof(PutRight)];
    public static string Same => Words[nameof(Same)];
    public static string NoPhone => Words[nameof(NoPhone)];
    public static string WholeCard => Words[nameof(WholeCard)];
    public static string WholeCardHelp => Words[nameof(WholeCardHelp)];
    public static string TakeRecord => Words[nameof(TakeRecord)];
    public static string TakePaper => Words[nameof(TakePaper)];
    public static string Write => Words[nameof(Write)];
    public static string WriteHelp => Words[nameof(WriteHelp)];
    public static string UsualReason => Words[nameof(UsualReason)];
    public static string Why => Words[nameof(Why)];
    public static string WillBeWritten => Words[nameof(WillBeWritten)];
    public static string NothingChosen => Words[nameof(NothingChosen)];
    public static string Stopped => Words[nameof(Stopped)];
    public static string GoOn => Words[nameof(GoOn)];
    public static string Leave => Words[nameof(Leave)];
    public static string Finished => Words[nameof(Finished)];

    public static string AtCap(SheetStep? open) => open is null ? Words[$"{nameof(AtCap)}.Any"] : Words.Say($"{nameof(AtCap)}.Of", open.Label);

    public static string CountUpTo(int most) => Words.Say(nameof(CountUpTo), most);

    public static string EarlierThan(SheetStep step) => Words.Say(nameof(EarlierThan), step.Label);

    public static string DoneLabel(SheetStep step) => Words.Say(nameof(DoneLabel), step.Label);

    public static string TimeLabel(SheetStep step) => Words.Say(nameof(TimeLabel), step.Label);

    public static string NoRepsLabel(SheetStep step) => Words.Say(nameof(NoRepsLabel), step.Label);

    public static string ReadingLabel(SheetStep step) => Words.Say(nameof(ReadingLabel), step.Label, CommonWords.Unit(step.Unit));

    public static string OnRecord(HeatState heat, LaneState lane, int step)
    {
        var when = CardDifferences.PhoneMs(heat, lane, step) is { } ms ? TimeWords.Clock(ms, 1) : lane.HasDone(step) ? Words[nameof(OnRecord)] : Nothing;
        when = PaperKindWords.Entered(lane, step) is { Length: > 0 } entered ? $"{when}, {entered}" : when;
        return lane.NoReps[step - 1] is > 0 and var noReps ? $"{when}, {LaneMarkWords.NoReps(noReps)}" : when;
    }

    /// <summary>What it is about: "12 cal row: when".</summary>
    public static string About(CardDifference one, SheetLane lane) => one.Kind switch
    {
        DifferenceKind.Reached => PaperKindWords.RoundOf(lane, one.Step) is { } round ? PaperKindWords.InRound(round) : Words[$"{nameof(About)}.Reached"],
        DifferenceKind.Time or DifferenceKind.TimeMissing => Words.Say($"{nameof(About)}.Time", Named(lane, one.Step)),
        DifferenceKind.Value => Words.Say($"{nameof(About)}.Value", Named(lane, one.Step)),
        DifferenceKind.NoReps => Words.Say($"{nameof(About)}.NoReps", Named(lane, one.Step)),
        DifferenceKind.Load => PaperKindWords.AboutLoad(Named(lane, one.Step)),
        DifferenceKind.Lift => PaperKindWords.AboutLift(Named(lane, one.Step)),
        DifferenceKind.Shares => PaperKindWords.AboutShares(Named(lane, one.Step)),
        _ when lane.Windows is not null => PaperKindWords.AboutAtEnd(Named(lane, one.Step)),
        _ => Words.Say($"{nameof(About)}.AtCap", Named(lane, one.Step)),
    };

    /// <summary>What the card says of it, or what the phone said.</summary>
    public static string Said(CardDifference one, bool paper, SheetLane lane) => Said(one, paper ? one.Paper : one.Phone, paper ? one.PaperShares : one.PhoneShares, lane);

    private static string Said(CardDifference one, decimal? said, Items<Share> shares, SheetLane lane) => one.Kind switch
    {
        _ when said is null => Words[$"{nameof(Said)}.Nothing"],
        DifferenceKind.Load => PaperKindWords.Amount(said.Value, lane.Steps[one.Step - 1].Unit),
        DifferenceKind.Lift => PaperKindWords.IsGood(said == 1),
        DifferenceKind.Shares => PaperKindWords.Parts(shares, lane.Athletes),
        DifferenceKind.Reached when said == 0 || PaperKindWords.RoundOf(lane, (int)said.Value) != PaperKindWords.RoundOf(lane, one.Step) => Words[$"{nameof(Said)}.NothingDone"],
        DifferenceKind.Reached => Words.Say($"{nameof(Said)}.DoneTo", Label(lane, (int)said.Value), (int)said.Value, lane.Steps.Count),
        DifferenceKind.Time or DifferenceKind.TimeMissing => TimeWords.Clock((long)said.Value, 1),
        _ => said.Value.ToString("0.###", Numbers.Format),
    };

    public static string Apart(CardDifference one) =>
        one is { Kind: DifferenceKind.Time, Phone: { } phone } ? Words.Say(nameof(Apart), SecondsText.Of((long)Math.Abs(phone - one.Paper)), SecondsText.Of(one.WithinMs)) : "";

    public static string Of(CardWrite write, LaneState lane, HeatState heat) => write.Command switch
    {
        HeatCommand.Add { Tap: HeatFact.AttemptJudged attempt } => PaperKindWords.Tried(Label(heat, lane, write.Step), PaperKindWords.Amount(attempt.Load, UnitOf(lane, write.Step)), PaperKindWords.IsGood(attempt.Good)),
        HeatCommand.Add { Tap: HeatFact.ValueEntered value } => PaperKindWords.Read(Label(heat, lane, write.Step), PaperKindWords.Amount(value.Value, UnitOf(lane, write.Step))),
        HeatCommand.Add { Tap: HeatFact.AthleteWorking works } => PaperKindWords.Worked(lane.Plan.Athletes[works.Athlete - 1], Label(heat, lane, write.Step)),
        HeatCommand.Add { Tap: HeatFact.CountReached reached } => PaperKindWords.Counted(reached.Count, Label(heat, lane, write.Step)),
        HeatCommand.Add { Tap: HeatFact.RepsAtCap left } when lane.Plan.Windows.Count > 0 => PaperKindWords.Counted(left.Count, Label(heat, lane, write.Step)),
        HeatCommand.Add { Tap: HeatFact.Done { TimeKnown: true } tap } => Words.Say($"{nameof(Of)}.DoneAt", Label(heat, lane, write.Step), At(heat, tap)),
        HeatCommand.Add { Tap: HeatFact.Done } => Words.Say($"{nameof(Of)}.Done", Label(heat, lane, write.Step)),
        HeatCommand.Add { Tap: HeatFact.NoRep } => Words.Say($"{nameof(Of)}.NoRep", Label(heat, lane, write.Step)),
        HeatCommand.Add { Tap: HeatFact.RepsAtCap cap } => Words.Say($"{nameof(Of)}.AtCap", cap.Count, Label(heat, lane, write.Step)),
        HeatCommand.Void => Words.Say($"{nameof(Of)}.Void", Label(heat, lane, write.Step)),
        _ => Label(heat, lane, write.Step),
    };

    /// <summary>What a lane has to show: "9 of 9 steps, 88 reps, finish 3:00.0".</summary>
    public static string Shows(LaneState lane) => lane.Finish is { } split
        ? ShowsFinish(lane, split.LaneMs)
        : Words.Say(nameof(Shows), lane.DoneSteps, lane.Plan.LastStep, lane.Plan.Measured ? ScoreWords.Of(lane.Worth, lane.Plan.Score) : CommonWords.Reps(lane.Worth));

    public static string Before(LaneState lane) => Words.Say(nameof(Before), Shows(lane));

    public static string After(LaneState lane) => Words.Say(nameof(After), Shows(lane));

    public static string NotSo(CardDifference one, SheetLane lane) => Words.Say(nameof(NotSo), About(one, lane));

    public static string Lines(int count) => Words.Count(nameof(Lines), count);

    public static string Progress(int written, int of) => Words.Count(nameof(Progress), of, written);

    private static string ShowsFinish(LaneState lane, long ms) => Words.Say(nameof(ShowsFinish), lane.DoneSteps, lane.Plan.LastStep, CommonWords.Reps(lane.Worth), TimeWords.Clock(ms, 1));

    private static string At(HeatState heat, HeatFact.Floor tap) => heat.Clock.HeatMs(tap.Instant) is { } ms ? TimeWords.Clock(ms, 1) : Nothing;

    private static string Label(SheetLane lane, int step) => step >= 1 && step <= lane.Steps.Count ? lane.Steps[step - 1].Label : "";

    private static string Named(SheetLane lane, int step) => PaperKindWords.InRound(PaperKindWords.RoundOf(lane, step), Label(lane, step));

    private static Unit UnitOf(LaneState lane, int step) => lane.Plan.Find(step)!.Unit;

    private static string Label(HeatState heat, LaneState lane, int step) => lane.Plan.Find(step) is { } found
        ? PaperKindWords.InRound(lane.Plan.Windows.Count > 0 ? found.Round : null, StepWords.Label(heat.Snapshot!.Workout, lane.Plan, found)) : "";
}
