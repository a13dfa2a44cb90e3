using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Paper;
using LiveHeat.Engine.Rules;

namespace LiveHeat.Screens.Words;

/// <summary>Paper scorecards: printing them, and entering them beside what the phone said.</summary>
public static class PaperWords
{
    public const string Cards = "Scorecards to print";
    public const string Title = "Paper card";
    public const string Open = "Enter paper cards";
    public const string BackToHeat = "Back to the heat";
    public const string BackToLanes = "Back to the lanes";
    public const string NotForYou = "Paper cards are entered by the organiser or the head judge.";
    public const string NotCalled = "This heat has not been called yet, or is still being read.";
    public const string NoStart = "No start is in force, so no time of a card can be placed. Put the start on the record first.";
    public const string Certified = "The result is certified. To take something from a card, the desk reopens the heat with a reason.";
    public const string PickLane = "Whose card is it?";
    public const string Lanes = "Lane";
    public const string Help = "Type what stands on the card. Tab goes on; Enter ticks the line and goes to the next. A no-rep field that is left empty is not compared.";
    public const string Kept = "What you type stays on this screen. Only what you take from the card is written, as facts from paper; the card itself is not stored, so keep the paper.";
    public const string Step = "Step";
    public const string Done = "Done";
    public const string Time = "Time";
    public const string Reading = "Reading";
    public const string NoReps = "No-reps";
    public const string Phone = "On the record";
    public const string DoneUpTo = "all done up to here";
    public const string Finish = "Finish time (m:ss.t)";
    public const string Nothing = "–";
    public const string BadTime = "Write the time as minutes and seconds: 4:32 or 4:32.5.";
    public const string BadValue = "Write the reading as a number.";
    public const string NothingOpen = "All is ticked as done, or the next step is no set, so nothing can be counted of it.";
    public const string Differences = "Card and record";
    public const string NothingTyped = "Nothing is typed in yet.";
    public const string PutRight = "Put right first what is marked above.";
    public const string Same = "The card and the record say the same. There is nothing to write.";
    public const string NoPhone = "No phone recorded anything on this lane. The card can be its record.";
    public const string WholeCard = "Use the whole card";
    public const string WholeCardHelp = "Everything on the card is written to the lane's record, as found on paper. It can be repeated without doubling anything.";
    public const string TakeRecord = "The record stands";
    public const string TakePaper = "The card counts";
    public const string Write = "Write to the record";
    public const string WriteHelp = "What is listed here is written, line by line. What the card replaces stays on the record, marked as void.";
    public const string UsualReason = "from the judge's paper card";
    public const string Why = "Why";
    public const string WillBeWritten = "What will be written";
    public const string NothingChosen = "Nothing is taken from the card: the record stays as it is.";
    public const string Stopped = "Stopped at this line. What is above it is written.";
    public const string GoOn = "Go on from there";
    public const string Leave = "Leave the rest";
    public const string Finished = "Written. The record says what was taken from the card.";

    public static string AtCap(SheetStep? open) => open is null ? "Reps of the open set at the cap" : $"How many of {open.Label} at the cap";

    public static string CountUpTo(int most) => $"Write a whole number from 0 to {most}.";

    public static string EarlierThan(string label) => $"This is earlier than the time of {label} above it. One of the two is misread.";

    public static string DoneLabel(SheetStep step) => $"{step.Label}, done";

    public static string TimeLabel(SheetStep step) => $"{step.Label}, time";

    public static string NoRepsLabel(SheetStep step) => $"{step.Label}, no-reps";

    public static string ReadingLabel(SheetStep step) => $"{step.Label}, reading in {CommonWords.Unit(step.Unit)}";

    public static string OnRecord(HeatState heat, LaneState lane, int step)
    {
        var when = CardDifferences.PhoneMs(heat, lane, step) is { } ms ? TimeWords.Clock(ms, 1) : step <= lane.DoneSteps ? "done" : Nothing;
        return lane.NoReps[step - 1] is > 0 and var noReps ? $"{when}, {CommonWords.Count(noReps, "no-rep", "no-reps")}" : when;
    }

    /// <summary>What it is about: "12 cal row, time".</summary>
    public static string About(CardDifference one, SheetLane lane) => one.Kind switch
    {
        DifferenceKind.Reached => "How far the team came",
        DifferenceKind.Time or DifferenceKind.TimeMissing => $"{Label(lane, one.Step)}: when",
        DifferenceKind.Value => $"{Label(lane, one.Step)}: reading",
        DifferenceKind.NoReps => $"{Label(lane, one.Step)}: no-reps",
        _ => $"{Label(lane, one.Step)}: how many at the cap",
    };

    public static string Said(CardDifference one, decimal? said, SheetLane lane) => one.Kind switch
    {
        _ when said is null => "nothing",
        DifferenceKind.Reached => said == 0 ? "nothing done" : $"done to {Label(lane, (int)said.Value)}, step {said.Value:0} of {lane.Steps.Count}",
        DifferenceKind.Time or DifferenceKind.TimeMissing => TimeWords.Clock((long)said.Value, 1),
        _ => said.Value.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture),
    };

    public static string Apart(CardDifference one) =>
        one is { Kind: DifferenceKind.Time, Phone: { } phone } ? $"{SecondsText.Of((long)Math.Abs(phone - one.Paper))} apart, where clocks, hands and writing may differ by {SecondsText.Of(one.WithinMs)}" : "";

    public static string Of(CardWrite write, LaneState lane, HeatState heat) => write.Command switch
    {
        HeatCommand.Add { Tap: HeatFact.Done { TimeKnown: true } tap } => $"{Label(lane, write.Step)} done at {At(heat, tap)}",
        HeatCommand.Add { Tap: HeatFact.Done } => $"{Label(lane, write.Step)} done, time not known",
        HeatCommand.Add { Tap: HeatFact.NoRep } => $"one no-rep in {Label(lane, write.Step)}",
        HeatCommand.Add { Tap: HeatFact.RepsAtCap cap } => $"{cap.Count} of {Label(lane, write.Step)} at the cap",
        HeatCommand.Void => $"void what the record has of {Label(lane, write.Step)}",
        _ => Label(lane, write.Step),
    };

    /// <summary>What a lane has to show: "9 of 9 steps, 88 of 88 reps, finish 3:00.0".</summary>
    public static string Shows(LaneState lane)
    {
        var finish = lane.Finish is { } split ? $", finish {TimeWords.Clock(split.LaneMs, 1)}" : "";
        return $"{lane.DoneSteps} of {lane.Plan.LastStep} steps, {CommonWords.Reps(lane.Worth)}{finish}";
    }

    public static string Before(LaneState lane) => $"Now: {Shows(lane)}";

    public static string After(LaneState lane) => $"Then: {Shows(lane)}";

    public static string NotSo(CardDifference one, SheetLane lane) =>
        $"{About(one, lane)}: by what else stands on the record it would not come out as on the card. Look at the steps before and after it, and take those from the card too.";

    public static string Lines(int count) => CommonWords.Count(count, "line", "lines");

    public static string Progress(int written, int of) => $"{written} of {Lines(of)} written";

    private static string At(HeatState heat, HeatFact.Floor tap) => heat.Clock.HeatMs(tap.Instant) is { } ms ? TimeWords.Clock(ms, 1) : Nothing;

    private static string Label(SheetLane lane, int step) => step >= 1 && step <= lane.Steps.Count ? lane.Steps[step - 1].Label : "";

    private static string Label(LaneState lane, int step) => lane.Plan.Find(step)?.Label ?? "";
}
