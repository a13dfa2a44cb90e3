using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
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

    /// <summary>Silence both ways. What is under way arrives when the network is back, as TCP sends it again; whoever gave up meanwhile is gone.</summary>
    Hang,

    /// <summary>What the client sends arrives; what the server answers is lost, and a connection with such a hole is reset when the network is back.</summary>
    HalfOpen,

    /// <summary>1.6 Mbit/s and 150 ms each way.</summary>
    Slow,

    /// <summary>A write that was answered arrives once more, as one that was still under way on another path.</summary>
    Repeat,
}

/// <summary>A network of the tests' own between clients and a server, in this process: it fails as it is told.</summary>
internal sealed class FaultProxy : IAsyncDisposable
{
    private const int BytesPerSecond = 200_000;
    private static readonly TimeSpan SlowDelay = TimeSpan.FromMilliseconds(150);

    private readonly CancellationTokenSource closing = new();
    private readonly HashSet<FaultyConnection> open = [];
    private readonly ConcurrentDictionary<int, int> statuses = new();
    private readonly TimeSpan[] busyUntil = new TimeSpan[2];
    private readonly Lock turn = new();
    private readonly int port;
    private TcpListener? listener;
    private Task listening = Task.CompletedTask;
    private TaskCompletionSource back = New();
    private volatile Fault fault;
    private int repeated;

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

    /// <summary>What it does now.</summary>
    public Fault Fault => fault;

    /// <summary>How many connections were cut.</summary>
    public int Cuts { get; private set; }

    /// <summary>How many answered writes were sent again.</summary>
    public int Repeated => repeated;

    /// <summary>How often the server answered with each HTTP status.</summary>
    public IReadOnlyDictionary<int, int> Statuses => statuses;

    /// <summary>Fails in this way from now on. Reset and Refuse cut what is open.</summary>
    public void Be(Fault next)
    {
        List<FaultyConnection> holed;
        lock (turn)
        {
            fault = next;
            holed = next == Fault.HalfOpen ? [] : [.. open.Where(connection => connection.HasHole)];
            if (next == Fault.Hang && back.Task.IsCompleted)
            {
                back = New();
            }
            else if (next != Fault.Hang)
            {
                back.TrySetResult();
            }

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

        if (next is Fault.Reset or Fault.Refuse)
        {
            CutAll();
        }

        holed.ForEach(connection => connection.Dispose());
    }

    /// <summary>Cuts every open connection once, as an access point does that goes round.</summary>
    public void CutAll()
    {
        FaultyConnection[] cut;
        lock (turn)
        {
            cut = [.. open];
            open.Clear();
            Cuts += cut.Length;
        }

        foreach (var connection in cut)
        {
            connection.Dispose();
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

    /// <summary>Waits out a silence.</summary>
    internal async Task Passable(CancellationToken cancellation)
    {
        while (fault == Fault.Hang)
        {
            Task silence;
            lock (turn)
            {
                silence = back.Task;
            }

            await silence.WaitAsync(cancellation);
        }
    }

    /// <summary>How long so many bytes take now, behind all that are under way in the same direction.</summary>
    internal TimeSpan Takes(int bytes, bool answers)
    {
        if (fault != Fault.Slow)
        {
            return TimeSpan.Zero;
        }

        lock (turn)
        {
            var (way, now) = (answers ? 1 : 0, Stopwatch.GetElapsedTime(0));
            busyUntil[way] = (busyUntil[way] > now ? busyUntil[way] : now) + TimeSpan.FromSeconds((double)bytes / BytesPerSecond);
            return busyUntil[way] + SlowDelay - now;
        }
    }

    internal void Saw(ReadOnlySpan<byte> answer)
    {
        if (answer.StartsWith("HTTP/1.1 "u8) && answer.Length > 12 && int.TryParse(answer[9..12], NumberStyles.None, CultureInfo.InvariantCulture, out var status))
        {
            statuses.AddOrUpdate(status, 1, (_, times) => times + 1);
        }
    }

    /// <summary>The same request on a connection of its own; nobody hears the answer.</summary>
    internal async Task SendAgain(byte[] request)
    {
        try
        {
            Interlocked.Increment(ref repeated);
            using var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
            await socket.ConnectAsync(IPAddress.Loopback, Server.Port, closing.Token);
            await socket.SendAsync(request, closing.Token);
            await socket.ReceiveAsync(new byte[1], closing.Token);
        }
        catch (Exception ended) when (ended is SocketException or OperationCanceledException or ObjectDisposedException)
        {
            // The server went away: then this copy was lost.
        }
    }

    internal void Closed(FaultyConnection connection)
    {
        lock (turn)
        {
            open.Remove(connection);
        }
    }

    private static TaskCompletionSource New() => new(TaskCreationOptions.RunContinuationsAsynchronously);

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
                var connection = new FaultyConnection(this, await from.AcceptSocketAsync(closing.Token));
                lock (turn)
                {
                    open.Add(connection);
                }

                _ = connection.Serve(closing.Token);
            }
        }
        catch (Exception ended) when (ended is OperationCanceledException or SocketException or ObjectDisposedException)
        {
            // Told to stop listening.
        }
    }
}
