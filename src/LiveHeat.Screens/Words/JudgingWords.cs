using LiveHeat.Contracts.Judging;
using LiveHeat.Contracts.Language;

namespace LiveHeat.Screens.Words;

/// <summary>The judging watch: questions and figures, never verdicts.</summary>
public static class JudgingWords
{
    private static readonly Wording Words = new(typeof(JudgingWords));

    // the question during a heat
    public static string Question => Words[nameof(Question)];
    public static string MayDiffer => Words[nameof(MayDiffer)];
    public static string PutAside => Words[nameof(PutAside)];
    public static string TakeUp => Words[nameof(TakeUp)];
    public static string Aside => Words[nameof(Aside)];
    public static string AllLanes => Words[nameof(AllLanes)];

    // a heat's page
    public static string Title => Words[nameof(Title)];
    public static string Help => Words[nameof(Help)];
    public static string NotBegun => Words[nameof(NotBegun)];
    public static string NothingStandsOut => Words[nameof(NothingStandsOut)];
    public static string Asked => Words[nameof(Asked)];
    public static string NoLimits => Words[nameof(NoLimits)];
    public static string NoJudge => Words[nameof(NoJudge)];
    public static string NotForYou => Words[nameof(NotForYou)];
    public static string BackToHeat => Words[nameof(BackToHeat)];
    public static string BackToLanes => Words[nameof(BackToLanes)];

    // the tables
    public static string Movement => Words[nameof(Movement)];
    public static string NoReps => Words[nameof(NoReps)];
    public static string Rate => Words[nameof(Rate)];
    public static string Bar => Words[nameof(Bar)];
    public static string Others => Words[nameof(Others)];
    public static string BarHelp => Words[nameof(BarHelp)];

    // the judges' page
    public static string Judges => Words[nameof(Judges)];
    public static string JudgesHelp => Words[nameof(JudgesHelp)];
    public static string NoJudges => Words[nameof(NoJudges)];
    public static string NoJudgesHelp => Words[nameof(NoJudgesHelp)];
    public static string Print => Words[nameof(Print)];
    public static string PaperHead => Words[nameof(PaperHead)];

    public static string TitleOf(string heat) => Words.Say(nameof(TitleOf), heat);

    public static string BetweenLimits(int low, int high) => low == 0 ? UpTo(high) : Words.Say(nameof(BetweenLimits), low, high);

    /// <summary>"Lane 4: 9 no-reps in 30 wall balls, the floor's rate makes 1.5."</summary>
    public static string Figures(JudgingLane lane) => Words.Count(nameof(Figures), lane.NoReps, lane.Lane, Work(lane), Number(lane.Expected));

    public static string Heats(int heats) => Words.Count(nameof(Heats), heats);

    public static string Counted(int noReps, int reps) => Words.Count(nameof(Counted), noReps, CommonWords.Reps(reps));

    public static string Percent(double share) => Words.Say(nameof(Percent), Number(share * 100));

    /// <summary>The bar for who cannot see it.</summary>
    public static string BarText(JudgingRate own, JudgingRate? others) => others is { } all
        ? BarTextOthers(Percent(own.Rate), Percent(own.From), Percent(own.To), Percent(all.Rate))
        : Words.Say(nameof(BarText), Percent(own.Rate), Percent(own.From), Percent(own.To));

    public static string Scale(double most) => Words.Say(nameof(Scale), Percent(most));

    /// <summary>One movement by its name, several by their reps.</summary>
    private static string Work(JudgingLane lane) => lane.Movements.Count == 1
        ? OneMovement(lane.Reps, lane.Movements[0].Movement)
        : SomeMovements(CommonWords.Reps(lane.Reps), string.Join(", ", lane.Movements.Select(one => MovementShare(one.Movement, one.NoReps, one.Reps))));

    private static string OneMovement(int reps, string movement) => Words.Say(nameof(OneMovement), reps, movement);

    private static string SomeMovements(string reps, string movements) => Words.Say(nameof(SomeMovements), reps, movements);

    private static string MovementShare(string movement, int noReps, int reps) => Words.Say(nameof(MovementShare), movement, noReps, reps);

    private static string UpTo(int most) => Words.Say(nameof(UpTo), most);

    private static string BarTextOthers(string own, string from, string to, string others) => Words.Say(nameof(BarTextOthers), own, from, to, others);

    private static string Number(double number) => number.ToString("0.#", Numbers.Format);
}
