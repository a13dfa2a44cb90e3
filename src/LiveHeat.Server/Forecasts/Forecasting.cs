using System.Collections.Concurrent;
using LiveHeat.Contracts.Forecasts;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Forecasts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Server.Heats;
using LiveHeat.Server.Time;

namespace LiveHeat.Server.Forecasts;

/// <summary>Makes forecast frames: what is foretold at most once a second a heat, what is worth saying from the newest facts each time.</summary>
internal sealed class Forecasting(HeatSessions sessions, Timebase time)
{
    /// <summary>A forecast serves so long, milliseconds of the timebase: a fast rehearsal ages fast.</summary>
    private const long Serves = 1000;

    private readonly ConcurrentDictionary<HeatId, Made> made = new();
    private readonly ConcurrentDictionary<HeatId, Learned> learned = new();

    /// <summary>The newest of a heat.</summary>
    /// <param name="session">The heat.</param>
    /// <param name="overall">Who leads over the whole competition.</param>
    public ForecastFrame Of(HeatSession session, IReadOnlyList<OverallNews> overall)
    {
        var (seen, now) = (session.Seen, time.Now);
        var before = Before(seen.State);
        var earlier = before.ConvertAll(Learn);
        var forecast = Newest(seen.State, earlier, now);
        var told = HeatCallouts.Of(seen.State, seen.Placings, seen.News, (forecast.Forecast, forecast.At), Bests.Of(earlier.Select(heat => heat.Bests)), now, before, overall);
        return ForecastMaking.Of(seen.State, sessions.Epoch, forecast.Forecast, forecast.At, told, now);
    }

    private Made Newest(HeatState heat, List<Learned> earlier, Instant now)
    {
        // A ledger that was restored is shorter than what was foretold from.
        if (made.TryGetValue(heat.Heat, out var last) && now - last.At is >= 0 and < Serves && last.Sequence <= heat.Head)
        {
            return last;
        }

        var priors = PacePriors.From(earlier.Select(one => one.Pace));
        var fresh = new Made(Forecast.Whole(heat, now, priors, ForecastMaking.Seed(heat.Heat, heat.Head)), now, heat.Head);
        made[heat.Heat] = fresh;
        return fresh;
    }

    /// <summary>Heats of the same workout that were over when this one was called.</summary>
    private List<HeatState> Before(HeatState heat) =>
        [.. sessions.Open().Select(session => session.State)
            .Where(other => other.Heat != heat.Heat && other.EndedAt is not null && other.Snapshot?.Workout.Id == heat.Snapshot?.Workout.Id && other.CalledAt <= heat.CalledAt)
            .OrderBy(other => other.CalledAt)];

    private Learned Learn(HeatState heat) =>
        learned.TryGetValue(heat.Heat, out var known) && known.Sequence == heat.Head
            ? known
            : learned[heat.Heat] = new Learned(heat.Head, Forecast.Learned(heat), Bests.Of(heat));

    private sealed record Made(HeatForecast Forecast, Instant At, long Sequence);

    private sealed record Learned(long Sequence, IReadOnlyDictionary<PaceKey, PacePrior> Pace, Bests Bests);
}
