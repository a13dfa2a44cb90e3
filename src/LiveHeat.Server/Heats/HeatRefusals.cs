using System.Runtime.CompilerServices;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Server.Heats;

/// <summary>Why something about a heat is not read or not written, beside what the rules say: what is so, and what to do.</summary>
/// <remarks>The sentences are in the resources of this name, a file a language; a member's name is its key.</remarks>
internal static class HeatRefusals
{
    public static Telling NoSuchHeat(string heat) => Tell([heat]);

    public static Telling NoHeatYet => Tell();

    public static Telling JudgesOtherLane(int lane) => Tell([lane]);

    public static Telling NotCalledYet => Tell();

    public static Telling Broken(long entry) => Tell([entry]);

    public static Telling IdTaken => Tell();

    public static Telling TapIdTaken => Tell();

    public static Telling TapTooLarge => Tell();

    public static Telling TapFieldWrong(string field) => Tell([field]);

    public static Telling TapUnreadable => Tell();

    public static Telling Unreadable(Telling why) => Tell([why]);

    public static Telling NoObject => Tell();

    public static Telling BreaksOff(long line, long at) => Tell([line, at]);

    public static Telling NoTaps => Tell();

    public static Telling CommandFieldWrong(string field) => Tell([field]);

    public static Telling NoCommand => Tell();

    public static Telling NumberTooLarge => Tell();

    public static Telling TooManyTaps(int taps, int most) => Tell([taps, most]) with { Counts = true };

    public static Telling BodyTooLarge => Tell();

    public static Telling LedgerUnavailable(string cause) => Tell([cause]);

    public static Telling DiskRefuses(Part since, string cause) => Tell([since, cause]);

    public static Telling SetupUnavailable(string cause) => Tell([cause]);

    private static Telling Tell(Items<Part> parts = default, [CallerMemberName] string key = "") => new(typeof(HeatRefusals), key, parts);
}
