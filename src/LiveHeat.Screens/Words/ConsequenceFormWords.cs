using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Setup;

namespace LiveHeat.Screens.Words;

/// <summary>The form of a workout's penalty and consequences.</summary>
public static class ConsequenceFormWords
{
    private static readonly Wording Words = new(typeof(ConsequenceFormWords));

    public static string Heading => Words[nameof(Heading)];
    public static string Time => Words[nameof(Time)];
    public static string TimeHelp => Words[nameof(TimeHelp)];
    public static string Reps => Words[nameof(Reps)];
    public static string RepsHelp => Words[nameof(RepsHelp)];
    public static string WarnFirst => Words[nameof(WarnFirst)];
    public static string WrongAthlete => Words[nameof(WrongAthlete)];
    public static string LineUpChange => Words[nameof(LineUpChange)];
    public static string Variant => Words[nameof(Variant)];
    public static string Help => Words[nameof(Help)];

    public static string Of(Consequence consequence) => Words[$"{nameof(Of)}.{consequence}"];

    public static string Of(VariantChoice choice) => choice switch
    {
        VariantChoice.Apart => VariantApart,
        VariantChoice.Allowed => VariantAllowed,
        VariantChoice.Penalty => Of(Consequence.Penalty),
        VariantChoice.RanksBelow => Of(Consequence.RanksBelow),
        _ => Of(Consequence.Void),
    };

    private static string VariantApart => Words[nameof(VariantApart)];

    private static string VariantAllowed => Words[nameof(VariantAllowed)];
}
