using LiveHeat.Engine.Heats;
using LiveHeat.Server.Setup;

namespace LiveHeat.Server.Heats;

/// <summary>Finds a heat by the name in an address: one that was called, or one that is set up.</summary>
internal sealed class FindHeat(HeatSessions sessions, SetupReader setup)
{
    /// <summary>The heat if it has facts or is set up; null otherwise.</summary>
    public async Task<HeatSession?> Known(string heat, CancellationToken cancellation)
    {
        var id = new HeatId(heat);
        return await Called(heat) ?? ((await setup.Heats(cancellation)).Any(planned => planned.Id == heat) ? await sessions.Of(id) : null);
    }

    /// <summary>The heat if it has been called; null otherwise.</summary>
    public async Task<HeatSession?> Called(string heat) =>
        InMemory(heat) ?? (await sessions.Called()).FirstOrDefault(session => session.Heat.Value == heat);

    /// <summary>The live heat, else the one called last; null when none was.</summary>
    public async Task<HeatSession?> Current()
    {
        // Right after a start some heats may be in memory and the newest not yet.
        await sessions.Called();
        return sessions.Current();
    }

    private HeatSession? InMemory(string heat) =>
        sessions.Open().FirstOrDefault(session => session.Heat.Value == heat && session.State.Snapshot is not null);
}
