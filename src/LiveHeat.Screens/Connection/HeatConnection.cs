using System.Net.WebSockets;
using LiveHeat.Contracts;
using LiveHeat.Contracts.Forecasts;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Phones;
using LiveHeat.Contracts.Wire;
using Microsoft.AspNetCore.Http.Connections;
using Microsoft.AspNetCore.SignalR;
using Microsoft.AspNetCore.SignalR.Client;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace LiveHeat.Screens.Connection;

/// <summary>How the link to the server is.</summary>
public enum LinkState
{
    /// <summary>No link; the next try is on its way.</summary>
    Offline,

    /// <summary>Knocking.</summary>
    Connecting,

    /// <summary>Frames come.</summary>
    Online,
}

/// <summary>The hub's client: the one file that knows its method names. It never gives up.</summary>
/// <remarks>A push may be lost. After each connect it watches again, and so gets the newest frame.</remarks>
public sealed class HeatConnection(Uri hub, ServerClock clock, TimeProvider time, ILogger<HeatConnection> log) : IAsyncDisposable
{
    /// <summary>Watches whatever heat is on.</summary>
    public const string Current = "current";

    private static readonly TimeSpan KeepAlive = TimeSpan.FromSeconds(5);
    private static readonly TimeSpan Silence = TimeSpan.FromSeconds(12);
    private static readonly TimeSpan Steady = TimeSpan.FromSeconds(5);
    private static readonly TimeSpan BetweenExchanges = TimeSpan.FromSeconds(5);
    private static readonly TimeSpan InABurst = TimeSpan.FromMilliseconds(120);
    private const int Burst = 8;

    private readonly CancellationTokenSource stopping = new();
    private CancellationTokenSource? cut;
    private HubConnection? link;
    private Task? running;
    private bool wantsPhones, wantsForecast;

    /// <summary>A frame came, newest or not.</summary>
    public event Action<Frame>? FrameArrived;

    /// <summary>The list of phones came.</summary>
    public event Action<IReadOnlyList<PhoneSeen>>? PhonesArrived;

    /// <summary>What is foretold of the heat watched, and what is worth saying.</summary>
    public event Action<ForecastFrame>? ForecastArrived;

    /// <summary>The list of heats changed, or may have while the link was down.</summary>
    public event Action? ProgramChanged;

    /// <summary>The link came or went.</summary>
    public event Action<LinkState>? StateChanged;

    /// <summary>How the link is now.</summary>
    public LinkState State { get; private set; }

    /// <summary>The heat watched; null for none.</summary>
    public string? Heat { get; private set; }

    /// <summary>Begins to connect and never ends. A second call does nothing.</summary>
    public void Start() => running ??= KeepConnected();

    /// <summary>Follows a heat, or <see cref="Current"/>.</summary>
    public async Task Watch(string heat)
    {
        Heat = heat;
        await WatchAgain();
        await AskForForecast();
    }

    /// <summary>The forecast of the heat followed too, from now on.</summary>
    public Task WatchForecast()
    {
        wantsForecast = true;
        return AskForForecast();
    }

    /// <summary>Organiser and head judge: the phones too.</summary>
    public Task WatchPhones()
    {
        wantsPhones = true;
        return AskForPhones();
    }

    /// <summary>Drops the link and connects at once: after signing in, or when the device was away.</summary>
    public void Reconnect() => cut?.Cancel();

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await stopping.CancelAsync();
        if (running is not null)
        {
            await running;
        }

