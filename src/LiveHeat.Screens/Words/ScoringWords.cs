using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Setup;

namespace LiveHeat.Screens.Words;

/// <summary>The part of a workout's form that says what makes a result.</summary>
public static class ScoringWords
{
    public const string Label = "How it is scored";
    public const string Attempts = "Attempts each";
    public const string LoadSum = "The team's score";
    public const string Tiebreak = "Tiebreak";
    public const string NoTiebreak = "none";
    public const string GoneSet = "a set that is no longer there";
    public const string TiebreakRound = "In round";

    public static string Of(ScoringKind kind) => kind switch
    {
        ScoringKind.ForTime => "for time; unfinished teams rank after finishers",
        ScoringKind.CapPlus => "for time; unfinished teams have the cap and 1 s for each missing rep",
        ScoringKind.MostWork => "as many rounds and reps as possible",
        ScoringKind.HeaviestLoad => "heaviest load, by attempts",
        _ => "most on the machines, by readings",
    };

    public static string Help(ScoringKind kind) => kind switch
    {
        ScoringKind.ForTime => "The fastest team wins. Teams that the cap stops rank by reps, then by who got there first.",
        ScoringKind.CapPlus => "The fastest team wins. Cap 12:00 with 7 reps missing makes 12:07.",
        ScoringKind.MostWork => "The round is repeated until the time cap. The most work wins, then who got there first.",
        ScoringKind.HeaviestLoad => "Name one movement in the round, counted in kilograms or pounds. The judge enters each load and says good lift or no lift. Equal loads share the place, unless a tiebreak parts them.",
        _ => "Mark the sets where a value is entered. Fractions are cut, and the readings of all athletes added up. Other sets are worth only what you write. Equal scores share the place, unless a tiebreak parts them.",
    };

    public static string Of(LoadSum sum) => sum == Engine.Workouts.LoadSum.SumOfBest ? "each athlete's best, added up" : "the best of any athlete";

    public static string EndBefore(string set) => $"time at the end of {set}, before the rounds";

    public static string EndRound(string set) => $"time at the end of {set}, in a round";

    public static string EndAfter(string set) => $"time at the end of {set}, after the rounds";

    public static string EndAttempt(int attempt) => $"time of attempt {attempt}, in a round";
}
