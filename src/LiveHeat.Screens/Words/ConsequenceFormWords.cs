using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Setup;

namespace LiveHeat.Screens.Words;

/// <summary>The form of a workout's penalty and consequences.</summary>
public static class ConsequenceFormWords
{
    public const string Heading = "Penalties and consequences";
    public const string Time = "An offence costs (m:ss)";
    public const string TimeHelp = "Onto the time, such as 0:30. Empty: no time.";
    public const string Reps = "An offence costs reps";
    public const string RepsHelp = "Off the work done. Empty: no reps.";
    public const string WarnFirst = "Warn first: the head judge is told when no warning stands";
    public const string WrongAthlete = "The wrong athlete works";
    public const string LineUpChange = "The line-up changes after GO";
    public const string Variant = "An easier version is taken";
    public const string Help = "Applied by itself as soon as the fact stands, and told on the result with its reason. A wrong athlete counts once for each leg.";

    public static string Of(Consequence consequence) => consequence switch
    {
        Consequence.Allowed => "allowed",
        Consequence.Penalty => "costs the penalty",
        Consequence.RanksBelow => "ranks below all others",
        _ => "the result is void",
    };

    public static string Of(VariantChoice choice) => choice switch
    {
        VariantChoice.Apart => "no place in the division",
        VariantChoice.Allowed => "allowed, ranks with the division",
        VariantChoice.Penalty => Of(Consequence.Penalty),
        VariantChoice.RanksBelow => Of(Consequence.RanksBelow),
        _ => Of(Consequence.Void),
    };
}
