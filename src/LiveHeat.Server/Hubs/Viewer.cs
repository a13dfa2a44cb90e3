using System.Threading.Channels;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Server.Hubs;

/// <summary>
/// One connection and the newest it has not been sent. A slow link costs one frame of memory: a newer one takes the place of one that waits,
/// and only this connection's own pump waits for it.
/// </summary>
internal sealed class Viewer(string connection, Func<string, string, object?[], Task> send)
{
    private readonly Channel<bool> bell = Channel.CreateBounded<bool>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite, SingleReader = true });
    private readonly Lock slot = new();
    private RawJson? frame;
    private RawJson? phones;
    private RawJson? forecast;
    private bool program;

    /// <summary>The heat watched; null when it follows the current one.</summary>
    public HeatId? Heat { get; set; }

    /// <summary>Whether it watches a heat at all.</summary>
    public bool Watching { get; set; }

    /// <summary>Whether it watches the phones.</summary>
    public bool WatchesPhones { get; set; }

    /// <summary>Whether it watches the forecast of its heat.</summary>
    public bool WatchesForecast { get; set; }

    /// <summary>A newer frame.</summary>
    public void OfferFrame(RawJson newest) => Offer(() => frame = newest);

    /// <summary>A newer forecast.</summary>
    public void OfferForecast(RawJson newest) => Offer(() => forecast = newest);

    /// <summary>Newer phones.</summary>
    public void OfferPhones(RawJson newest) => Offer(() => phones = newest);

    /// <summary>The list of heats changed.</summary>
    public void OfferProgram() => Offer(() => program = true);

    /// <summary>The connection closed.</summary>
    public void Leave() => bell.Writer.TryComplete();

    /// <summary>Sends what waits, one after another, until the connection closes.</summary>
    public async Task Pump()
    {
        await foreach (var _ in bell.Reader.ReadAllAsync())
        {
            var (newFrame, newForecast, newPhones, newProgram) = Take();
            if (newProgram)
            {
                await send(connection, nameof(Contracts.IHeatWatcher.ProgramChanged), []);
            }

            if (newFrame is not null)
            {
                await send(connection, nameof(Contracts.IHeatWatcher.FrameReady), [newFrame]);
            }

            if (newForecast is not null)
            {
                await send(connection, nameof(Contracts.IHeatWatcher.ForecastReady), [newForecast]);
            }

            if (newPhones is not null)
            {
                await send(connection, nameof(Contracts.IHeatWatcher.PhonesReady), [newPhones]);
            }
        }
    }

    private void Offer(Action put)
    {
        lock (slot)
        {
            put();
            bell.Writer.TryWrite(true);
        }
    }

    private (RawJson? Frame, RawJson? Forecast, RawJson? Phones, bool Program) Take()
    {
        lock (slot)
        {
            var taken = (frame, forecast, phones, program);
            (frame, forecast, phones, program) = (null, null, null, false);
            return taken;
        }
    }
}
