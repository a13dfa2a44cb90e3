using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Taps;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Timing;
using LiveHeat.Ledger.Facts;
using LiveHeat.Server.Access;
using LiveHeat.Server.Heats;
using LiveHeat.Server.Time;

namespace LiveHeat.Testing.Simulation;

/// <summary>The server's side: the real session over the real ledger, thrown away and made again as a restart does it, and a desk that sits beside it.</summary>
internal sealed class Venue(HeatLedger ledger, HeatId heat, TimeProvider clock, HeatSnapshot snapshot) : IDisposable
{
    private static readonly SignedIn Desk = new("in-desk", "Ona", Role.Organiser, null);

    private HeatSession? session;
    private Timebase timebase = new(clock);
    private long commands;

    /// <summary>The heat changed.</summary>
    public event Action? Changed;

    /// <summary>No server answers.</summary>
    public bool IsDown => session is null;

    /// <summary>The session of this moment.</summary>
    public HeatSession Session => session ?? throw new InvalidOperationException("The server is down.");

    /// <summary>An exchange's answer: the server's time, and whose it is.</summary>
    public (double AtMs, string Process) Exchange() => (timebase.NowMs, timebase.Process);

    /// <summary>Starts, or starts again: nothing is known but what the ledger holds.</summary>
    public async Task Start()
    {
        timebase = new Timebase(clock);
        session = await HeatSession.Open(heat, ledger, timebase, CancellationToken.None);
        session.Changed += _ => Changed?.Invoke();
        Changed?.Invoke();
    }

    /// <summary>The process is gone.</summary>
    public void Stop()
    {
        session?.Dispose();
        session = null;
    }

    /// <summary>A phone's taps, as they come off the wire.</summary>
    public Task<TapReceipts> Take(IReadOnlyList<JsonElement> taps, SignedIn sender) => Session.Take(new TapBatch(taps, ledger.Epoch), sender, CancellationToken.None);

    /// <summary>A command, as it comes off the wire.</summary>
    public Task<CommandResult> Do(HeatCommand command, SignedIn who)
    {
        var hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(JsonSerializer.Serialize(command, WireJson.Options))));
        return Session.Do(command, hash, _ => new Asking(who.By(), who.Lane, timebase.Now, $"{heat}-{command.Id.Outbox}-{command.Id.Counter}", snapshot, []), CancellationToken.None);
    }

    /// <summary>What the desk asks for must be done.</summary>
    public async Task Ask(Func<FactId, HeatCommand> command)
    {
        var id = new FactId(Ids.Of($"desk {heat}"), ++commands);
        if (await Do(command(id), Desk) is CommandResult.Refused(var why))
        {
            throw new InvalidOperationException(why.ToString());
        }
    }

    /// <summary>Everything that waits for the head judge counts: each was truly seen.</summary>
    /// <returns>How many waited.</returns>
    public async Task<int> AdmitAll()
    {
        var held = Session.State.Lanes.SelectMany(lane => lane.Flagged).Where(flagged => flagged.Flags.HasFlag(FactFlags.Quarantined)).Select(flagged => flagged.Fact).ToList();
        foreach (var fact in held)
        {
            await Ask(id => new HeatCommand.Admit { Id = id, Target = fact, Reason = "the judge confirms it" });
        }

        return held.Count;
    }

    /// <summary>The newest frame.</summary>
    public Frame Frame() => Session.Frame();

    /// <summary>A heat read from the file by a server that never saw it.</summary>
    public Task<HeatSession> Another() => HeatSession.Open(heat, ledger, timebase, CancellationToken.None);

    /// <summary>The lines of the heat as they stand in the file.</summary>
    public Task<IReadOnlyList<LedgerLine>> Lines() => ledger.Read(heat, 0, CancellationToken.None);

    /// <inheritdoc/>
    public void Dispose() => Stop();
}

/// <summary>Outbox ids that look like chance and come from a name, so that a run can be repeated.</summary>
internal static class Ids
{
    public static string Of(string name) => System.Buffers.Text.Base64Url.EncodeToString(SHA256.HashData(Encoding.UTF8.GetBytes(name)).AsSpan(0, 16));
}
