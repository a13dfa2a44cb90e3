using System.Text.Json;
using System.Text.Json.Nodes;
using LiveHeat.Contracts.Taps;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Integrity;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Timing;
using LiveHeat.Ledger.Facts;
using LiveHeat.Server.Access;
using LiveHeat.Server.Time;
using LiveHeat.Testing;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;

namespace LiveHeat.Server.Heats;

/// <summary>Sessions of one heat over one ledger, without a host: each session stands for a server.</summary>
internal sealed class SessionBench : IAsyncDisposable
{
    public const int Lanes = 4;

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("sessions-");
    private long commands;

    private SessionBench()
    {
    }

    public FakeTimeProvider Time { get; } = new(DateTimeOffset.FromUnixTimeMilliseconds(Some.Go.UnixMs - 60_000));

    public HeatLedger Ledger { get; private set; } = null!;

    public DirectoryInfo Folder => folder;

    public Instant Now => new(Time.GetUtcNow().ToUnixTimeMilliseconds());

    /// <summary>A ledger with a heat that runs since this moment, a judge in the seat of every lane.</summary>
    public static async Task<SessionBench> Running()
    {
        var bench = new SessionBench();
        bench.Ledger = await HeatLedger.Open(Path.Combine(bench.folder.FullName, "ledger.db"), bench.Time, NullLogger.Instance, CancellationToken.None);
        using var session = await bench.Server();
        await bench.Do(session, new HeatCommand.Call { Id = bench.NewId() });
        for (var lane = 1; lane <= Lanes; lane++)
        {
            await bench.Do(session, new HeatCommand.TakeSeat { Id = bench.NewId(), Lane = new LaneNumber(lane) }, Judge(lane));
        }

        await bench.Do(session, new HeatCommand.ObserveStart { Id = bench.NewId(), AgoMs = 0 });
        return bench;
    }

    /// <summary>One more server's session of the heat.</summary>
    public Task<HeatSession> Server(string? heat = null) => HeatSession.Open(heat is null ? Some.Heat : new HeatId(heat), Ledger, new Timebase(Time), CancellationToken.None);

    public FactId NewId() => Some.Id("desk", Interlocked.Increment(ref commands));

    public static SignedIn Judge(int lane) => new($"in-{lane}", $"Judge {lane}", Role.Judge, new LaneNumber(lane));

    /// <summary>The outcome of a command, by the organiser unless said.</summary>
    public Task<CommandResult> Try(HeatSession session, HeatCommand command, SignedIn? who = null)
    {
        var by = who ?? new SignedIn("in-desk", "Ona", Role.Organiser, null);
        var hash = HeatSession.HashOf(JsonSerializer.SerializeToElement(command, WireJson.Options));
        return session.Do(command, hash, _ => new Asking(by.By(), by.Lane, Now, $"new-{command.Id.Counter}", Some.Snapshot(Lanes), []), CancellationToken.None);
    }

    /// <summary>A command that must be accepted.</summary>
    public async Task<CommandAnswer> Do(HeatSession session, HeatCommand command, SignedIn? who = null) =>
        await Try(session, command, who) switch
        {
            CommandResult.Done(var answer) => answer,
            CommandResult.Refused(var why) => throw new InvalidOperationException(why.ToString()),
            var other => throw new InvalidOperationException($"{other}"),
        };

    /// <summary>A no-rep on a lane, from its judge: any number of them may stand.</summary>
    public JsonElement NoRep(HeatSession session, int lane, long counter) => JsonSerializer.SerializeToElement(new JsonObject
    {
        ["fact"] = "no-rep",
        ["id"] = Some.Id($"lane-{lane}", counter).ToString(),
        ["lane"] = lane,
        ["step"] = 1,
        ["instant"] = Now.UnixMs,
        ["seat"] = session.State.Find(new LaneNumber(lane))!.Seat!.Id.Value,
        ["start"] = session.State.Clock.Start!.Id,
    });

    /// <summary>No gaps, no fact twice, and every hash fits.</summary>
    public async Task<IReadOnlyList<LedgerLine>> WholeLedger()
    {
        var lines = await Ledger.Read(Some.Heat, 0, CancellationToken.None);
        Assert.Equal(Enumerable.Range(1, lines.Count).Select(n => (long)n), lines.Select(line => line.Sequence));
        Assert.Equal(lines.Count, lines.Select(line => line.Id).Distinct().Count());
        Assert.Null(HashChain.Verify(lines.Select(line => line.Link)));
        return lines;
    }

    public async ValueTask DisposeAsync()
    {
        await Ledger.DisposeAsync();
        folder.Delete(recursive: true);
    }
}
