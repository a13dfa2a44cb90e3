using System.Globalization;
using LiveHeat.Contracts.Judging;

namespace LiveHeat.Screens.Words;

/// <summary>The judging watch: questions and figures, never verdicts.</summary>
public static class JudgingWords
{
    // the question during a heat
    public const string Question = "Have a look?";
    public const string MayDiffer = "Athletes differ too: this says only that the lane is unlike the others.";
    public const string PutAside = "Put aside for this heat";
    public const string TakeUp = "Ask again";
    public const string Aside = "put aside on this screen";
    public const string AllLanes = "Judging, all lanes";

    // a heat's page
    public const string Title = "Judging";
    public const string Help = "No-reps of each lane beside the other lanes' in the same movements. A lane outside its limits is a question, not a fault: athletes differ too. Sets that are done count.";
    public const string NotBegun = "Nothing is judged yet. Lanes stand here once the heat runs and a first set of reps is done.";
    public const string NothingStandsOut = "No lane stands out.";
    public const string Asked = "stands out";
    public const string NoLimits = "No other lane has done these movements yet, so there is nothing to hold it against.";
    public const string NoJudge = "nobody has this lane";
    public const string NotForYou = "This is for the organiser and the head judge.";
    public const string BackToHeat = "Back to the heat";
    public const string BackToLanes = "Back to the lanes";

    // the tables
    public const string Movement = "Movement";
    public const string NoReps = "No-reps";
    public const string Rate = "Of all tries";
    public const string Bar = "Where the rate may lie";
    public const string Others = "All others";
    public const string BarHelp = "Thick bar: where the rate lies with 95 % certainty; a wide bar means that too little was seen to know. Upright line in it: as counted. Dotted line: all others.";

    // the judges' page
    public const string Judges = "Judges";
    public const string JudgesHelp = "For training, not for blame. Each judge saw other athletes in other rounds; a rate far from the others' is a reason to look at the standard together, nothing more.";
    public const string NoJudges = "No judged set yet.";
    public const string NoJudgesHelp = "Judges stand here after the first heat with sets of reps: make join codes, let each judge join a lane under their own name, and run a heat. No-reps are counted from the judges' phones.";
    public const string Print = "Print";
    public const string PaperHead = "How we judged: for training, not for blame";

    public static string BetweenLimits(int low, int high) => low == 0 ? $"Up to {high} would be like the other lanes." : $"{low} to {high} would be like the other lanes.";

    /// <summary>"Lane 4: 9 no-reps in 30 wall balls, the floor's rate makes 1.5."</summary>
    public static string Figures(JudgingLane lane) =>
        $"Lane {lane.Lane}: {CommonWords.Count(lane.NoReps, "no-rep", "no-reps")} in {Work(lane)}, the floor's rate makes {Number(lane.Expected)}.";

    public static string Heats(int heats) => CommonWords.Count(heats, "heat", "heats");

    public static string Counted(int noReps, int reps) => $"{CommonWords.Count(noReps, "no-rep", "no-reps")} in {CommonWords.Reps(reps)}";

    public static string Percent(double share) => $"{Number(share * 100)} %";

    /// <summary>The bar for who cannot see it.</summary>
    public static string BarText(JudgingRate own, JudgingRate? others) =>
        $"{Percent(own.Rate)} as counted, {Percent(own.From)} to {Percent(own.To)} may be{(others is { } rate ? $"; all others {Percent(rate.Rate)}" : "")}";

    public static string Scale(double most) => $"0 to {Percent(most)}";

    /// <summary>One movement by its name, several by their reps.</summary>
    private static string Work(JudgingLane lane) => lane.Movements.Count == 1
        ? string.Create(CultureInfo.InvariantCulture, $"{lane.Reps} {lane.Movements[0].Movement}")
        : $"{CommonWords.Reps(lane.Reps)} ({string.Join(", ", lane.Movements.Select(one => string.Create(CultureInfo.InvariantCulture, $"{one.Movement} {one.NoReps} in {one.Reps}")))})";

    private static string Number(double number) => number.ToString("0.#", CultureInfo.InvariantCulture);
}
