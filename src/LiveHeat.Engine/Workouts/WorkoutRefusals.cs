using System.Runtime.CompilerServices;

namespace LiveHeat.Engine.Workouts;

/// <summary>What cannot be in a workout, a movement, a line-up or a plan: what is wrong, and what to do.</summary>
/// <remarks>The sentences are in the resources of this name, a file a language; a member's name is its key.</remarks>
public static class WorkoutRefusals
{
    public static Telling PenaltyMinutes => Tell();

    public static Telling PenaltyReps(int most) => Tell([most]);

    public static Telling PenaltyCostsNothing => Tell();

    public static Telling PenaltyMissing => Tell();

    public static Telling MovementWithoutName => Tell();

    public static Telling ExpectedSeconds(string movement, int most) => Tell([movement, most]);

    public static Telling FastestSeconds(string movement) => Tell([movement]);

    public static Telling EqualWorkIsShared => Tell();

    public static Telling LoadHasNoParts(string who) => Tell([who]);

    public static Telling PartsCount(int parts, string who, int most) => Tell([parts, who, most]) with { Counts = true };

    public static Telling PartsDiffer(string who) => Tell([who]);

    public static Telling PartNeedsName(string who, int part) => Tell([who, part]);

    public static Telling PartNeedsEnd(string who, string part) => Tell([who, part]);

    public static Telling LastPartHasNoEnd(string who, string part) => Tell([who, part]);

    public static Telling PartEndsBefore(string who, string part, int set) => Tell([who, part, set]);

    public static Telling PartEndsAfter(string who, string part, int set) => Tell([who, part, set]);

    public static Telling PartEndsInRound(string who, string part, int set, int round) => Tell([who, part, set, round]);

    public static Telling PartEndsWithClockRound(string who, string part, int round, int rounds) => Tell([who, part, round, rounds]);

    public static Telling PartEndsTooEarly(string who, string part) => Tell([who, part]);

    public static Telling TogetherHowMany(string who, string movement, int together, int most) => Tell([who, movement, together, most]);

    public static Telling MinimumEachHowMany(string who, int least, int quantity, string movement) => Tell([who, least, quantity, movement]);

    public static Telling SharedOrTogether(string who, string movement) => Tell([who, movement]);

    public static Telling SharedIsCounted(string who) => Tell([who]);

    public static Telling TooFewTogether(string team, int athletes, int together) => Tell([team, athletes, together]);

    public static Telling TooManyForPool(string team, int athletes, int least, int quantity) => Tell([team, athletes, least, quantity]);

    public static Telling TiebreakRound(string who, int round, int rounds) => Tell([who, round, rounds]);

    public static Telling TiebreakNowhere(string who) => Tell([who]);

    public static Telling TiebreakSet(string who, int set, int sets) => Tell([who, set, sets]);

    public static Telling NoPrescriptions => Tell();

    public static Telling WorkoutWithoutName => Tell();

    public static Telling EmptyBlock => Tell();

    public static Telling ListNamesNobody => Tell();

    public static Telling NobodysNumber(int number) => Tell([number]);

    public static Telling NoCheckpoint => Tell();

    public static Telling NobodyFinishesRounds => Tell();

    public static Telling NobodyFinishesLoads => Tell();

    public static Telling TwoMovements(string id) => Tell([id]);

    public static Telling TwoPrescriptions(string division) => Tell([division]);

    public static Telling CapIsZero(string who) => Tell([who]);

    public static Telling CapTooLong(string who) => Tell([who]);

    public static Telling RoundsCannotBe(string who, int rounds, int most) => Tell([who, rounds, most]);

    public static Telling EmptyRounds(string who) => Tell([who]);

    public static Telling NothingToDo(string who) => Tell([who]);

    public static Telling TooManySets(string who, int sets, int most) => Tell([who, sets, most]);

    public static Telling NoSuchMovement(string who, string movement) => Tell([who, movement]);

    public static Telling QuantityCannotBe(string who, int quantity, string movement) => Tell([who, quantity, movement]);

    public static Telling WorthCannotBe(string who, string movement, int worth, int most) => Tell([who, movement, worth, most]);

    public static Telling IncrementCannotBe(string who, string movement, int increment) => Tell([who, movement, increment]);

    public static Telling NoAthletes(string team) => Tell([team]);

    public static Telling TooManyAthletes(string team, int athletes, int most) => Tell([team, athletes, most]);

    public static Telling AthleteWithoutName(string team, int athlete) => Tell([team, athlete]);

    public static Telling NoPrescriptionFor(string team, string workout, string division) => Tell([team, workout, division]);

    public static Telling ListNamesTooMany(int athletes, string team, int highest) => Tell([athletes, team, highest]) with { Counts = true };

    public static Telling LineUpCount(int names, int athletes) => Tell([names, athletes]);

    public static Telling LineUpDoesNotFit => Tell();

    public static Telling NoPrescriptionCalled(string prescription) => Tell([prescription]);

    public static Telling CannotBeJoined(int rest, int plan) => Tell([rest, plan]);

    public static Telling PlanHasNoStep(int step, int last) => Tell([step, last]);

    public static Telling MoreThanOneUnit => Tell();

    public static Telling NoReading(string who) => Tell([who]);

    public static Telling LoadIsNoReading(string who, string movement) => Tell([who, movement]);

    public static Telling AttemptsCannotBe(int attempts, int most) => Tell([attempts, most]);

    public static Telling AttemptsInTurn => Tell();

    public static Telling KilogramsAndPounds => Tell();

    public static Telling AttemptsNotRounds(string who) => Tell([who]);

    public static Telling LoadHasNoOtherWork(string who) => Tell([who]);

    public static Telling OneLift(string who) => Tell([who]);

    public static Telling LiftUnit(string who, string movement) => Tell([who, movement]);

    public static Telling ClockNeedsWork(string who) => Tell([who]);

    public static Telling ClockLengths(string who) => Tell([who]);

    public static Telling ClockRounds(string who, int rounds) => Tell([who, rounds]);

    public static Telling ClockHasOnlyRounds(string who) => Tell([who]);

    public static Telling ClockRoundIsEmpty(string who) => Tell([who]);

    public static Telling NoSuchClockRound(string who, int round, int rounds) => Tell([who, round, rounds]);

    public static Telling ClockRoundWithoutWork(string who, int round) => Tell([who, round]);

    public static Telling RoundWithoutClock(string who, string movement, int round) => Tell([who, movement, round]);

    public static Telling ClockCap(int rounds, string who, Part length) => Tell([rounds, who, length]) with { Counts = true };

    public static Telling EndlessHasNoNumber(string who) => Tell([who]);

    public static Telling EndlessHasNoAfter(string who) => Tell([who]);

    public static Telling EndlessRoundIsEmpty(string who) => Tell([who]);

    public static Telling EndlessTooMany(string who, int most) => Tell([who, most]);

    private static Telling Tell(Items<Part> parts = default, [CallerMemberName] string key = "") => new(typeof(WorkoutRefusals), key, parts);
}
