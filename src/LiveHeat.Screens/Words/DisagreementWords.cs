using LiveHeat.Contracts.Frames;

namespace LiveHeat.Screens.Words;

/// <summary>A witness and a judge who have two times for one step.</summary>
public static class DisagreementWords
{
    public const string Heading = "Two times for one step";
    public const string Help = "A witness's phone and the lane judge's are further apart than their clocks and two hands can be wrong. The judge's time counts until you say otherwise.";
    public const string Judge = "Lane judge";
    public const string Witness = "Witness";
    public const string Counts = "counts";
    public const string Stands = "The judge's time stands";
    public const string StandsHelp = "The witness's tap will not count. It stays on the record, marked as void.";
    public const string Takes = "The witness's time counts";
    public const string TakesHelp = "The witness's tap counts as the lane's, and the judge's is void. Both stay on the record.";
    public const string NoName = "a phone without a seat";

    public static string Apart(TwoTimes both)
    {
        var apart = Math.Abs(both.Judge.Ms - both.Witness.Ms);
        var unsure = both.Judge.UncertaintyMs + both.Witness.UncertaintyMs + both.HandsMs;
        return $"{SecondsText.Of(apart)} apart, where clocks and hands may differ by {SecondsText.Of(unsure)}";
    }
}
