using System.Net.WebSockets;
using LiveHeat.Contracts;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Phones;
using LiveHeat.Contracts.Wire;
using Microsoft.AspNetCore.Http.Connections;
using Microsoft.AspNetCore.SignalR;
using Microsoft.AspNetCore.SignalR.Client;
using Microsoft.Extensions.DependencyInjection;

namespace LiveHeat.Rehearsal.Phones;

/// <summary>A real connection to the hub that never gives up. After each connect it watches again and so has the newest frame.</summary>
public sealed class HubLink(SiteClient site, PhoneNetwork network, TimeProvider time, Random random)
{
    private static readonly TimeSpan[] RetryAfter = [.. new[] { 0, 250, 500, 1000, 2000 }.Select(ms => TimeSpan.FromMilliseconds(ms))];

    private volatile HubConnection? connection;
    private string watched = "current";

    /// <summary>A frame, also the one that <see cref="Watch"/> brought. Frames may be old or lost.</summary>
    public event Action<Frame>? FrameCame;

    /// <summary>The list of heats changed.</summary>
    public event Action? ProgramChanged;

    /// <summary>Connected, for the first time or again.</summary>
    public event Action? Connected;

    public bool Online => connection is not null;

    /// <summary>Follows one heat from now on, also after a reconnect.</summary>
    public async Task Watch(string heat, CancellationToken stopping)
    {
        watched = heat;
        if (connection is { } hub)
        {
            await Tolerate(() => AskToWatch(hub, stopping), stopping).ConfigureAwait(false);
        }
    }

    /// <summary>One clock exchange; null when the link is away.</summary>
    public async Task<ClockAnswer?> Exchange(double sentMs, CancellationToken stopping)
    {
        ClockAnswer? answer = null;
        if (connection is { } hub)
        {
            await Tolerate(async () => answer = await hub.InvokeAsync<ClockAnswer>(nameof(IHeatHub.Exchange), sentMs, stopping).ConfigureAwait(false), stopping).ConfigureAwait(false);
        }

        return network.Up ? answer : null;
    }

    /// <summary>Tells the desk how this phone is; lost when the link is away.</summary>
    public async Task Report(PhoneStatus status, CancellationToken stopping)
    {
        if (connection is { } hub)
        {
            await Tolerate(() => hub.SendAsync(nameof(IHeatHub.ReportPhone), status, stopping), stopping).ConfigureAwait(false);
        }
    }

    /// <summary>Stays connected until stopped.</summary>
    public async Task Run(CancellationToken stopping)
    {
        for (var attempt = 0; !stopping.IsCancellationRequested; attempt++)
        {
            var most = RetryAfter[Math.Min(attempt, RetryAfter.Length - 1)];
            await Task.Delay(most * (0.5 + (random.NextDouble() / 2)), time, stopping).ConfigureAwait(false);
            if (network.Up)
            {
                await Tolerate(
                    async () =>
                    {
                        await Connect(stopping).ConfigureAwait(false);
                        attempt = -1;
                    },
                    stopping).ConfigureAwait(false);
            }
        }
    }

    private async Task Connect(CancellationToken stopping)
    {
        var away = network.Gone;
        await using var hub = Build();
        var closed = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        hub.Closed += _ =>
        {
            closed.TrySetResult();
            return Task.CompletedTask;
        };
        hub.On<Frame>(nameof(IHeatWatcher.FrameReady), frame => FrameCame?.Invoke(frame));
        hub.On(nameof(IHeatWatcher.ProgramChanged), () => ProgramChanged?.Invoke());
        await hub.StartAsync(stopping).ConfigureAwait(false);
        try
        {
            connection = hub;
            await AskToWatch(hub, stopping).ConfigureAwait(false);
            Connected?.Invoke();
            await Task.WhenAny(closed.Task, away).WaitAsync(stopping).ConfigureAwait(false);
        }
        finally
        {
            connection = null;
        }
    }

    private async Task AskToWatch(HubConnection hub, CancellationToken stopping)
    {
        if (await hub.InvokeAsync<Frame?>(nameof(IHeatHub.Watch), watched, stopping).ConfigureAwait(false) is { } frame)
        {
            FrameCame?.Invoke(frame);
        }
    }

    private HubConnection Build()
    {
        var builder = new HubConnectionBuilder().WithUrl(new Uri(site.Server, "/hub"), options =>
        {
            options.SkipNegotiation = true;
            options.Transports = HttpTransportType.WebSockets;
            options.Cookies = site.Cookies;
            options.Headers["Origin"] = site.Origin;
        });
        builder.AddJsonProtocol(options => WireJson.Apply(options.PayloadSerializerOptions));
        var hub = builder.Build();
        hub.KeepAliveInterval = TimeSpan.FromSeconds(5);
        hub.ServerTimeout = TimeSpan.FromSeconds(12);
        return hub;
    }

    /// <summary>What a lost link does to a call is no error here: the next connect repeats what matters.</summary>
    private static async Task Tolerate(Func<Task> call, CancellationToken stopping)
    {
        try
        {
            await call().ConfigureAwait(false);
        }
        catch (Exception trouble) when (!stopping.IsCancellationRequested
            && trouble is HubException or HttpRequestException or IOException or WebSocketException or InvalidOperationException or OperationCanceledException or TimeoutException)
        {
            // Whoever waits for the link asks again.
        }
    }
}
