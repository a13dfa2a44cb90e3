using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>One heat at the desk.</summary>
public static class HeatDeskWords
{
    private static readonly Wording Words = new(typeof(HeatDeskWords));

    public static string NoSuchHeat => Words[nameof(NoSuchHeat)];
    public static string BackToProgram => Words[nameof(BackToProgram)];
    public static string ResultPage => Words[nameof(ResultPage)];
    public static string BoardPage => Words[nameof(BoardPage)];
    public static string BriefingSheet => Words[nameof(BriefingSheet)];
    public static string BriefingSlides => Words[nameof(BriefingSlides)];

    // before the call
    public static string Call => Words[nameof(Call)];
    public static string CallHelp => Words[nameof(CallHelp)];
    public static string NobodyOnLanes => Words[nameof(NobodyOnLanes)];
    public static string ReplaceCall => Words[nameof(ReplaceCall)];
    public static string ReplaceCallHelp => Words[nameof(ReplaceCallHelp)];

    // readiness
    public static string LanesAndPhones => Words[nameof(LanesAndPhones)];
    public static string Lane => Words[nameof(Lane)];
    public static string Team => Words[nameof(Team)];
    public static string Judge => Words[nameof(Judge)];
    public static string Phone => Words[nameof(Phone)];
    public static string Clock => Words[nameof(Clock)];
    public static string Unsent => Words[nameof(Unsent)];
    public static string Storage => Words[nameof(Storage)];
    public static string Screen => Words[nameof(Screen)];
    public static string ReadyHeading => Words[nameof(ReadyHeading)];
    public static string Ready => Words[nameof(Ready)];
    public static string NotReady => Words[nameof(NotReady)];
    public static string Withdrawn => Words[nameof(Withdrawn)];
    public static string NoJudge => Words[nameof(NoJudge)];
    public static string NoPhone => Words[nameof(NoPhone)];
    public static string Online => Words[nameof(Online)];
    public static string StorageSafe => Words[nameof(StorageSafe)];
    public static string StorageAtRisk => Words[nameof(StorageAtRisk)];
    public static string Awake => Words[nameof(Awake)];
    public static string NotAwake => Words[nameof(NotAwake)];
    public static string OverrideOne => Words[nameof(OverrideOne)];
    public static string OverrideAll => Words[nameof(OverrideAll)];
    public static string OverrideHelp => Words[nameof(OverrideHelp)];
    public static string Withdraw => Words[nameof(Withdraw)];
    public static string WithdrawHelp => Words[nameof(WithdrawHelp)];
    public static string ShowCodes => Words[nameof(ShowCodes)];

    // GO
    public static string Start => Words[nameof(Start)];
    public static string CountDownOf => Words[nameof(CountDownOf)];
    public static string GoHelp => Words[nameof(GoHelp)];
    public static string HornWent => Words[nameof(HornWent)];
    public static string HornHelp => Words[nameof(HornHelp)];
    public static string HornNow => Words[nameof(HornNow)];
    public static string HornAgo => Words[nameof(HornAgo)];
    public static string SecondsAgo => Words[nameof(SecondsAgo)];
    public static string Uncertain => Words[nameof(Uncertain)];
    public static string PutStartRight => Words[nameof(PutStartRight)];
    public static string PutStartRightHelp => Words[nameof(PutStartRightHelp)];
    public static string SecondsLater => Words[nameof(SecondsLater)];
    public static string NeedsNumber => Words[nameof(NeedsNumber)];
    public static string StartsIn => Words[nameof(StartsIn)];
    public static string Recall => Words[nameof(Recall)];
    public static string RecallHelp => Words[nameof(RecallHelp)];

