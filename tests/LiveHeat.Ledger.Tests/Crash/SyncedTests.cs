using LiveHeat.Testing.Tracing;

namespace LiveHeat.Ledger.Crash;

/// <summary>What the power takes: only what was synchronised survives it, so a trace of the process must show that before each acknowledgement.</summary>
public class SyncedTests
{
    private const int Lines = 40;

    [Fact]
    public async Task The_file_is_synchronised_before_each_acknowledgement() => Assert.Empty(await NotSafe("full"));

    /// <summary>The test of the test above: a ledger that does not synchronise is found out, for every line.</summary>
    [Fact]
    public async Task A_ledger_that_does_not_synchronise_is_found_out()
    {
        var unsafely = await NotSafe("off");
        Assert.Equal(Lines, unsafely.Count);
        Assert.All(unsafely, why => Assert.EndsWith("was acknowledged before the file was synchronised", why, StringComparison.Ordinal));
    }

    private static async Task<IReadOnlyList<string>> NotSafe(string synchronous)
    {
        using var folder = new TempFolder();
        var file = folder.File("trace.log");
        using var child = ChildProcess.Start(SyncTrace.Before(file), "acknowledge", folder.File("ledger.db"), $"{Lines}", synchronous);
        var told = (await child.StandardOutput.ReadToEndAsync()).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        await child.WaitForExitAsync();
        Assert.Equal(0, child.ExitCode);

        var trace = SyncTrace.Read(file);
        var acknowledged = told.Where(line => line.StartsWith('"')).Select(line => line.Trim('"')).ToList();
        Assert.Equal(Lines, acknowledged.Count);
        return [.. acknowledged.Select(trace.WhyNotSafe).OfType<string>()];
    }
}
