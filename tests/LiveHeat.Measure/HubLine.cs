using System.Buffers.Text;
using System.Diagnostics;
using System.Net.WebSockets;

namespace LiveHeat.Measure;

/// <summary>One viewer's connection to a hub, at the level of its bytes: it looks for the sequence of each forecast and reads nothing else, so that a thousand of them leave the machine to the server.</summary>
internal sealed class HubLine : IAsyncDisposable
{
    private const byte RecordEnd = 0x1e;
    private static readonly byte[] Ping = [.. "{\"type\":6}"u8, RecordEnd];

    private readonly ClientWebSocket socket = new();
    private readonly SemaphoreSlim sending = new(1, 1);
    private readonly CancellationTokenSource closing = new();
    private Task listening = Task.CompletedTask;

    /// <summary>The newest sequence that was told, and when by <see cref="Stopwatch"/>; told for every forecast that comes.</summary>
    public Action<HubLine, long, long>? Told { get; set; }

    /// <summary>The newest forecast as it came, to be sent again by a hub that does nothing else.</summary>
    public byte[] Last { get; private set; } = [];

    /// <summary>Connects, shakes hands and calls what there is to call.</summary>
    public async Task Open(Uri site, params string[] calls)
    {
        socket.Options.SetRequestHeader("Origin", site.GetLeftPart(UriPartial.Authority));
        await socket.ConnectAsync(new UriBuilder(new Uri(site, "hub")) { Scheme = "ws" }.Uri, closing.Token);
        await Send([.. "{\"protocol\":\"json\",\"version\":1}"u8, RecordEnd]);
        listening = Listen();
        foreach (var call in calls)
        {
            await Send([.. System.Text.Encoding.UTF8.GetBytes(call), RecordEnd]);
        }
    }

    /// <summary>Says that it is still there.</summary>
    public Task Beat() => socket.State == WebSocketState.Open ? Send(Ping) : Task.CompletedTask;

    public async ValueTask DisposeAsync()
    {
        await closing.CancelAsync();
        await listening;
        socket.Dispose();
        sending.Dispose();
        closing.Dispose();
    }

    private async Task Send(byte[] bytes)
    {
        await sending.WaitAsync(closing.Token);
        try
        {
            await socket.SendAsync(bytes, WebSocketMessageType.Text, true, closing.Token);
        }
        finally
        {
            sending.Release();
        }
    }

    private async Task Listen()
    {
        var buffer = new byte[128 * 1024];
        var filled = 0;
        try
        {
            while (socket.State == WebSocketState.Open)
            {
                var got = await socket.ReceiveAsync(buffer.AsMemory(filled), closing.Token);
                filled += got.Count;
                filled = Read(buffer, filled);
            }
        }
        catch (Exception over) when (over is OperationCanceledException or WebSocketException)
        {
            // It is closed, by us or by the other side: who waits for it counts it as lost.
        }
    }

    private int Read(byte[] buffer, int filled)
    {
        var read = 0;
        while (buffer.AsSpan(read, filled - read).IndexOf(RecordEnd) is var end and >= 0)
        {
            Look(buffer.AsSpan(read, end));
            read += end + 1;
        }

        buffer.AsSpan(read, filled - read).CopyTo(buffer);
        return filled - read;
    }

    private void Look(ReadOnlySpan<byte> record)
    {
        var name = "\"sequence\":"u8;
        if (record.IndexOf("\"ForecastReady\""u8) is var at and >= 0 and < 60 && record.IndexOf(name) is var from and > 0
            && Utf8Parser.TryParse(record[(from + name.Length)..], out long sequence, out _))
        {
            Last = Told is null ? record.ToArray() : Last;
            Told?.Invoke(this, sequence, Stopwatch.GetTimestamp());
        }
    }
}
