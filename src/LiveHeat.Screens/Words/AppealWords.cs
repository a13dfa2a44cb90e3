using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Appeals;

namespace LiveHeat.Screens.Words;

/// <summary>Disqualification and appeals, at the desk and on the head judge's screen.</summary>
public static class AppealWords
{
    private static readonly Wording Words = new(typeof(AppealWords));

    public static string Title => Words[nameof(Title)];
    public static string None => Words[nameof(None)];
    public static string Open => Words[nameof(Open)];
    public static string Late => Words[nameof(Late)];
    public static string File => Words[nameof(File)];
    public static string FileHelp => Words[nameof(FileHelp)];
    public static string Lane => Words[nameof(Lane)];
    public static string Member => Words[nameof(Member)];
    public static string About => Words[nameof(About)];
    public static string NoLane => Words[nameof(NoLane)];
    public static string NoMember => Words[nameof(NoMember)];
    public static string NoAbout => Words[nameof(NoAbout)];
    public static string AnyTime => Words[nameof(AnyTime)];
    public static string LateHelp => Words[nameof(LateHelp)];
    public static string Decide => Words[nameof(Decide)];
    public static string DecideHelp => Words[nameof(DecideHelp)];
    public static string DecidesHeadJudge => Words[nameof(DecidesHeadJudge)];
    public static string CertifiedOpen => Words[nameof(CertifiedOpen)];
    public static string WhatComes => Words[nameof(WhatComes)];
    public static string NoChange => Words[nameof(NoChange)];
    public static string TimeAmount => Words[nameof(TimeAmount)];
    public static string RepAmount => Words[nameof(RepAmount)];
    public static string RerunIn => Words[nameof(RerunIn)];
    public static string PickHeat => Words[nameof(PickHeat)];
    public static string TakeBack => Words[nameof(TakeBack)];
    public static string TakeBackHelp => Words[nameof(TakeBackHelp)];
    public static string Disqualify => Words[nameof(Disqualify)];
    public static string DisqualifyHelp => Words[nameof(DisqualifyHelp)];
    public static string GaveUp => Words[nameof(GaveUp)];
    public static string GaveUpHelp => Words[nameof(GaveUpHelp)];
    public static string PendingNote => Words[nameof(PendingNote)];

    public static string Until(string clock, string left) => Words.Say(nameof(Until), clock, left);

    public static string Over(string clock) => Words.Say(nameof(Over), clock);

    public static string By(string member, string about) => Words.Say(nameof(By), member, about);

    public static string Pending(IEnumerable<LaneNumber> lanes) => Words.Say(nameof(Pending), CommonWords.Lanes(lanes));

    public static string DisputedBy(LaneNumber lane, string name) => Words.Say(nameof(DisputedBy), lane, name);

    /// <summary>What may come of one, to choose from.</summary>
    public static string Kind(DecisionKind kind) => kind == DecisionKind.NoChange ? NoChange : Words[$"{nameof(Kind)}.{kind}"];

    /// <summary>What came of an appeal: "5 s taken", "2 reps given back", "the result stands".</summary>
    public static string Outcome(AppealOutcome outcome, int addMs, int reps, HeatId? inHeat, ScoreUnit? score) => outcome switch
    {
        AppealOutcome.Seconds => Words.Say(addMs < 0 ? $"{nameof(Outcome)}.Given" : $"{nameof(Outcome)}.Added", SecondsText.Length(Math.Abs((long)addMs))),
        AppealOutcome.Reps => Words.Say(reps < 0 ? $"{nameof(Outcome)}.Given" : $"{nameof(Outcome)}.Taken", Amount(Math.Abs(reps), score)),
        AppealOutcome.Rerun => Words.Say($"{nameof(Outcome)}.Rerun", inHeat),
        _ => NoChange,
    };

    private static string Amount(int amount, ScoreUnit? score) => score is { Unit: not Unit.Reps } unit ? ScoreWords.Of(amount * unit.Scale, unit) : CommonWords.Reps(amount);
}
