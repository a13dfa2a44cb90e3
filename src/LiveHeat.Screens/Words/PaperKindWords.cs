using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Paper;

namespace LiveHeat.Screens.Words;

/// <summary>Paper cards of attempts, readings, shared pools and rounds by the clock.</summary>
public static class PaperKindWords
{
    private static readonly Wording Words = new(typeof(PaperKindWords));

    public static string Attempt => Words[nameof(Attempt)];
    public static string Attempts => Words[nameof(Attempts)];
    public static string GoodLift => Words[nameof(GoodLift)];
    public static string NoLift => Words[nameof(NoLift)];
    public static string NotMade => Words[nameof(NotMade)];
    public static string LoadMissing => Words[nameof(LoadMissing)];
    public static string LiftMissing => Words[nameof(LiftMissing)];
    public static string NotTicked => Words[nameof(NotTicked)];
    public static string WhoDidHowMuch => Words[nameof(WhoDidHowMuch)];
    public static string MoreLines => Words[nameof(MoreLines)];

    public static string BadLoad(Unit unit) => Words.Say(nameof(BadLoad), CommonWords.Unit(unit), LiveHeat.Engine.Workouts.Attempts.HeaviestLoad);

    public static string SumIs(int sum, int of) => Words.Say(nameof(SumIs), sum, of);

    public static string BeforeRound(int round, string begins) => Words.Say(nameof(BeforeRound), round, begins);

    public static string RoundFromTo(int round, Window window) => Words.Say(nameof(RoundFromTo), round, TimeWords.Clock(window.FromMs), TimeWords.Clock(window.UntilMs));

    public static string AfterRound(int round, string ended) => Words.Say(nameof(AfterRound), round, ended);

    public static string NothingOpen(int round) => Words.Say(nameof(NothingOpen), round);

    /// <summary>As the card asks for it: by the clock's time.</summary>
    public static string AtEnd(PaperRound round) => round.Open is { } open ? Words.Say(nameof(AtEnd), open.Label, TimeWords.Clock(round.Window.UntilMs)) : AtEndLabel(round.Number);

    public static string AtEndLabel(int round) => Words.Say(nameof(AtEndLabel), round);

    public static string LoadOf(SheetStep step) => Words.Say(nameof(LoadOf), step.Label, CommonWords.Unit(step.Unit));

    public static string Lift(SheetStep step) => Words.Say(nameof(Lift), step.Label);

    public static string PartOf(string athlete, SheetStep step) => Words.Say(nameof(PartOf), athlete, step.Label);

    public static string LeastEach(int units) => Words.Say(nameof(LeastEach), units);

    public static string InRound(int round) => Words.Say(nameof(InRound), round);

    public static string AboutLoad(string step) => Words.Say(nameof(AboutLoad), step);

    public static string AboutLift(string step) => Words.Say(nameof(AboutLift), step);

    public static string AboutShares(string step) => Words.Say(nameof(AboutShares), step);

    public static string AboutAtEnd(string step) => Words.Say(nameof(AboutAtEnd), step);

    public static string Worked(string athlete, string step) => Words.Say(nameof(Worked), athlete, step);

    public static string Counted(int count, string step) => Words.Say(nameof(Counted), count, step);

    public static string Tried(string step, string load, string lift) => Words.Say(nameof(Tried), step, load, lift);

    public static string Read(string step, string reading) => Words.Say(nameof(Read), step, reading);

    public static string IsGood(bool good) => good ? GoodLift : NoLift;

    public static string Amount(decimal amount, Unit unit) => $"{Numbers.Of(amount)} {CommonWords.Unit(unit)}";

    /// <summary>"Ann 25, Bo 20".</summary>
    public static string Parts(Items<Share> shares, Items<string> athletes) =>
        string.Join(", ", shares.Select(share => $"{athletes[share.Athlete - 1]} {Numbers.Whole(share.Units)}"));

    /// <summary>The number of the round by the clock that the step is in; null where there is none.</summary>
    public static int? RoundOf(SheetLane lane, int step) => lane.Windows is null || step < 1 || step > lane.Steps.Count ? null : lane.Steps[step - 1].Round;

    /// <summary>A step by its round, where rounds go by the clock and the same is done in each.</summary>
    public static string InRound(int? round, string step) => round is { } number ? Words.Say($"{nameof(InRound)}.Step", number, step) : step;

    /// <summary>What was entered or tried at a step, or who did how much; empty where nothing was.</summary>
    public static string Entered(LaneState lane, int step)
    {
        var unit = lane.Plan.Find(step)!.Unit;
        var tried = lane.Attempts.Where(attempt => attempt.Step == step).Select(attempt => $"{Amount(attempt.Load, unit)}, {IsGood(attempt.Good)}");
        var read = lane.Values.Where(value => value.Step == step).Select(value => Amount(value.Value, unit));
        var shares = lane.Shares.Where(share => share.Step == step && share.Athlete > 0).ToItems();
        return string.Join(", ", tried.Concat(read).Concat(shares.Count > 0 ? [Parts(shares, lane.Plan.Athletes)] : []));
    }
}