    // while it runs
    public static string Halt => Words[nameof(Halt)];
    public static string HaltHelp => Words[nameof(HaltHelp)];
    public static string Resume => Words[nameof(Resume)];
    public static string ResumeHelp => Words[nameof(ResumeHelp)];
    public static string ReturnToCall => Words[nameof(ReturnToCall)];
    public static string ReturnToCallHelp => Words[nameof(ReturnToCallHelp)];
    public static string End => Words[nameof(End)];
    public static string EndHelp => Words[nameof(EndHelp)];
    public static string AllThrough => Words[nameof(AllThrough)];
    public static string Lanes => Words[nameof(Lanes)];
    public static string OpenLane => Words[nameof(OpenLane)];
    public static string CloseLane => Words[nameof(CloseLane)];
    public static string PickLane => Words[nameof(PickLane)];
    public static string Calls => Words[nameof(Calls)];
    public static string TapsHeld => Words[nameof(TapsHeld)];

    // review
    public static string Review => Words[nameof(Review)];
    public static string LookAt => Words[nameof(LookAt)];
    public static string NothingToLookAt => Words[nameof(NothingToLookAt)];
    public static string PlaceHeading => Words[nameof(PlaceHeading)];
    public static string Score => Words[nameof(Score)];
    public static string Splits => Words[nameof(Splits)];
    public static string NoReps => Words[nameof(NoReps)];
    public static string Rulings => Words[nameof(Rulings)];
    public static string ReadBack => Words[nameof(ReadBack)];
    public static string Agreed => Words[nameof(Agreed)];
    public static string Disputed => Words[nameof(Disputed)];
    public static string NotReadBack => Words[nameof(NotReadBack)];
    public static string Freeze => Words[nameof(Freeze)];
    public static string FreezeHelp => Words[nameof(FreezeHelp)];
    public static string FreezeOver => Words[nameof(FreezeOver)];
    public static string Moved => Words[nameof(Moved)];
    public static string LookAgain => Words[nameof(LookAgain)];
    public static string SeenIt => Words[nameof(SeenIt)];

    // signing
    public static string SignTitle => Words[nameof(SignTitle)];
    public static string Sign => Words[nameof(Sign)];
    public static string SignedOrganiser => Words[nameof(SignedOrganiser)];
    public static string SignedHeadJudge => Words[nameof(SignedHeadJudge)];
    public static string SignedYes => Words[nameof(SignedYes)];
    public static string SignedNot => Words[nameof(SignedNot)];
    public static string TwoSignatures => Words[nameof(TwoSignatures)];
    public static string YouSigned => Words[nameof(YouSigned)];
    public static string BothSigned => Words[nameof(BothSigned)];
    public static string Reopen => Words[nameof(Reopen)];
    public static string ReopenHelp => Words[nameof(ReopenHelp)];

    public static string GoIn(int seconds) => Words.Say(nameof(GoIn), seconds);

    public static string Seconds(int seconds) => $"{seconds} s";

    public static string WaitingFor(IEnumerable<LaneNumber> lanes) => Words.Say(nameof(WaitingFor), CommonWords.Lanes(lanes));

    public static string LastSeen(TimeSpan ago) => Words.Say(nameof(LastSeen), TimeWords.Age(ago));

    public static string Beside(string judge, Duty duty) => Words.Say($"{nameof(Beside)}.{(duty == Duty.Witness ? duty : Duty.Timekeeper)}", judge);

    public static string Waiting(int unsent) => Words.Count(nameof(Waiting), unsent);

    /// <param name="quality">As a phone says it: good, fair, poor or none.</param>
    /// <param name="uncertaintyMs">Its error bound; null when unknown.</param>
    public static string ClockOf(string quality, int? uncertaintyMs) => Words[$"{nameof(ClockOf)}.{quality}"] is var word && uncertaintyMs is { } ms ? $"{word} ±{ms} ms" : word;

    public static string Missing(LaneNumber lane, int unsent) => Words.Count(nameof(Missing), unsent, lane);

    public static string NextHeat(string title) => Words.Say(nameof(NextHeat), title);

    public static string WhatIsSigned(string title, int revision, int lanes, long head) => Words.Count(nameof(WhatIsSigned), lanes, title, revision, head);

    public static string SignAs(Role role) => Words.Say(nameof(SignAs), CommonWords.Role(role));

    public static string Revision(int revision) => Words.Say(nameof(Revision), revision);
}
