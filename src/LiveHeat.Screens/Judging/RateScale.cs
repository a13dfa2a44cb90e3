using LiveHeat.Contracts.Judging;

namespace LiveHeat.Screens.Judging;

/// <summary>One scale for all bars of a page, so that they can be compared by eye.</summary>
public static class RateScale
{
    private const double Step = 0.1;

    /// <summary>The end of the scale: the widest interval, up to the next tenth; 1 for none.</summary>
    public static double Of(IEnumerable<JudgingRate> rates) =>
        rates.Select(rate => rate.To).DefaultIfEmpty(1).Max() is var most ? Math.Clamp(Math.Ceiling(Math.Round(most / Step, 6)) * Step, Step, 1) : 1;
}
