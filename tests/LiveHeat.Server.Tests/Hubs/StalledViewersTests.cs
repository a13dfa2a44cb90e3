using System.Net.WebSockets;
using System.Text;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Hubs;

public sealed class StalledViewersTests
{
    private const int Stalled = 6;

    /// <summary>Answers of 1 kB and more that nobody reads: far above what the buffers of a socket hold (4 MB at most each way on Linux).</summary>
    private const int Unread = 12_000;

    [Fact]
    public async Task Viewers_that_read_nothing_delay_nobody()
    {
        await using var floor = await TestFloor.Open(onPort: true);
        var heat = await floor.Run(lanes: 4);
        var sockets = await Task.WhenAll(Enumerable.Range(0, Stalled).Select(_ => Stall(floor, heat)));
        await using var board = await HubViewer.Connect(floor.Visitor());
        await board.Watch(heat.Id);

        for (var tap = 0; tap < 30; tap++)
        {
            var receipt = await heat[(tap % 4) + 1].SendOne(heat[(tap % 4) + 1].Tap("no-rep", ("step", 1)));
            var since = TimeProvider.System.GetTimestamp();
            Assert.Equal(tap + 1, (await board.Frame(receipt.Sequence!.Value)).Lanes.Sum(lane => lane.NoReps));
            // A tenth of a second is the publisher's own pause; the rest is for a busy machine. A viewer that was waited for would take ten.
            Assert.InRange(TimeProvider.System.GetElapsedTime(since), TimeSpan.Zero, TimeSpan.FromSeconds(5));
        }

        foreach (var socket in sockets)
        {
            socket.Abort();
            socket.Dispose();
        }
    }

    /// <summary>Shakes hands, watches over and over, and reads nothing.</summary>
    private static async Task<ClientWebSocket> Stall(TestFloor floor, TestHeat heat)
    {
        var socket = new ClientWebSocket();
        socket.Options.SetRequestHeader("Origin", floor.Organiser.Origin);
        await socket.ConnectAsync(new UriBuilder(floor.Organiser.Site) { Scheme = "ws", Path = "/hub" }.Uri, CancellationToken.None);
        await Send(socket, """{"protocol":"json","version":1}""");
        var watch = string.Concat(Enumerable.Repeat($$"""{"type":1,"invocationId":"1","target":"Watch","arguments":["{{heat.Id}}"]}""" + '\u001e', 100));
        for (var sent = 0; sent < Unread; sent += 100)
        {
            await Send(socket, watch[..^1]);
        }

        return socket;
    }

    private static Task Send(ClientWebSocket socket, string message) =>
        socket.SendAsync(Encoding.UTF8.GetBytes(message + '\u001e'), WebSocketMessageType.Text, endOfMessage: true, CancellationToken.None);
}
