using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Forecasts;

/// <summary>All that is foretold of a heat at one instant. Estimates: nothing in it decides anything.</summary>
/// <param name="Lanes">Finishes and chances, lane by lane, of those who have shown enough; none where the work has no end.</param>
/// <param name="Catches">Who may be past the team ahead soon.</param>
/// <param name="Tags">Each lane's next tag that it may come to before its cap.</param>
public sealed record HeatForecast(Items<LaneForecast> Lanes, Items<CatchToCome> Catches, Items<TagToCome> Tags)
{
    /// <summary>Too little is known.</summary>
    public static HeatForecast Nothing { get; } = new([], [], []);
}

/// <summary>A team that may be past the one ahead of it soon.</summary>
/// <param name="Chaser">Behind now.</param>
/// <param name="Chased">One place ahead now.</param>
/// <param name="Step">The step that the chaser may have done first.</param>
/// <param name="InMs">Milliseconds until then, from the instant of the forecast.</param>
/// <param name="Chance">That the chaser has it done first, 0 to 1.</param>
public sealed record CatchToCome(LaneNumber Chaser, LaneNumber Chased, int Step, long InMs, double Chance);

/// <summary>A lane's next tag.</summary>
/// <param name="Lane">The lane.</param>
/// <param name="Step">The tag's step.</param>
/// <param name="InMs">Milliseconds until it, from the instant of the forecast; below 0 when it was expected before.</param>
public sealed record TagToCome(LaneNumber Lane, int Step, long InMs);
