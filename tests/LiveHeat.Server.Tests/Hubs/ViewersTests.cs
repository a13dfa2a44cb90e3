using System.Text;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting;
using Microsoft.AspNetCore.SignalR;
using Microsoft.Extensions.Logging.Abstractions;

namespace LiveHeat.Server.Hubs;

public sealed class ViewersTests
{
    private static readonly HeatId Heat = new("h1");

    [Fact]
    public async Task Only_whoever_watches_the_heat_is_sent_its_frames()
    {
        var hub = new RecordingHub();
        var viewers = new Viewers(hub, NullLogger<Viewers>.Instance);
        foreach (var connection in new[] { "idle", "other", "this", "current" })
        {
            viewers.Enter(connection, () => Assert.Fail("Nobody hangs up."));
        }

        viewers.Watch("other", new HeatId("h2"));
        viewers.Watch("this", Heat);
        viewers.Watch("current", null);
        viewers.Watch("nobody", Heat);

        viewers.Offer(Heat, isCurrent: false, Raw("1"));
        await hub.Sent.First(sent => sent == "this FrameReady 1");
        viewers.Offer(Heat, isCurrent: true, Raw("2"));
        await hub.Sent.First(sent => sent == "this FrameReady 2");
        await hub.Sent.First(sent => sent == "current FrameReady 2");

        Assert.Equal(3, hub.Sent.All.Count);
        viewers.Leave("this");
        viewers.Offer(Heat, isCurrent: true, Raw("3"));
        await hub.Sent.First(sent => sent == "current FrameReady 3");
        Assert.Equal(4, hub.Sent.All.Count);
        Assert.Equal(3, viewers.Count);
    }

    [Fact]
    public async Task A_forecast_is_made_once_for_all_who_watch_it_and_not_at_all_for_nobody()
    {
        var hub = new RecordingHub();
        var viewers = new Viewers(hub, NullLogger<Viewers>.Instance);
        foreach (var connection in new[] { "one", "two", "frames only", "other heat" })
        {
            viewers.Enter(connection, () => Assert.Fail("Nobody hangs up."));
            viewers.Watch(connection, connection == "other heat" ? new HeatId("h2") : Heat);
        }

        var made = 0;
        RawJson Make() => Raw($"{++made}");
        viewers.OfferForecast(Heat, isCurrent: true, Make);
        Assert.Equal(0, made);
        foreach (var connection in new[] { "one", "two", "other heat" })
        {
            viewers.WatchForecast(connection);
        }

        viewers.OfferForecast(Heat, isCurrent: true, Make);
        await hub.Sent.First(sent => sent == "one ForecastReady 1");
        await hub.Sent.First(sent => sent == "two ForecastReady 1");
        Assert.Equal((1, 2), (made, hub.Sent.All.Count));
    }

    [Fact]
    public async Task A_connection_whose_push_fails_is_ended_so_that_its_screen_comes_back()
    {
        var hub = new RecordingHub { Failing = "broken" };
        var viewers = new Viewers(hub, NullLogger<Viewers>.Instance);
        var ended = new TaskCompletionSource();
        viewers.Enter("broken", ended.SetResult);
        viewers.Enter("well", () => Assert.Fail("This one is well."));
        viewers.Watch("broken", Heat);
        viewers.Watch("well", Heat);

        viewers.Offer(Heat, isCurrent: true, Raw("1"));

        await ended.Task.WaitAsync(Heard<string>.Patience);
        await hub.Sent.First(sent => sent == "well FrameReady 1");
    }

    private static RawJson Raw(string json) => new(Encoding.UTF8.GetBytes(json));

    /// <summary>A hub whose connections take everything, but for one.</summary>
    private sealed class RecordingHub : IHubContext<HeatHub>, IHubClients
    {
        public Heard<string> Sent { get; } = new();

        public string? Failing { get; init; }

        public IHubClients Clients => this;

        public IGroupManager Groups => throw new NotSupportedException();

        public IClientProxy All => throw new NotSupportedException();

        public IClientProxy AllExcept(IReadOnlyList<string> excludedConnectionIds) => throw new NotSupportedException();

        public IClientProxy Client(string connectionId) => new Connection(this, connectionId);

        public IClientProxy Group(string groupName) => throw new NotSupportedException();

        public IClientProxy GroupExcept(string groupName, IReadOnlyList<string> excludedConnectionIds) => throw new NotSupportedException();

        public IClientProxy User(string userId) => throw new NotSupportedException();

        public IClientProxy Users(IReadOnlyList<string> userIds) => throw new NotSupportedException();

        IClientProxy IHubClients<IClientProxy>.Clients(IReadOnlyList<string> connectionIds) => throw new NotSupportedException();

        IClientProxy IHubClients<IClientProxy>.Groups(IReadOnlyList<string> groupNames) => throw new NotSupportedException();

        private sealed class Connection(RecordingHub hub, string id) : IClientProxy
        {
            public Task SendCoreAsync(string method, object?[] args, CancellationToken cancellationToken = default)
            {
                if (id == hub.Failing)
                {
                    throw new InvalidOperationException("This link takes nothing.");
                }

                hub.Sent.Add($"{id} {method} {Encoding.UTF8.GetString(((RawJson)args[0]!).Utf8.Span)}");
                return Task.CompletedTask;
            }
        }
    }
}
