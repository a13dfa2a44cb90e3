using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Ledger.Registry;
using LiveHeat.Server.Setup;
using LiveHeat.Server.Time;
using LiveHeat.Testing;

namespace LiveHeat.Server.Heats;

public sealed class FindHeatTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("find-");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public async Task The_current_heat_is_the_one_called_last_even_while_an_older_one_alone_has_been_read()
    {
        await using var bench = await SessionBench.Running();
        using (var first = await bench.Server())
        {
            await bench.Do(first, new HeatCommand.End { Id = bench.NewId() });
        }

        bench.Time.Advance(TimeSpan.FromMinutes(5));
        using (var next = await bench.Server("h2"))
        {
            await bench.Do(next, new HeatCommand.Call { Id = bench.NewId() });
        }

        await using var registry = await HeatRegistry.Open(Path.Combine(folder.FullName, "registry.db"), bench.Time, CancellationToken.None);
        using var sessions = new HeatSessions(bench.Ledger, new Timebase(bench.Time));
        await sessions.Of(Some.Heat);

        Assert.Equal(new HeatId("h2"), (await new FindHeat(sessions, new SetupReader(registry)).Current())!.Heat);
    }

    [Fact]
    public async Task Once_all_heats_are_in_memory_the_disk_is_not_asked_for_them_again()
    {
        await using var bench = await SessionBench.Running();
        using var sessions = new HeatSessions(bench.Ledger, new Timebase(bench.Time));
        await sessions.Called();
        await bench.Ledger.DisposeAsync();
        foreach (var file in bench.Folder.GetFiles())
        {
            file.Delete();
        }

        Assert.Equal([Some.Heat], (await sessions.Called()).Select(session => session.Heat));
    }
}