        stopping.Dispose();
    }

    private async Task KeepConnected()
    {
        var failures = 0;
        while (!stopping.IsCancellationRequested)
        {
            using var once = CancellationTokenSource.CreateLinkedTokenSource(stopping.Token);
            cut = once;
            var since = time.GetTimestamp();
            var stayed = await ConnectOnce(once.Token);
            cut = null;
            link = null;
            Tell(LinkState.Offline);
            var asked = once.IsCancellationRequested;
            failures = asked || (stayed && time.GetElapsedTime(since) > Steady) ? 0 : failures + 1;
            await Pause(asked ? TimeSpan.Zero : RetryDelay.Before(failures - 1, Random.Shared.NextDouble()), stopping.Token);
        }
    }

    /// <returns>Whether the link stood at all.</returns>
    private async Task<bool> ConnectOnce(CancellationToken ended)
    {
        var stood = false;
        var connection = Build();
        try
        {
            using var lost = CancellationTokenSource.CreateLinkedTokenSource(ended);
            connection.Closed += _ => { try { lost.Cancel(); } catch (ObjectDisposedException) { /* ended by us before */ } return Task.CompletedTask; };
            Tell(LinkState.Connecting);
            await connection.StartAsync(ended);
            stood = true;
            link = connection;
            Tell(LinkState.Online);
            ProgramChanged?.Invoke();
            await WatchAgain();
            await AskForForecast();
            await AskForPhones();
            await KeepInStep(connection, lost.Token);
        }
        catch (OperationCanceledException)
        {
            // Lost or ended: the loop goes on.
        }
        catch (Exception gone)
        {
            // Whatever it was, this loop must not end: a screen that stopped knocking is dead for the day.
            log.LogWarning(gone, "No link to the hub.");
        }
        finally
        {
            await connection.DisposeAsync();
        }

        return stood;
    }

    private HubConnection Build()
    {
        var builder = new HubConnectionBuilder().WithUrl(hub, options =>
        {
            options.SkipNegotiation = true;
            options.Transports = HttpTransportType.WebSockets;
        });
        builder.AddJsonProtocol(options => WireJson.Apply(options.PayloadSerializerOptions));
        var connection = builder.Build();
        connection.KeepAliveInterval = KeepAlive;
        connection.ServerTimeout = Silence;
        connection.HandshakeTimeout = Silence;
        connection.On<Frame>(nameof(IHeatWatcher.FrameReady), frame => FrameArrived?.Invoke(frame));
        connection.On<ForecastFrame>(nameof(IHeatWatcher.ForecastReady), forecast => ForecastArrived?.Invoke(forecast));
        connection.On<PhoneSeen[]>(nameof(IHeatWatcher.PhonesReady), phones => PhonesArrived?.Invoke(phones));
        connection.On(nameof(IHeatWatcher.ProgramChanged), () =>
        {
            ProgramChanged?.Invoke();
            _ = Heat == Current ? WatchAgain() : Task.CompletedTask;
        });
        return connection;
    }

    private async Task KeepInStep(HubConnection connection, CancellationToken lost)
    {
        for (var asked = 0; ; asked++)
        {
            var sent = clock.LocalMs;
            var answer = await connection.InvokeAsync<ClockAnswer>(nameof(IHeatHub.Exchange), sent, lost);
            clock.Take(sent, answer, clock.LocalMs);
            await Task.Delay(asked < Burst ? InABurst : BetweenExchanges, time, lost);
        }
    }

    private Task WatchAgain() => Heat is not { } heat ? Task.CompletedTask : Ask(async connection =>
    {
        if (await connection.InvokeAsync<Frame?>(nameof(IHeatHub.Watch), heat) is { } frame)
        {
            FrameArrived?.Invoke(frame);
        }
    });

    private Task AskForForecast() => !wantsForecast || Heat is null ? Task.CompletedTask : Ask(async connection =>
    {
        if (await connection.InvokeAsync<ForecastFrame?>(nameof(IHeatHub.WatchForecast)) is { } forecast)
        {
            ForecastArrived?.Invoke(forecast);
        }
    });

    private Task AskForPhones() => !wantsPhones ? Task.CompletedTask : Ask(async connection =>
        PhonesArrived?.Invoke(await connection.InvokeAsync<PhoneSeen[]>(nameof(IHeatHub.WatchPhones))));

    /// <summary>Asks the hub when there is a link; what is refused or lost is asked again after the next connect.</summary>
    private async Task Ask(Func<HubConnection, Task> question)
    {
        if (link is not { } connection)
        {
            return;
        }

        try
        {
            await question(connection);
        }
        catch (Exception gone) when (gone is HubException or InvalidOperationException or OperationCanceledException or IOException or WebSocketException)
        {
            // The link went, or this sign-in may not ask: the server decides, and says so again over HTTP.
        }
    }

    private async Task Pause(TimeSpan wait, CancellationToken stop)
    {
        try
        {
            await Task.Delay(wait, time, stop);
        }
        catch (OperationCanceledException)
        {
            // Closing: the loop sees it.
        }
    }

    private void Tell(LinkState state)
    {
        if (State != state)
        {
            State = state;
            StateChanged?.Invoke(state);
        }
    }
}
