using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Language;

namespace LiveHeat.Screens.Words;

/// <summary>A witness and a judge who have two times for one step.</summary>
public static class DisagreementWords
{
    private static readonly Wording Words = new(typeof(DisagreementWords));

    public static string Heading => Words[nameof(Heading)];
    public static string Help => Words[nameof(Help)];
    public static string Judge => Words[nameof(Judge)];
    public static string Witness => Words[nameof(Witness)];
    public static string Counts => Words[nameof(Counts)];
    public static string Stands => Words[nameof(Stands)];
    public static string StandsHelp => Words[nameof(StandsHelp)];
    public static string Takes => Words[nameof(Takes)];
    public static string TakesHelp => Words[nameof(TakesHelp)];
    public static string NoName => Words[nameof(NoName)];

    public static string Apart(TwoTimes both)
    {
        var apart = Math.Abs(both.Judge.Ms - both.Witness.Ms);
        var unsure = both.Judge.UncertaintyMs + both.Witness.UncertaintyMs + both.HandsMs;
        return Words.Say(nameof(Apart), SecondsText.Of(apart), SecondsText.Of(unsure));
    }
}
