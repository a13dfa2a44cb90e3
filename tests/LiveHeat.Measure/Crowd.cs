using System.Diagnostics;
using System.Globalization;

namespace LiveHeat.Measure;

/// <summary>Viewers of one hub, and how long what was told took to each of them.</summary>
internal sealed class Crowd : IAsyncDisposable
{
    /// <summary>A viewer that has not heard after so long has lost it.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    private static readonly TimeSpan BeatEvery = TimeSpan.FromSeconds(4);
    private const int AtOnce = 50;

    private readonly List<HubLine> lines = [];
    private readonly List<double> delays = [];
    private readonly CancellationTokenSource over = new();
    private Task beating = Task.CompletedTask;
    private int expected;

    /// <summary>One of them.</summary>
    public HubLine Any => lines[0];

    /// <summary>Opens so many connections that call these.</summary>
    public static async Task<Crowd> Of(int viewers, Uri site, params string[] calls)
    {
        var crowd = new Crowd();
        crowd.lines.AddRange(Enumerable.Range(0, viewers).Select(_ => new HubLine()));
        foreach (var some in crowd.lines.Chunk(AtOnce))
        {
            await Task.WhenAll(some.Select(line => line.Open(site, calls)));
        }

        crowd.beating = crowd.Beat();
        return crowd;
    }

    /// <summary>Does something that all will be told, and waits until they are.</summary>
    /// <param name="act">Gives the sequence that tells of it.</param>
    public async Task Time(Func<Task<long>> act)
    {
        var heard = new System.Collections.Concurrent.ConcurrentDictionary<HubLine, List<(long Sequence, long At)>>();
        foreach (var line in lines)
        {
            heard[line] = [];
            line.Told = (who, sequence, at) =>
            {
                lock (heard[who])
                {
                    heard[who].Add((sequence, at));
                }
            };
        }

        var from = Stopwatch.GetTimestamp();
        var wanted = await act();
        expected += lines.Count;
        var waiting = new HashSet<HubLine>(lines);
        while (waiting.Count > 0 && Stopwatch.GetElapsedTime(from) < Patience)
        {
            await Task.Delay(5);
            foreach (var line in waiting.ToArray())
            {
                lock (heard[line])
                {
                    if (heard[line].Cast<(long Sequence, long At)?>().FirstOrDefault(one => one!.Value.Sequence >= wanted) is { } first)
                    {
                        delays.Add(Stopwatch.GetElapsedTime(from, first.At).TotalMilliseconds);
                        waiting.Remove(line);
                    }
                }
            }
        }
    }

    /// <summary>The delays that half and 99 of 100 had at most, and how many were not told in time.</summary>
    public (double Half, double Most, int Lost, int Told) Result()
    {
        var sorted = delays.Order().ToArray();
        return sorted.Length == 0 ? (double.NaN, double.NaN, expected, 0) : (sorted[sorted.Length / 2], sorted[(int)(sorted.Length * 0.99)], expected - sorted.Length, sorted.Length);
    }

    /// <summary>The result in a line.</summary>
    public string Line(string what)
    {
        var (half, most, lost, told) = Result();
        return string.Create(CultureInfo.InvariantCulture, $"{what}: told={told} lost={lost} p50={half:F1}ms p99={most:F1}ms");
    }

    public async ValueTask DisposeAsync()
    {
        await over.CancelAsync();
        await beating;
        foreach (var some in lines.Chunk(AtOnce))
        {
            await Task.WhenAll(some.Select(line => line.DisposeAsync().AsTask()));
        }

        over.Dispose();
    }

    private async Task Beat()
    {
        using var timer = new PeriodicTimer(BeatEvery);
        try
        {
            while (await timer.WaitForNextTickAsync(over.Token))
            {
                await Task.WhenAll(lines.Select(line => line.Beat()));
            }
        }
        catch (OperationCanceledException)
        {
            // The crowd goes home.
        }
    }
}
