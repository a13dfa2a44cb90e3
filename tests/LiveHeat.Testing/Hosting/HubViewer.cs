using System.Text.Json;
using LiveHeat.Contracts;
using LiveHeat.Contracts.Forecasts;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Phones;
using LiveHeat.Contracts.Wire;
using Microsoft.AspNetCore.Http.Connections;
using Microsoft.AspNetCore.SignalR.Client;
using Microsoft.Extensions.DependencyInjection;

namespace LiveHeat.Testing.Hosting;

/// <summary>A frame as it was pushed.</summary>
/// <param name="Json">To the letter.</param>
/// <param name="Frame">The same, read.</param>
/// <param name="At">When it came, by the machine's clock.</param>
internal sealed record PushedFrame(string Json, Frame Frame, DateTimeOffset At);

/// <summary>A screen or phone on the hub over a real WebSocket; it keeps all that is pushed to it.</summary>
internal sealed class HubViewer : IAsyncDisposable
{
    private HubViewer(HubConnection hub) => Hub = hub;

    public HubConnection Hub { get; }

    public Heard<PushedFrame> Frames { get; } = new();

    public Heard<ForecastFrame> Forecasts { get; } = new();

    public Heard<IReadOnlyList<PhoneSeen>> Phones { get; } = new();

    public Heard<bool> Programs { get; } = new();

    /// <summary>Connects with the visitor's cookies and Origin.</summary>
    public static async Task<HubViewer> Connect(Visitor visitor)
    {
        var builder = new HubConnectionBuilder().WithUrl(new Uri(visitor.Site, "hub"), HttpTransportType.WebSockets, options =>
        {
            options.SkipNegotiation = true;
            if (visitor.App.OnPort)
            {
                options.Cookies = visitor.Cookies;
                options.Headers["Origin"] = visitor.Origin!;
                return;
            }

            options.WebSocketFactory = async (connecting, cancellation) =>
            {
                var socket = visitor.App.Server.CreateWebSocketClient();
                socket.ConfigureRequest = request =>
                {
                    request.Headers.Origin = visitor.Origin;
                    request.Headers.Cookie = visitor.Cookies.GetCookieHeader(visitor.Site);
                };
                return await socket.ConnectAsync(connecting.Uri, cancellation);
            };
        });
        builder.AddJsonProtocol(json => WireJson.Apply(json.PayloadSerializerOptions));
        var viewer = new HubViewer(builder.Build());
        viewer.Hub.On<JsonElement>(nameof(IHeatWatcher.FrameReady), frame =>
            viewer.Frames.Add(new PushedFrame(frame.GetRawText(), frame.Deserialize<Frame>(WireJson.Options)!, TimeProvider.System.GetUtcNow())));
        viewer.Hub.On<ForecastFrame>(nameof(IHeatWatcher.ForecastReady), forecast => viewer.Forecasts.Add(forecast));
        viewer.Hub.On<PhoneSeen[]>(nameof(IHeatWatcher.PhonesReady), phones => viewer.Phones.Add(phones));
        viewer.Hub.On(nameof(IHeatWatcher.ProgramChanged), () => viewer.Programs.Add(true));
        await viewer.Hub.StartAsync();
        return viewer;
    }

    /// <summary>Watches a heat from now on; the answer is its newest frame.</summary>
    public Task<Frame?> Watch(string heat) => Hub.InvokeAsync<Frame?>(nameof(IHeatHub.Watch), heat);

    /// <summary>Watches the forecast of that heat too.</summary>
    public Task<ForecastFrame?> WatchForecast() => Hub.InvokeAsync<ForecastFrame?>(nameof(IHeatHub.WatchForecast));

    /// <summary>The first frame pushed that has this sequence or a later one.</summary>
    public async Task<Frame> Frame(long sequence) => (await Frames.First(pushed => pushed.Frame.Sequence >= sequence)).Frame;

    public ValueTask DisposeAsync() => Hub.DisposeAsync();
}
