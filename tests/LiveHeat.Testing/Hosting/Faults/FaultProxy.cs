using System.Net;
using System.Net.Sockets;

namespace LiveHeat.Testing.Hosting.Faults;

/// <summary>What the network does to a connection.</summary>
internal enum Fault
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Connections are reset, new ones too.</summary>
    Reset,

    /// <summary>Nobody listens: new connections are refused, old ones reset.</summary>
    Refuse,

    /// <summary>Connections are taken, and nothing ever comes back.</summary>
    Hang,

    /// <summary>What the client sends arrives; what the server answers is lost.</summary>
    HalfOpen,

    /// <summary>1.6 Mbit/s each way and 150 ms each way.</summary>
    Slow,
}

/// <summary>A network of the tests' own between clients and a server, in this process: it fails as it is told.</summary>
internal sealed class FaultProxy : IAsyncDisposable
{
    private const int BytesPerSecond = 200_000;
    private static readonly TimeSpan SlowDelay = TimeSpan.FromMilliseconds(150);

    private readonly CancellationTokenSource closing = new();
    private readonly HashSet<Socket> open = [];
    private readonly Lock turn = new();
    private readonly int port;
    private TcpListener? listener;
    private Task listening = Task.CompletedTask;
    private volatile Fault fault;

    /// <param name="server">Where it passes things on to; may change when the server starts again.</param>
    public FaultProxy(Uri server)
    {
        Server = server;
        Listen(0);
        port = ((IPEndPoint)listener!.LocalEndpoint).Port;
    }

    /// <summary>The server behind it.</summary>
    public Uri Server { get; set; }

    /// <summary>Where clients find it.</summary>
    public Uri Address => new($"http://127.0.0.1:{port}/");

    /// <summary>How many connections were cut.</summary>
    public int Cuts { get; private set; }

    /// <summary>Fails in this way from now on. Reset and Refuse cut what is open.</summary>
    public void Be(Fault next)
    {
        fault = next;
        if (next is Fault.Reset or Fault.Refuse)
        {
            CutAll();
        }

        lock (turn)
        {
            if (next == Fault.Refuse)
            {
                listener?.Stop();
                listener = null;
            }
            else if (listener is null)
            {
                Listen(port);
            }
        }
    }

    /// <summary>Cuts every open connection once, as an access point does that goes round.</summary>
    public void CutAll()
    {
        Socket[] cut;
        lock (turn)
        {
            cut = [.. open];
            open.Clear();
        }

        foreach (var socket in cut)
        {
            Cuts++;
            Abort(socket);
        }
    }

    public async ValueTask DisposeAsync()
    {
        await closing.CancelAsync();
        lock (turn)
        {
            listener?.Stop();
        }

        CutAll();
        await listening.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        closing.Dispose();
    }

    private void Listen(int on)
    {
        listener = new TcpListener(IPAddress.Loopback, on);
        listener.Server.SetSocketOption(SocketOptionLevel.Socket, SocketOptionName.ReuseAddress, true);
        listener.Start();
        listening = Accept(listener);
    }

    private async Task Accept(TcpListener from)
    {
        try
        {
            while (true)
            {
                var client = await from.AcceptSocketAsync(closing.Token);
                _ = Serve(client);
            }
        }
        catch (Exception ended) when (ended is OperationCanceledException or SocketException or ObjectDisposedException)
        {
            // Told to stop listening.
        }
    }

    private async Task Serve(Socket client)
    {
        Keep(client);
        if (fault is Fault.Reset or Fault.Refuse)        // who came between the cut and the end of listening
        {
            Abort(client);
            return;
        }

        var server = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        Keep(server);
        try
        {
            await server.ConnectAsync(IPAddress.Loopback, Server.Port, closing.Token);
            await Task.WhenAny(Pass(client, server, answers: false), Pass(server, client, answers: true));
        }
        catch (Exception ended) when (ended is SocketException or OperationCanceledException or ObjectDisposedException)
        {
            // Either end went away; so does the other.
        }
        finally
        {
            Abort(client);
            Abort(server);
        }
    }

    private async Task Pass(Socket from, Socket to, bool answers)
    {
        var buffer = new byte[16 * 1024];
        try
        {
            while (true)
            {
                var read = await from.ReceiveAsync(buffer, closing.Token);
                if (read == 0)
                {
                    return;
                }

                if (fault == Fault.Hang || (fault == Fault.HalfOpen && answers))
                {
                    continue;
                }

                if (fault == Fault.Slow)
                {
                    await Task.Delay(SlowDelay + TimeSpan.FromSeconds((double)read / BytesPerSecond), closing.Token);
                }

                await to.SendAsync(buffer.AsMemory(0, read), closing.Token);
            }
        }
        catch (Exception ended) when (ended is SocketException or OperationCanceledException or ObjectDisposedException)
        {
            // Cut.
        }
    }

    private void Keep(Socket socket)
    {
        lock (turn)
        {
            open.Add(socket);
        }
    }

    private void Abort(Socket socket)
    {
        lock (turn)
        {
            open.Remove(socket);
        }

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
