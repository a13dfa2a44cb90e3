using LiveHeat.Engine;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Forecasts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Forecasts;

/// <summary>Makes forecast frames.</summary>
public static class ForecastMaking
{
    /// <summary>A chance is drawn; more digits than these are noise.</summary>
    private const int Digits = 2;

    /// <summary>The same for the same heat and facts on every server.</summary>
    public static int Seed(HeatId heat, long sequence)
    {
        // FNV-1a (from memory): only its spreading matters.
        var hash = 2166136261u;
        foreach (var letter in $"{heat.Value}:{sequence.ToString(System.Globalization.CultureInfo.InvariantCulture)}")
        {
            hash = unchecked((hash ^ letter) * 16777619);
        }

        return unchecked((int)hash);
    }

    /// <summary>What is foretold and what is worth saying.</summary>
    /// <param name="heat">The folded facts.</param>
    /// <param name="epoch">The ledger's id.</param>
    /// <param name="forecast">What is foretold; it may be a little older.</param>
    /// <param name="forecastAt">When that was.</param>
    /// <param name="told">What is worth saying now.</param>
    /// <param name="now">The instant.</param>
    public static ForecastFrame Of(HeatState heat, string epoch, HeatForecast forecast, Instant forecastAt, CalloutSheet told, Instant now) => new(
        heat.Heat, epoch, heat.Head, now,
        heat.Lanes.Select(lane => Lane(lane, forecast.Lanes.FirstOrDefault(one => one.Lane == lane.Lane))).ToItems(),
        forecast.Catches.Select(to => new CatchOutlook(to.Chaser, to.Chased, to.Step, forecastAt + to.InMs, Math.Round(to.Chance, Digits))).ToItems(),
        forecast.Tags.Where(tag => heat.Find(tag.Lane) is { } lane && lane.DoneSteps < tag.Step).Select(tag => new TagOutlook(tag.Lane, tag.Step, forecastAt + tag.InMs)).ToItems(),
        told.Callouts.Select(callout => callout.Chance is { } chance ? callout with { Chance = Math.Round(chance, Digits) } : callout).ToItems(), told.NotYet);

    private static LaneOutlook Lane(LaneState lane, LaneForecast? forecast) => forecast is null || lane.Finished || lane.Stopped is not null
        ? new LaneOutlook(lane.Lane, null, null, null, null, null)
        : new LaneOutlook(lane.Lane, forecast.FinishMs, forecast.EarlyMs, forecast.LateMs, Math.Round(forecast.BeatsCap, Digits),
            forecast.Places.Select(chance => Math.Round(chance, Digits)).ToItems());
}
