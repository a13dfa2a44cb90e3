using LiveHeat.Contracts;
using LiveHeat.Contracts.Forecasts;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Phones;
using LiveHeat.Engine.Heats;
using LiveHeat.Server.Access;
using LiveHeat.Server.Forecasts;
using LiveHeat.Server.Heats;
using LiveHeat.Server.Phones;
using LiveHeat.Server.Time;
using Microsoft.AspNetCore.SignalR;

namespace LiveHeat.Server.Hubs;

/// <summary>Pushes frames and answers the clock exchange. No rules here, and nothing is written through it.</summary>
internal sealed class HeatHub(FindHeat heats, Viewers viewers, FloorPhones phones, Forecasting forecasts, OverallNewsroom overall, Timebase time) : Hub<IHeatWatcher>, IHeatHub
{
    /// <summary>The live heat, else the one called last, whichever that is.</summary>
    public const string Current = "current";

    public override Task OnConnectedAsync()
    {
        viewers.Enter(Context.ConnectionId, Context.Abort);
        phones.Connected(SignedIn(), Context.ConnectionId);
        return base.OnConnectedAsync();
    }

    public override Task OnDisconnectedAsync(Exception? exception)
    {
        viewers.Leave(Context.ConnectionId);
        phones.Gone(SignedIn(), Context.ConnectionId);
        return base.OnDisconnectedAsync(exception);
    }

    [WhoMay]
    public async Task<Frame?> Watch(string heat)
    {
        viewers.Watch(Context.ConnectionId, heat == Current ? null : new HeatId(heat));
        var session = heat == Current ? await heats.Current() : await heats.Called(heat);
        return session?.Frame();
    }

    [WhoMay]
    public async Task<ForecastFrame?> WatchForecast()
    {
        viewers.WatchForecast(Context.ConnectionId);
        var watched = viewers.HeatOf(Context.ConnectionId);
        var session = watched is { } heat ? await heats.Called(heat.Value) : await heats.Current();
        return session is null ? null : forecasts.Of(session, await overall.Newest(Context.ConnectionAborted));
    }

    [WhoMay]
    public Task<ClockAnswer> Exchange(double sent)
    {
        var received = time.NowMs;
        return Task.FromResult(new ClockAnswer(received, time.NowMs, time.Process, time.Rate));
    }

    [WhoMay(Role.Judge)]
    public Task ReportPhone(PhoneStatus status)
    {
        phones.Told(SignedIn(), Context.ConnectionId, status);
        return Task.CompletedTask;
    }

    [WhoMay(Role.Organiser, Role.HeadJudge)]
    public Task<IReadOnlyList<PhoneSeen>> WatchPhones()
    {
        viewers.WatchPhones(Context.ConnectionId);
        return Task.FromResult(phones.All());
    }

    private SignedIn SignedIn() => Context.GetHttpContext()!.SignedIn();
}
