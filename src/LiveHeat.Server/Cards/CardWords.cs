using System.Globalization;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Cards;

/// <summary>The words of the paper scorecards.</summary>
internal static class CardWords
{
    public const string Title = "Scorecards";
    public const string NoHeat = "No such heat";
    public const string NoHeatNext = "No heat of this name was set up here. Look at the address again, or set the heat up at the desk, under Setup.";
    public const string NobodyOnLanes = "No team stands on a lane of this heat yet, so there is no card to print. Put teams on lanes at the desk, under Setup.";
    public const string CannotBeLaidOut = "This lane's work cannot be laid out: its setup has a mistake. Open the workout and the team at the desk, under Setup.";
    public const string Print = "Print this page from the browser. Every lane begins on a new sheet.";
    public const string Lane = "Lane";
    public const string Cap = "time cap";
    public const string Judge = "Judge";
    public const string Time = "time";
    public const string NoRep = "no-rep";
    public const string More = "More rounds";
    public const string Finish = "Finish time";
    public const string AtCap = "Reps of the open set at the cap";
    public const string DoneAtCap = "Last set done";
    public const string Captain = "Captain";
    public const string Agreed = "agreed";
    public const string Disputed = "disputed";
    public const string Signature = "signature";
    public const string Before = "Before the rounds";
    public const string After = "After the rounds";
    public const string Work = "Work";
    public const string Mark = "One stroke through a box for every rep that counts; one stroke on the no-rep line for every one that does not.";
    public const string Caution = "Stop at once when you feel pain or are dizzy. Medical staff may stop anyone at any time. Local rules and licensed practice come first. This software is no safety device.";

    public static string Round(int number) => string.Create(CultureInfo.InvariantCulture, $"Round {number}");

    public static string Page(int number, int of) => string.Create(CultureInfo.InvariantCulture, $"sheet {number} of {of}");

    public static string BoxIs(int units, Unit unit) => string.Create(CultureInfo.InvariantCulture, $"a box is {units} {Of(unit)}");

    public static string Of(Unit unit) => unit switch { Unit.Reps => "reps", Unit.Cal => "cal", Unit.M => "m", Unit.Lb => "lb", _ => "kg" };
}
