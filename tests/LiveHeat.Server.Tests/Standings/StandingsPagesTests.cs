using LiveHeat.Contracts.Standings;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Standings;

public sealed class StandingsPagesTests(SharedFloor shared) : FloorTest(shared)
{
    [Fact]
    public async Task Anybody_reads_them_as_JSON_and_as_a_page()
    {
        var heat = await Floor.Run(lanes: 2);
        await heat[2].Finish(1);
        var table = (await Floor.Visitor().Get("/api/standings")).Read<StandingsTable>();
        var page = (await Floor.Visitor().Get("/standings")).Fine().Text;

        var division = Assert.Single(table.Divisions, division => division.Division == "open");
        Assert.Contains(division.Lines, line => line.Team == "t2" && line.Scores.Any(score => score is { Heat.Value: var id, Worth: 10 } && id == heat.Id));
        Assert.Contains("data-team=\"t2\"", page, StringComparison.Ordinal);
        Assert.Contains("Provisional: not official", page, StringComparison.Ordinal);
    }
}
