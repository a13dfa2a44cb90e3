using LiveHeat.Testing.Hosting.Torture;
using Xunit.Abstractions;

namespace LiveHeat.Server.Torture;

/// <summary>A small run of what <c>LiveHeat.Measure torture</c> does at length: real processes, SIGKILL, a network that fails.</summary>
public sealed class TortureTests(ITestOutputHelper output)
{
    [Fact]
    public async Task Nothing_acknowledged_is_lost_doubled_or_misplaced()
    {
        var folder = Directory.CreateTempSubdirectory("torture-").FullName;
        try
        {
            var report = await new TortureRun(kills: 4, cuts: 40, lanes: 4, seed: 7).Run(folder, output.WriteLine);

            output.WriteLine(report.ToString());
            Assert.True(report.Sound, report.ToString());
            Assert.Equal(4, report.Kills);
            Assert.True(report.Cuts >= 40, report.ToString());
            Assert.True(report.Accepted > 50, $"So few taps prove nothing: {report}");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
