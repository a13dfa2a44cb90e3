using System.Runtime.CompilerServices;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Server.Access;

/// <summary>Why somebody is not let in or heard, and what is wrong with what they wrote: what is so, and what to do.</summary>
/// <remarks>The sentences are in the resources of this name, a file a language; a member's name is its key.</remarks>
internal static class AccessRefusals
{
    public static Telling NotSignedIn(Items<Telling> roles) => Tell([new Part.AnyOf(roles)]);

    public static Telling NotYours(Items<Telling> roles, Role role) => Tell([new Part.AnyOf(roles), Somebody(role)]);

    public static Telling Somebody(Role role) => Tell(key: $"{nameof(Somebody)}.{role}");

    public static Telling NobodyMayCall => Tell();

    public static Telling NobodyMayUse => Tell();

    public static Telling WrongPassphrase => Tell();

    public static Telling NoCode(int length) => Tell([length]);

    public static Telling CodeOver => Tell();

    public static Telling WrongCode => Tell();

    public static Telling SlowDown(int seconds) => Tell([seconds]);

    public static Telling CodeRole => Tell();

    public static Telling CodeNeedsLane => Tell();

    public static Telling CodeHasNoLane => Tell();

    public static Telling CodeMinutes(int most) => Tell([most]);

    public static Telling WrongOrigin => Tell();

    public static Telling NotJson => Tell();

    public static Telling TooLarge => Tell();

    public static Telling Unreadable(Telling why) => Tell([why]);

    public static Telling BrokeOff => Tell();

    public static Telling WrongAt(long line, long character) => Tell([line, character]);

    public static Telling WrongAtField(string field, long line, long character) => Tell([field, line, character]);

    public static Telling WrongBecause(Telling at, string wanted) => Tell([at, wanted]);

    public static Telling Missing(Telling what) => Tell([what]);

    public static Telling TooLong(int characters, Telling what, int most) => Tell([characters, what, most]) with { Counts = true };

    public static Telling HasControl(Telling what) => Tell([what]);

    public static Telling YourName => Tell();

    public static Telling BoardMessage => Tell();

    private static Telling Tell(Items<Part> parts = default, [CallerMemberName] string key = "") => new(typeof(AccessRefusals), key, parts);
}
