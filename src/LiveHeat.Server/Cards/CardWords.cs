using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Cards;

/// <summary>The words of the paper scorecards.</summary>
internal static class CardWords
{
    private static readonly Wording Words = new(typeof(CardWords));

    public static string NoHeat => Words[nameof(NoHeat)];

    public static string NoHeatNext => Words[nameof(NoHeatNext)];

    public static string ToDesk => Words[nameof(ToDesk)];

    public static string NobodyOnLanes => Words[nameof(NobodyOnLanes)];

    public static string CannotBeLaidOut => Words[nameof(CannotBeLaidOut)];

    public static string Print => Words[nameof(Print)];

    public static string Lane => Words[nameof(Lane)];

    public static string Judge => Words[nameof(Judge)];

    public static string JudgeSignature => Words[nameof(JudgeSignature)];

    public static string Time => Words[nameof(Time)];

    public static string NoRep => Words[nameof(NoRep)];

    public static string More => Words[nameof(More)];

    public static string Finish => Words[nameof(Finish)];

    public static string AtCap => Words[nameof(AtCap)];

    public static string DoneAtCap => Words[nameof(DoneAtCap)];

    public static string Captain => Words[nameof(Captain)];

    public static string Agreed => Words[nameof(Agreed)];

    public static string Disputed => Words[nameof(Disputed)];

    public static string Signature => Words[nameof(Signature)];

    public static string Before => Words[nameof(Before)];

    public static string After => Words[nameof(After)];

    public static string Work => Words[nameof(Work)];

    public static string Mark => Words[nameof(Mark)];

    public static string Caution => Words[nameof(Caution)];

    public static string Title(string heat) => Words.Say(nameof(Title), heat);

    public static string Cap(string time) => Words.Say(nameof(Cap), time);

    public static string Round(int number) => Words.Say(nameof(Round), number);

    public static string Page(int number, int of) => Words.Say(nameof(Page), number, of);

    public static string BoxIs(int units, Unit unit) => Words.Say(nameof(BoxIs), $"{units} {Of(unit)}");

    /// <summary>What a box or a field counts. The signs of units are the same in all languages.</summary>
    public static string Of(Unit unit) => unit switch { Unit.Reps => Reps, Unit.Cal => "cal", Unit.M => "m", Unit.Lb => "lb", _ => "kg" };

    private static string Reps => Words[nameof(Reps)];
}
