using System.Runtime.CompilerServices;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Rules;

/// <summary>Why a command or a tap is refused: what is so, and what to do.</summary>
/// <remarks>The sentences are in the resources of this name, a file a language; a member's name is its key.</remarks>
public static class Refusals
{
    public static Telling NotCalledYet => Tell();

    public static Telling NoSuchLane(LaneNumber lane) => Tell([lane]);

    public static Telling CannotAskHeadJudge(Role role) => Tell([Somebody(role)]);

    public static Telling CannotAskOrganiser(Role role) => Tell([Somebody(role)]);

    public static Telling Somebody(Role role) => Tell(key: $"{nameof(Somebody)}.{role}");

    public static Telling OnlyHeadJudgeDecides => Tell();

    public static Telling JudgesOtherLane(int own, LaneNumber lane) => Tell([own, lane]);

    public static Telling Certified => Tell();

    public static Telling CertifiedNewRevision => Tell();

    public static Telling CalledAlready => Tell();

    public static Telling ReplacedBeforeGo => Tell();

    public static Telling SeatsClosed => Tell();

    public static Telling TimekeepersFull(LaneNumber lane, int most) => Tell([lane, most]);

    public static Telling ReadyBeforeGo => Tell();

    public static Telling NotInSetup => Tell();

    public static Telling NoTeams => Tell();

    public static Telling TwoTeams(LaneNumber lane) => Tell([lane]);

    public static Telling UnknownSeat => Tell();

    public static Telling SeatGone => Tell();

    public static Telling SeatOfAnother => Tell();

    public static Telling SeatOnOtherLane(LaneNumber seat, LaneNumber lane) => Tell([seat, lane]);

    public static Telling NoStartToRecall => Tell();

    public static Telling OnlyRunningIsHalted => Tell();

    public static Telling NotHalted => Tell();

    public static Telling OnlyRunningIsEnded => Tell();

    public static Telling GoSetAlready => Tell();

    public static Telling LanesNotReady(Items<LaneNumber> lanes) => Tell([lanes.Count, lanes]) with { Counts = true };

    public static Telling CannotStartNow => Tell();

    public static Telling CountDownLength(int least, int most) => Tell([least, most]);

    public static Telling HornOfNow => Tell();

    public static Telling HornOfThen => Tell();

    public static Telling StartNotInForce => Tell();

    public static Telling ClosedForStart => Tell();

    public static Telling WhyStartIsPutRight => Tell();

    public static Telling StartInForce => Tell();

    public static Telling OnlyClosedIsReopened => Tell();

    public static Telling WhyReopened => Tell();

    public static Telling StillRuns => Tell();

    public static Telling OnlyEndedIsFrozen => Tell();

    public static Telling NotAllArrived(Items<Telling> missing) => Tell([new Part.List(missing)]);

    public static Telling TapsOnPhone(int taps, LaneNumber lane, Part seen) => Tell([taps, lane, seen]) with { Counts = true };

    public static Telling TiebreakMissing(Items<LaneNumber> lanes) => Tell([lanes.Count, lanes]) with { Counts = true };

    public static Telling CertifiedAlready => Tell();

    public static Telling FreezeFirst => Tell();

    public static Telling CapTooClose(LaneNumber lane) => Tell([lane]);

    public static Telling RoundTooClose(LaneNumber lane, int round) => Tell([lane, round]);

    public static Telling FinishTooClose(LaneNumber one, LaneNumber other) => Tell([one, other]);

    public static Telling NoAppealOpen => Tell();

    public static Telling AppealOpen(Items<LaneNumber> lanes) => Tell([lanes.Count, lanes]) with { Counts = true };

    public static Telling OrganiserSigned => Tell();

    public static Telling HeadJudgeSigned => Tell();

    public static Telling OtherSignIn => Tell();

    public static Telling HeadMoved(long unseen, long head) => Tell([unseen, head]) with { Counts = true };

    public static Telling TimesStand => Tell();

    public static Telling NothingAtCap(LaneNumber lane) => Tell([lane]);

    public static Telling NothingAtRound(LaneNumber lane, int round) => Tell([lane, round]);

    public static Telling CapDecided(LaneNumber lane) => Tell([lane]);

    public static Telling RerunNamesLanes => Tell();

    public static Telling RerunIsAnotherHeat => Tell();

    public static Telling WhyRerun => Tell();

    public static Telling OwedFromTo(int most) => Tell([most]);

    public static Telling LaneHeldAlready(LaneNumber lane) => Tell([lane]);

    public static Telling HeldWhileRunning => Tell();

    public static Telling LaneNotHeld(LaneNumber lane) => Tell([lane]);

    public static Telling AdjustUpToAnHour => Tell();

    public static Telling PenaltyAboveZero => Tell();

    public static Telling PenaltyAtMost(int most) => Tell([most]);

    public static Telling NoParts => Tell();

    public static Telling NoSuchPart(int parts) => Tell([parts]);

    public static Telling NoSuchFact => Tell();

    public static Telling NotVoided => Tell();

    public static Telling VoidDecisionFirst => Tell();

    public static Telling OnlyTapsAreAdmitted => Tell();

    public static Telling WriteReason => Tell();

    public static Telling UndoIsNotAdded => Tell();

    public static Telling OnLedgerAlready => Tell();

    public static Telling NoStartInForce => Tell();

    public static Telling NeverBelowNothing => Tell();

    public static Telling NoSuchStep(LaneNumber lane, int last, int step) => Tell([lane, last, step]);

    public static Telling Unliftable(decimal most) => Tell([most]);

    public static Telling NeverJudgedLane(LaneNumber lane) => Tell([lane]);

    public static Telling WhyDisqualified => Tell();

    public static Telling DisqualifiedAlready(LaneNumber lane) => Tell([lane]);

    public static Telling NothingToAppeal => Tell();

    public static Telling AppealNeedsName(int most) => Tell([most]);

    public static Telling AppealNeedsGrounds(int most) => Tell([most]);

    public static Telling AppealsOver(int minutes, Part until) => Tell([minutes, until]) with { Counts = true };

    public static Telling LateAppealNeedsReason(int minutes, Part until) => Tell([minutes, until]) with { Counts = true };

    public static Telling NoSuchAppeal => Tell();

    public static Telling AppealDecided => Tell();

    public static Telling WhyDecidedSo => Tell();

    public static Telling AppealGivesSeconds => Tell();

    public static Telling AppealGivesReps(int most) => Tell([most]);

    public static Telling AppealGivesRerun => Tell();

    public static Telling AppealGivesNothing => Tell();

    private static Telling Tell(Items<Part> parts = default, [CallerMemberName] string key = "") => new(typeof(Refusals), key, parts);
}
