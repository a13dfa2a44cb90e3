using LiveHeat.Engine.Heats;

namespace LiveHeat.Server.Hubs;

/// <summary>
/// One connection and the newest it has not been sent. A slow link costs one frame of memory: a newer one takes the place of one that waits,
/// and only this connection's own pump waits for it.
/// </summary>
internal sealed class Viewer(string connection, Func<string, string, object?[], Task> send)
{
    private readonly SemaphoreSlim waiting = new(0, 1);
    private readonly Lock slot = new();
    private readonly CancellationTokenSource gone = new();
    private RawJson? frame;
    private RawJson? phones;
    private bool program;

    /// <summary>The heat watched; null when it follows the current one.</summary>
    public HeatId? Heat { get; set; }

    /// <summary>Whether it watches a heat at all.</summary>
    public bool Watching { get; set; }

    /// <summary>Whether it watches the phones.</summary>
    public bool WatchesPhones { get; set; }

    /// <summary>A newer frame.</summary>
    public void OfferFrame(RawJson newest) => Offer(() => frame = newest);

    /// <summary>Newer phones.</summary>
    public void OfferPhones(RawJson newest) => Offer(() => phones = newest);

    /// <summary>The list of heats changed.</summary>
    public void OfferProgram() => Offer(() => program = true);

    /// <summary>The connection closed.</summary>
    public void Leave() => gone.Cancel();

    /// <summary>Sends what waits, one after another, until the connection closes.</summary>
    public async Task Pump()
    {
        try
        {
            while (!gone.IsCancellationRequested)
            {
                await waiting.WaitAsync(gone.Token);
                var (newFrame, newPhones, newProgram) = Take();
                if (newProgram)
                {
                    await send(connection, nameof(Contracts.IHeatWatcher.ProgramChanged), []);
                }

                if (newFrame is not null)
                {
                    await send(connection, nameof(Contracts.IHeatWatcher.FrameReady), [newFrame]);
                }

                if (newPhones is not null)
                {
                    await send(connection, nameof(Contracts.IHeatWatcher.PhonesReady), [newPhones]);
                }
            }
        }
        catch (OperationCanceledException)
        {
            // The connection closed; the screen asks for the newest when it is back.
        }
    }

    private void Offer(Action put)
    {
        lock (slot)
        {
            put();
            if (waiting.CurrentCount == 0)
            {
                waiting.Release();
            }
        }
    }

    private (RawJson? Frame, RawJson? Phones, bool Program) Take()
    {
        lock (slot)
        {
            var taken = (frame, phones, program);
            (frame, phones, program) = (null, null, false);
            return taken;
        }
    }
}
