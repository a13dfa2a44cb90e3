using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>One heat at the desk.</summary>
public static class HeatDeskWords
{
    public const string NoSuchHeat = "There is no such heat on the program.";
    public const string BackToProgram = "Back to the program";
    public const string ResultPage = "Result page";
    public const string BoardPage = "Board";
    public const string BriefingSheet = "Briefing to print";
    public const string BriefingSlides = "Briefing for the big screen";

    // before the call
    public const string Call = "Call this heat";
    public const string CallHelp = "Teams go to their lanes, judges confirm lane and team on their phones. What was set up is taken as it stands now; until GO you can take it anew.";
    public const string NobodyOnLanes = "No team stands on any lane of this heat. Put teams on lanes first, under Setup.";
    public const string ReplaceCall = "Take the setup anew";
    public const string ReplaceCallHelp = "The heat is called again with the setup as it is now. All judges confirm lane and team again.";

    // readiness
    public const string LanesAndPhones = "Lanes and phones";
    public const string Lane = "Lane";
    public const string Team = "Team";
    public const string Judge = "Judge";
    public const string Phone = "Phone";
    public const string Clock = "Clock";
    public const string Unsent = "Taps waiting";
    public const string Storage = "Storage";
    public const string Screen = "Screen";
    public const string ReadyHeading = "Ready";
    public const string Ready = "ready";
    public const string NotReady = "not yet";
    public const string Withdrawn = "withdrawn";
    public const string NoJudge = "nobody yet";
    public const string NoPhone = "no phone";
    public const string Online = "online";
    public const string StorageSafe = "safe";
    public const string StorageAtRisk = "may be cleared";
    public const string Awake = "stays on";
    public const string NotAwake = "may go dark";
    public const string OverrideOne = "Count as ready";
    public const string OverrideAll = "Count all the others as ready";
    public const string OverrideHelp = "Your name stands beside it. A lane without a judge's phone records nothing by itself: somebody writes it down.";
    public const string Withdraw = "Withdraw";
    public const string WithdrawHelp = "The team does not start. Its lane stays empty, and the heat does not wait for it.";
    public const string ShowCodes = "Judges join with the codes of their lanes:";

    // GO
    public const string Start = "Start";
    public const string CountDownOf = "Count-down";
    public const string GoHelp = "Every screen and phone counts down by its own clock, set by this server.";
    public const string HornWent = "The horn went without us";
    public const string HornHelp = "Use this when the floor was started by a horn or a voice and not from here.";
    public const string HornNow = "The horn goes now";
    public const string HornAgo = "The horn has gone";
    public const string SecondsAgo = "Seconds ago";
    public const string Uncertain = "Give or take (seconds)";
    public const string PutStartRight = "Put the start right";
    public const string PutStartRightHelp = "It moves everybody's time.";
    public const string SecondsLater = "The horn went so many seconds later (minus: earlier)";
    public const string NeedsNumber = "Write a number of seconds, such as 2 or 1.5.";
    public const string StartsIn = "starts in";
    public const string Recall = "Recall the start";
    public const string RecallHelp = "This start does not count. What was tapped on it is held. All lanes are ready for a new GO.";

    // while it runs
    public const string Halt = "Halt the heat";
    public const string HaltHelp = "The clock stands for all lanes. Say it aloud too: phones show it, athletes do not look at phones.";
    public const string Resume = "Resume";
    public const string ResumeHelp = "The clock goes on from where it stood.";
    public const string ReturnToCall = "Restart later";
    public const string ReturnToCallHelp = "The heat goes back to called and has a new start to come. What was tapped on this start no longer counts.";
    public const string End = "End the heat";
    public const string EndHelp = "Lanes still working get the work they have confirmed. Phones stop asking. Taps on their way still come in.";
    public const string AllThrough = "All lanes are through.";
    public const string Lanes = "Lanes";
    public const string OpenLane = "Rule";
    public const string CloseLane = "Close";
    public const string PickLane = "Choose a lane to rule on it.";
    public const string Calls = "CALLS THE HEAD JUDGE";
    public const string TapsHeld = "taps held";

    // review
    public const string Review = "Review";
    public const string LookAt = "To look at before freezing";
    public const string NothingToLookAt = "Nothing is flagged. All lanes read back, nothing waits.";
    public const string PlaceHeading = "Place";
    public const string Score = "Time or reps";
    public const string Splits = "Work done";
    public const string NoReps = "No-reps";
    public const string Rulings = "Rulings";
    public const string ReadBack = "Read back";
    public const string Agreed = "agreed";
    public const string Disputed = "DISPUTED";
    public const string NotReadBack = "not yet";
    public const string Freeze = "Freeze for signing";
    public const string FreezeHelp = "No tap after this counts by itself. What comes later is shown as late. Then organiser and head judge sign.";
    public const string FreezeOver = "Freeze although something is missing, because";
    public const string Moved = "Something came in since you looked:";
    public const string LookAgain = "Look at it, then freeze or sign again.";
    public const string SeenIt = "I have seen it";

    // signing
    public const string SignTitle = "Sign the result";
    public const string Sign = "Sign";
    public const string SignedOrganiser = "Organiser";
    public const string SignedHeadJudge = "Head judge";
    public const string SignedYes = "signed";
    public const string SignedNot = "not signed";
    public const string TwoSignatures = "Two people sign, each in a sign-in of their own. The head judge signs on the head judge's screen, joined with a code of their own.";
    public const string YouSigned = "You have signed. The other signature is missing.";
    public const string BothSigned = "Both have signed. The result is official.";
    public const string Reopen = "Reopen";
    public const string ReopenHelp = "The result is open for changes again, as a new revision. The old one stays on record. Both sign anew.";

    public static string GoIn(int seconds) => $"GO in {seconds} s";

    public static string Seconds(int seconds) => $"{seconds} s";

    public static string WaitingFor(IEnumerable<LaneNumber> lanes) => $"Waiting for {CommonWords.Lanes(lanes)}.";

    public static string LastSeen(TimeSpan ago) => $"silent for {TimeWords.Age(ago)}";

    public static string Beside(string judge, Duty duty) => $"{judge}, {(duty == Duty.Witness ? "witness" : "timekeeper")}";

    public static string Waiting(int unsent) => $"{CommonWords.Count(unsent, "tap", "taps")} waiting";

    public static string ClockOf(string quality, int? uncertaintyMs) => uncertaintyMs is { } ms ? $"{quality} ±{ms} ms" : quality;

    public static string Missing(LaneNumber lane, int unsent) => $"{CommonWords.Count(unsent, "tap", "taps")} of lane {lane} still on a phone";

    public static string NextHeat(string title) => $"{title} can be called now. It need not wait for this review.";

    public static string WhatIsSigned(string title, int revision, int lanes, long head) =>
        $"{title}, revision {revision}: {CommonWords.Count(lanes, "team", "teams")}, as recorded up to number {head}.";

    public static string SignAs(Role role) => $"Sign as {CommonWords.Role(role)}";

    public static string Revision(int revision) => $"revision {revision}";
}
