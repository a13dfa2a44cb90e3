using LiveHeat.Server.Access;

namespace LiveHeat.Server.Setup;

public sealed class PointsSetupTests
{
    [Fact]
    public async Task The_points_rule_is_set_by_the_organiser_and_read_back()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();

        var answer = await desk.Put("/api/setup/points", new { rule = "high", table = new[] { 25, 18, 15 }, cuts = new[] { new { workout = "low-tide", goOn = 2 } } });
        var points = (await desk.Get("/api/setup")).Json.GetProperty("points");

        Assert.Equal(200, answer.Status);
        Assert.Equal("high", points.GetProperty("rule").GetString());
        Assert.Equal([25, 18, 15], points.GetProperty("table").EnumerateArray().Select(place => place.GetInt32()));
        Assert.Equal("low-tide", points.GetProperty("cuts")[0].GetProperty("workout").GetString());
        Assert.Equal("not-signed-in", (await host.Browser().Put("/api/setup/points", new { rule = "low" })).Code);
    }

    [Theory]
    [InlineData("""{"rule":"high"}""", "table")]
    [InlineData("""{"rule":"high","table":[5,6]}""", "table[1]")]
    [InlineData("""{"rule":"high","table":[-1]}""", "table[0]")]
    [InlineData("""{"rule":"low","exclusionsFrom":[1]}""", "exclusionsFrom[0]")]
    [InlineData("""{"rule":"low","exclusionsFrom":[4,4]}""", "exclusionsFrom[1]")]
    [InlineData("""{"rule":"high","table":[5],"exclusionsFrom":[4]}""", "exclusionsFrom")]
    [InlineData("""{"rule":"low","cuts":[{"workout":"nothing","goOn":2}]}""", "cuts[0].workout")]
    [InlineData("""{"rule":"low","cuts":[{"workout":"low-tide","goOn":0}]}""", "cuts[0].goOn")]
    [InlineData("""{"rule":"low","cuts":[{"workout":"low-tide","goOn":2},{"workout":"low-tide","goOn":1}]}""", "cuts[1].workout")]
    public async Task What_cannot_be_is_refused_with_the_field(string json, string field)
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();

        var answer = await desk.PutText("/api/setup/points", json);

        Assert.Equal((400, "bad-setup"), (answer.Status, answer.Code));
        Assert.Equal(field, answer.Json.GetProperty("errors")[0].GetProperty("field").GetString());
        Assert.Equal("low", (await desk.Get("/api/setup")).Json.GetProperty("points").GetProperty("rule").GetString());
    }
}
