using System.Runtime.CompilerServices;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Server.Setup;

/// <summary>What cannot be in the setup, beside what cannot be in a workout: what is wrong, and what to do.</summary>
/// <remarks>The sentences are in the resources of this name, a file a language; a member's name is its key.</remarks>
internal static class SetupRefusals
{
    public static Telling NoId(string? id) => Tell([new Part.Quoted(id)]);

    public static Telling OtherDocument(string inAddress, string? inBody) => Tell([new Part.Quoted(inAddress), new Part.Quoted(inBody)]);

    public static Telling TextMissing(Telling what) => Tell([what]);

    public static Telling TextHasControl(Telling what) => Tell([what]);

    public static Telling TooManyLines(int lines, Telling what, int most) => Tell([lines, what, most]) with { Counts = true };

    public static Telling CompetitionName => Tell();

    public static Telling DivisionName => Tell();

    public static Telling WorkoutName => Tell();

    public static Telling MovementName => Tell();

    public static Telling TeamName => Tell();

    public static Telling AthleteName(int athlete) => Tell([athlete]);

    public static Telling HeatTitle => Tell();

    public static Telling Source => Tell();

    public static Telling StandardOf(string? movement) => Tell([new Part.Quoted(movement)]);

    public static Telling Start => Tell();

    public static Telling Finish => Tell();

    public static Telling MustHold => Tell();

    public static Telling Allowed => Tell();

    public static Telling Faults => Tell();

    public static Telling Fault => Tell();

    public static Telling FaultMeans(string? fault) => Tell([new Part.Quoted(fault)]);

    public static Telling Caution => Tell();

    public static Telling Variant => Tell();

    public static Telling VariantIs(string? variant) => Tell([new Part.Quoted(variant)]);

    public static Telling Load => Tell();

    public static Telling SayTeam => Tell();

    public static Telling SayAthlete(int athlete) => Tell([athlete]);

    public static Telling Home => Tell();

    public static Telling Fact(int fact) => Tell([fact]);

    public static Telling AppealMinutes(int most) => Tell([most]);

    public static Telling BoardWidth(decimal least, decimal most) => Tell([least, most]);

    public static Telling FarthestSeat(decimal least, decimal most) => Tell([least, most]);

    public static Telling HeatNumber(int number, int most) => Tell([number, most]);

    public static Telling NoSuchWorkout(string? id) => Tell([new Part.Quoted(id)]);

    public static Telling NoSuchTeam(LaneNumber lane, string? id) => Tell([lane, new Part.Quoted(id)]);

    public static Telling NoSuchDivision(string? id) => Tell([new Part.Quoted(id)]);

    public static Telling WhichLane => Tell();

    public static Telling LaneTwice(LaneNumber lane) => Tell([lane]);

    public static Telling TeamTwice(string team, LaneNumber one, LaneNumber other) => Tell([team, one, other]);

    public static Telling OnLane(LaneNumber lane, Telling why) => Tell([lane, why]);

    public static Telling InHeat(string heat, LaneNumber lane, Telling why) => Tell([heat, lane, why]);

    public static Telling MoreSaysThanAthletes => Tell();

    public static Telling TooManyFacts(int facts, int most) => Tell([facts, most]) with { Counts = true };

    public static Telling NoOwnMovement(string? id) => Tell([new Part.Quoted(id)]);

    public static Telling FaultTooLong(string fault, int most) => Tell([new Part.Quoted(fault), most]);

    public static Telling NoPictureHere => Tell();

    public static Telling TooManyVariants(int variants, int most) => Tell([variants, most]) with { Counts = true };

    public static Telling TwoFaults(string? fault) => Tell([new Part.Quoted(fault)]);

    public static Telling NoPictureAddress => Tell();

    public static Telling MovementDeleted => Tell();

    public static Telling NotAPicture => Tell();

    public static Telling NoSuchPicture(string movement) => Tell([new Part.Quoted(movement)]);

    public static Telling WhoDoesWhat => Tell();

    public static Telling WhichMovement => Tell();

    public static Telling ExclusionFrom(int most, int from) => Tell([most, from]);

    public static Telling ExclusionsRise(int from, int before) => Tell([from, before]);

    public static Telling ExclusionsAreForLow => Tell();

    public static Telling TableEmpty => Tell();

    public static Telling TableTooLong(int places, int most) => Tell([places, most]);

    public static Telling PlaceGives(int place, decimal points, decimal most) => Tell([place, points, most]);

    public static Telling PlaceGivesMore(int place, decimal points) => Tell([place, points]);

    public static Telling CutAfterNothing(string? id) => Tell([new Part.Quoted(id)]);

    public static Telling CutTwice(string? id) => Tell([new Part.Quoted(id)]);

    public static Telling SomebodyGoesOn => Tell();

    public static Telling Used(Telling what, Items<string> by) => Tell([what, new Part.Names(by)]);

    public static Telling UsedByMore(int more, Telling what, Items<string> by) => Tell([more, what, new Part.Names(by)]) with { Counts = true };

    public static Telling ThisDivision => Tell();

    public static Telling ThisWorkout => Tell();

    public static Telling ThisTeam => Tell();

    public static Telling HeatWasCalled => Tell();

    private static Telling Tell(Items<Part> parts = default, [CallerMemberName] string key = "") => new(typeof(SetupRefusals), key, parts);
}
