using LiveHeat.Contracts.Forecasts;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Screens.Forecasts;

/// <summary>What is foretold of the heat on the screen and what is worth saying, as last heard; and what was said already.</summary>
public sealed class ForecastStore
{
    /// <summary>What is older foretells nothing any more, and what it says has been overtaken: milliseconds. As with frames, that is "not live".</summary>
    private const long Stale = 10_000;

    private readonly HashSet<(HeatId, string)> said = [];

    /// <summary>Anything here changed.</summary>
    public event Action? Changed;

    /// <summary>The newest; null before the first.</summary>
    public ForecastFrame? Frame { get; private set; }

    /// <summary>Takes a forecast; an older one of the same heat is dropped.</summary>
    public void Take(ForecastFrame frame)
    {
        if (Frame is { } known && known.Heat == frame.Heat && known.Epoch == frame.Epoch && (frame.Sequence < known.Sequence || (frame.Sequence == known.Sequence && frame.MadeAt < known.MadeAt)))
        {
            return;
        }

        Frame = frame;
        Changed?.Invoke();
    }

    /// <summary>The forecast of a heat; null when there is none, or when it has grown old while the network was away.</summary>
    /// <param name="heat">The heat that is drawn.</param>
    /// <param name="live">Forecasts come at least once a second.</param>
    /// <param name="now">The instant by which it is drawn.</param>
    public ForecastFrame? Of(HeatId heat, bool live, Instant now) => Frame is { } frame && frame.Heat == heat && !(live && now - frame.MadeAt > Stale) ? frame : null;

    /// <summary>Worth saying and not said yet, the next thing first.</summary>
    public IReadOnlyList<Callout> ToSay(ForecastFrame frame) => [.. frame.Callouts.Where(callout => !said.Contains((frame.Heat, callout.Id)))];

    /// <summary>It was said: it does not come back.</summary>
    public void Said(HeatId heat, string id)
    {
        if (said.Add((heat, id)))
        {
            Changed?.Invoke();
        }
    }
}
