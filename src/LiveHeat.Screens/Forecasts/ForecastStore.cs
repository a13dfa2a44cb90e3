using LiveHeat.Contracts.Forecasts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Screens.Forecasts;

/// <summary>What is foretold of the heat on the screen and what is worth saying, as last heard.</summary>
public sealed class ForecastStore
{
    /// <summary>What is older foretells nothing any more, and what it says has been overtaken: milliseconds. As with frames, that is "not live".</summary>
    private const long Stale = 10_000;

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
}
