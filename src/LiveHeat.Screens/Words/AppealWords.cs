using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Appeals;

namespace LiveHeat.Screens.Words;

/// <summary>Disqualification and appeals, at the desk and on the head judge's screen.</summary>
public static class AppealWords
{
    public const string Title = "Appeals";
    public const string None = "No appeal is open.";
    public const string Open = "open";
    public const string Late = "late";
    public const string File = "Take an appeal";
    public const string FileHelp = "A member of the team appeals against the lane's result. The head judge decides it; until then the result stands as pending.";
    public const string Lane = "Lane";
    public const string Member = "Team member";
    public const string About = "What about";
    public const string NoLane = "Choose the lane.";
    public const string NoMember = "Write who appeals.";
    public const string NoAbout = "Write what the appeal is about.";
    public const string AnyTime = "Appeals may be filed. Freezing posts the provisional result and opens the time for them.";
    public const string LateHelp = "The time for appeals is over. Only the head judge can let a late one in, with a reason.";
    public const string Decide = "Decide";
    public const string DecideHelp = "The decision stands on the result, with its reason.";
    public const string DecidesHeadJudge = "The head judge decides.";
    public const string CertifiedOpen = "The result is certified with this appeal open. The desk reopens the heat; then it is decided, and signed as a new revision.";
    public const string WhatComes = "What comes of it";
    public const string NoChange = "the result stands";
    public const string TimeAmount = "How much (m:ss.t)";
    public const string RepAmount = "How many reps";
    public const string RerunIn = "In heat";
    public const string PickHeat = "Choose a heat. Set one up first if there is none.";
    public const string TakeBack = "Taken back by the team";
    public const string TakeBackHelp = "The appeal falls. It stays on the record, marked as void.";
    public const string Disqualify = "Disqualify";
    public const string DisqualifyHelp = "The team has no place in this workout. It stands last, with the reason; until the result is certified it can be voided.";
    public const string GaveUp = "Team gave up";
    public const string GaveUpHelp = "The team withdrew: what it did until now stands, and nothing after it counts. For what no phone recorded.";
    public const string PendingNote = "Signed as pending: the place stands in brackets until a later revision settles it.";

    public static string Until(string clock, string left) => $"Appeals until {clock}: {left} left.";

    public static string Over(string clock) => $"The time for appeals ended at {clock}.";

    public static string By(string member, string about) => $"{member}: {about}";

    public static string Pending(IEnumerable<LaneNumber> lanes) => $"An appeal is open: {CommonWords.Lanes(lanes)}.";

    public static string DisputedBy(LaneNumber lane, string name) => $"{CommonWords.Lane(lane)}: the score is disputed by {name}";

    /// <summary>What may come of one, to choose from.</summary>
    public static string Kind(DecisionKind kind) => kind switch
    {
        DecisionKind.GiveTime => "time is given back",
        DecisionKind.AddTime => "time is taken",
        DecisionKind.GiveReps => "reps are given back",
        DecisionKind.TakeReps => "reps are taken",
        DecisionKind.Rerun => "the team does it again",
        _ => NoChange,
    };

    /// <summary>What came of an appeal: "+5 s", "2 reps given back", "the result stands".</summary>
    public static string Outcome(AppealOutcome outcome, int addMs, int reps, HeatId? inHeat) => outcome switch
    {
        AppealOutcome.Seconds => addMs < 0 ? $"{Seconds(addMs)} given back" : $"{Seconds(addMs)} taken",
        AppealOutcome.Reps => reps < 0 ? $"{CommonWords.Reps(-reps)} given back" : $"{CommonWords.Reps(reps)} taken",
        AppealOutcome.Rerun => $"rerun in heat {inHeat}",
        _ => NoChange,
    };

    private static string Seconds(int ms) => Math.Abs((long)ms) < 60_000 ? $"{Math.Abs(ms) / 1000m:0.###} s" : TimeWords.Exact(Math.Abs((long)ms));
}
