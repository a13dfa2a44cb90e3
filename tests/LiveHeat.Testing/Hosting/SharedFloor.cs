using Xunit;

namespace LiveHeat.Testing.Hosting;

/// <summary>One floor for all tests of a class; each test runs heats of its own on it.</summary>
public sealed class SharedFloor : IAsyncLifetime
{
    internal TestFloor Floor { get; private set; } = null!;

    public async Task InitializeAsync() => Floor = await TestFloor.Open();

    public async Task DisposeAsync() => await Floor.DisposeAsync();
}

/// <summary>One server for all tests of a class.</summary>
public sealed class SharedApp : IDisposable
{
    internal LiveHeatApp App { get; } = new();

    public void Dispose() => App.Dispose();
}

/// <summary>A test on a floor that its class shares.</summary>
public abstract class FloorTest(SharedFloor shared) : IClassFixture<SharedFloor>
{
    private protected TestFloor Floor => shared.Floor;

    /// <summary>The ledger of a heat must be the same after the work as before it.</summary>
    private protected static async Task NothingIsRecorded(TestHeat heat, Func<Task> work)
    {
        var before = await LedgerText(heat);
        await work();
        Assert.Equal(before, await LedgerText(heat));
    }

    private static async Task<string> LedgerText(TestHeat heat) => (await heat.Floor.Organiser.Get($"{heat.Path}/facts")).Fine().Text;
}
