using LiveHeat.Engine.Forecasts;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Testing.Paced;

/// <summary>What became of a lane.</summary>
/// <param name="Lane">The lane.</param>
/// <param name="FinishMs">Lane time of its finish; null when the cap came first and nobody knows what it would have been.</param>
/// <param name="CapMs">Its cap in lane time.</param>
/// <param name="Won">It was first of its prescription.</param>
public sealed record LaneTruth(LaneNumber Lane, long? FinishMs, long CapMs, bool Won)
{
    public bool BeatCap => FinishMs <= CapMs;

    /// <summary>
    /// Whether an 80 % interval held: 1 or 0. Who was stopped by the cap would have come after it, nobody knows when: then it is the chance that the forecast itself
    /// gives the interval once it is known that the cap came first, (0.9 - F) / (1 - F) with F its chance of a finish by then, 0.1 at least in the numerator. So a forecast that is right holds in
    /// 80 % of all cases, whether the cap stops many or none.
    /// </summary>
    /// <remarks>As censored cases are shared out in D-calibration: Haider, Hoehn, Davis and Greiner, "Effective Ways to Build and Evaluate Individual Survival Distributions", Journal of Machine Learning Research 21 (2020), 85; the formula from memory.</remarks>
    public double Held(LaneForecast forecast) => FinishMs is { } finish
        ? finish >= forecast.EarlyMs && finish <= forecast.LateMs ? 1 : 0
        : Math.Max(0, 0.9 - Math.Max(0.1, forecast.BeatsCap)) / (1 - Math.Min(0.9, forecast.BeatsCap));
}
