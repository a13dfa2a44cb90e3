using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Briefing;

/// <summary>The words of a briefing.</summary>
internal static class BriefingWords
{
    private static readonly Wording Words = new(typeof(BriefingWords));

    /// <summary>What is usually said before a heat; words of our own.</summary>
    public static IReadOnlyList<string> Cautions => [StopOnPain, MedicalStaff, HotDay, LocalRules, NoSafetyDevice];

    /// <summary>The tag where the workout says nothing of its own. Common practice, no source; the faults are those of the pad.</summary>
    public static SheetMovement UsualTag =>
        new(Movement.TagId, TagName, Unit.Reps, TagStandard, null, [new(NoTouch, NoTouchHow), new(LeftTooEarly, LeftTooEarlyHow)]);

    public static string NoHeat => Words[nameof(NoHeat)];

    public static string NoHeatNext => Words[nameof(NoHeatNext)];

    public static string ToDesk => Words[nameof(ToDesk)];

    public static string NobodyOnLanes => Words[nameof(NobodyOnLanes)];

    public static string NoStandard => Words[nameof(NoStandard)];

    public static string NoFaults => Words[nameof(NoFaults)];

    public static string BeforeRounds => Words[nameof(BeforeRounds)];

    public static string AfterRounds => Words[nameof(AfterRounds)];

    public static string ToBeDone => Words[nameof(ToBeDone)];

    public static string Then => Words[nameof(Then)];

    public static string RelayOrder => Words[nameof(RelayOrder)];

    public static string Lane => Words[nameof(Lane)];

    public static string Team => Words[nameof(Team)];

    public static string Division => Words[nameof(Division)];

    public static string Athletes => Words[nameof(Athletes)];

    public static string TakeCare => Words[nameof(TakeCare)];

    public static string ForBigScreen => Words[nameof(ForBigScreen)];

    public static string SlideOf => Words[nameof(SlideOf)];

    public static string PartOf => Words[nameof(PartOf)];

    /// <summary>Over a movement's faults.</summary>
    public static string FaultsOf(SheetMovement movement) => movement.Id == Movement.TagId ? TagFault : NoRep;

    /// <summary>What stands over the sets that are repeated; null where none are.</summary>
    public static string? Rounds(Workout workout, Prescription prescription) => workout.Scoring switch
    {
        _ when prescription.Clock is { } clock => clock.Repeat ? ByClockAgain(prescription.Rounds) : ByClock(prescription.Rounds),
        ScoringRule.MostWork => AgainAndAgain,
        ScoringRule.HeaviestLoad load => AttemptsAt(load.Attempts),
        _ => prescription.Rounds == 0 ? null : RoundsOf(prescription.Rounds),
    };

    /// <param name="set">What is to be done.</param>
    /// <param name="movement">Its movement.</param>
    /// <param name="scoring">What makes the result.</param>
    /// <param name="marks">What else it stands for, of <see cref="SetMarks"/>.</param>
    public static BriefedSet Set(PrescribedSet set, Movement movement, ScoringRule? scoring, IEnumerable<string> marks)
    {
        var name = LibraryTelling.Tell(movement.Name);
        var what = set.Reading && scoring is ScoringRule.MostReading ? name : StepWords.Amount(set.Quantity, movement.Unit, name);
        string?[] notes =
        [
            set.InRound is { } round ? RoundOnly(round) : null,
            set.Load,
            set.Worth is { } worth && worth != set.Quantity ? CountsAs(worth) : null,
            set.Increment > 1 ? StepsOf(set.Increment) : null,
            set.Reading || scoring is ScoringRule.HeaviestLoad ? movement.Unit is Unit.Kg or Unit.Lb ? EntersLoad : EntersReading : null,
            .. marks,
        ];
        return new BriefedSet(what, string.Join(" · ", notes.Where(note => !string.IsNullOrWhiteSpace(note))));
    }

    public static string Only(IEnumerable<string> divisions) => Words.Say(nameof(Only), string.Join(", ", divisions));

    public static string Cap(string time) => Words.Say(nameof(Cap), time);

    public static string Title(string heat) => Words.Say(nameof(Title), heat);

    public static string Tiebreak(int? round) => round is > 0 and var number ? TiebreakInRound(number) : Words[nameof(Tiebreak)];

    public static string TiebreakAttempt(int attempt) => Words.Say(nameof(TiebreakAttempt), attempt);

    public static string TiebreakAttemptOf(int athlete, int attempt) => Words.Say(nameof(TiebreakAttemptOf), athlete, attempt);

    public static string PartEnds(string part, int? round) => round is > 0 and var number ? PartEndsInRound(part, number) : Words.Say(nameof(PartEnds), part);

    private static string TiebreakInRound(int round) => Words.Say(nameof(TiebreakInRound), round);

    private static string PartEndsInRound(string part, int round) => Words.Say(nameof(PartEndsInRound), part, round);

    private static string StopOnPain => Words[nameof(StopOnPain)];

    private static string MedicalStaff => Words[nameof(MedicalStaff)];

    private static string HotDay => Words[nameof(HotDay)];

    private static string LocalRules => Words[nameof(LocalRules)];

    private static string NoSafetyDevice => Words[nameof(NoSafetyDevice)];

    private static string TagName => Words[nameof(TagName)];

    private static string TagStandard => Words[nameof(TagStandard)];

    private static string NoTouch => Words[nameof(NoTouch)];

    private static string NoTouchHow => Words[nameof(NoTouchHow)];

    private static string LeftTooEarly => Words[nameof(LeftTooEarly)];

    private static string LeftTooEarlyHow => Words[nameof(LeftTooEarlyHow)];

    private static string TagFault => Words[nameof(TagFault)];

    private static string NoRep => Words[nameof(NoRep)];

    private static string AgainAndAgain => Words[nameof(AgainAndAgain)];

    private static string EntersLoad => Words[nameof(EntersLoad)];

    private static string EntersReading => Words[nameof(EntersReading)];

    private static string AttemptsAt(int attempts) => Words.Count(nameof(AttemptsAt), attempts);

    private static string RoundsOf(int rounds) => Words.Count(nameof(RoundsOf), rounds);

    private static string ByClock(int rounds) => Words.Count(nameof(ByClock), rounds);

    private static string ByClockAgain(int rounds) => Words.Count(nameof(ByClockAgain), rounds);

    private static string RoundOnly(int round) => Words.Say(nameof(RoundOnly), round);

    private static string CountsAs(int worth) => Words.Say(nameof(CountsAs), worth);

    private static string StepsOf(int increment) => Words.Say(nameof(StepsOf), increment);
}
