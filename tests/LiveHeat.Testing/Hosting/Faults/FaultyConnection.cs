using System.Net;
using System.Net.Sockets;
using System.Threading.Channels;

namespace LiveHeat.Testing.Hosting.Faults;

/// <summary>One connection through a <see cref="FaultProxy"/>.</summary>
internal sealed class FaultyConnection(FaultProxy network, Socket client) : IDisposable
{
    /// <summary>Pieces under way in one direction before the sender feels it.</summary>
    private const int MostUnderWay = 64;

    private readonly Socket server = new(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
    private readonly List<byte> request = [];

    /// <summary>An answer was lost on it.</summary>
    public bool HasHole { get; private set; }

    /// <summary>Passes things on until either end goes, or it is cut.</summary>
    public async Task Serve(CancellationToken closing)
    {
        try
        {
            if (network.Fault is not (Fault.Reset or Fault.Refuse))        // refuse: who came between the cut and the end of listening
            {
                await network.Passable(closing);
                await server.ConnectAsync(IPAddress.Loopback, network.Server.Port, closing);
                await Task.WhenAny(Pass(client, server, answers: false, closing), Pass(server, client, answers: true, closing));
            }
        }
        catch (Exception ended) when (Ends(ended))
        {
            // Either end went away; so does the other.
        }
        finally
        {
            network.Closed(this);
            Dispose();
        }
    }

    /// <summary>Resets both ends.</summary>
    public void Dispose()
    {
        foreach (var socket in new[] { client, server })
        {
            try
            {
                // Lingering for no time sends a reset instead of a goodbye.
                socket.LingerState = new LingerOption(true, 0);
            }
            catch (Exception gone) when (gone is SocketException or ObjectDisposedException)
            {
                // It was closed already.
            }

            socket.Dispose();
        }
    }

    private async Task Pass(Socket from, Socket to, bool answers, CancellationToken closing)
    {
        var way = Channel.CreateBounded<(byte[] Bytes, DateTimeOffset Due)>(MostUnderWay);
        var delivering = Deliver(way.Reader, to, answers, closing);
        try
        {
            var buffer = new byte[16 * 1024];
            while (await from.ReceiveAsync(buffer, closing) is > 0 and var read)
            {
                await way.Writer.WriteAsync((buffer[..read], DateTimeOffset.UtcNow + network.Takes(read, answers)), closing);
            }
        }
        catch (Exception ended) when (Ends(ended))
        {
            // Cut.
        }

        way.Writer.TryComplete();
        await delivering;
    }

    private async Task Deliver(ChannelReader<(byte[] Bytes, DateTimeOffset Due)> way, Socket to, bool answers, CancellationToken closing)
    {
        try
        {
            await foreach (var (bytes, due) in way.ReadAllAsync(closing))
            {
                if (due - DateTimeOffset.UtcNow is { Ticks: > 0 } wait)
                {
                    await Task.Delay(wait, closing);
                }

                await network.Passable(closing);
                if (answers && network.Fault == Fault.HalfOpen)
                {
                    HasHole = true;
                    continue;
                }

                Look(bytes, answers);
                await to.SendAsync(bytes, closing);
            }
        }
        catch (Exception ended) when (Ends(ended))
        {
            // Cut; what comes behind has nowhere to go.
            Dispose();
        }
    }

    /// <summary>Keeps a write until its answer comes: clients ask one after another, so what lies between two answers is one request.</summary>
    private void Look(byte[] bytes, bool answers)
    {
        lock (request)
        {
            if (!answers)
            {
                if (network.Fault == Fault.Repeat && (request.Count > 0 || bytes.AsSpan().StartsWith("POST "u8)))
                {
                    request.AddRange(bytes);
                }

                return;
            }

            network.Saw(bytes);
            if (request.Count > 0)
            {
                _ = network.SendAgain([.. request]);
                request.Clear();
            }
        }
    }

    private static bool Ends(Exception thrown) => thrown is SocketException or OperationCanceledException or ObjectDisposedException or ChannelClosedException;
}
