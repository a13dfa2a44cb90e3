using System.Text.Json.Nodes;
using LiveHeat.Engine.Heats;
using LiveHeat.Ledger.Registry;
using LiveHeat.Server.Access;

namespace LiveHeat.Server.Setup;

/// <summary>An organiser's own movements, through their addresses.</summary>
public sealed class MovementSetupTests
{
    private const string Own = """
        {"id":"gate-ball","name":"gate balls","unit":"reps","secondsPerUnit":2.4,"fastestSecondsPerUnit":1,"start":"Standing.","finish":"The ball is through the gate.",
         "between":["One throw."],"faults":[{"name":"past the gate","how":"The ball missed the gate."},{"name":"second throw","how":""}],"allowed":["Any hand."],
         "variants":[{"name":"wide gate","how":"A wider gate.","movement":"wall-ball"}],"caution":"Look first.","source":"the organiser","basedOn":"wall-ball"}
        """;

    [Fact]
    public async Task An_own_movement_is_kept_read_and_deleted()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.Organiser();

        var kept = await desk.PutText("/api/setup/movements/gate-ball", Own);

        Assert.Equal(200, kept.Status);
        Assert.Equal("past the gate", (await desk.Get("/api/setup/movements/gate-ball")).Json.GetProperty("faults")[0].GetProperty("name").GetString());
        var listed = Assert.Single((await desk.Get("/api/setup")).Json.GetProperty("movements").EnumerateArray());
        Assert.Equal(kept.Text, listed.GetRawText());
        Assert.Equal("wall-ball", listed.GetProperty("basedOn").GetString());

        Assert.Equal(204, (await desk.Delete("/api/setup/movements/gate-ball")).Status);
        Assert.Equal((404, "no-such-movement"), Told(await desk.Get("/api/setup/movements/gate-ball")));
        Assert.Empty((await desk.Get("/api/setup")).Json.GetProperty("movements").EnumerateArray());
    }

    [Theory]
    [InlineData(Role.HeadJudge)]
    [InlineData(Role.Judge)]
    [InlineData(Role.Announcer)]
    [InlineData(Role.Viewer)]
    public async Task Only_the_organiser_has_movements_of_their_own(Role role)
    {
        await using var host = await SmallHost.Start();
        var desk = await host.Organiser();
        await desk.PutText("/api/setup/movements/gate-ball", Own);
        var browser = role == Role.Viewer ? host.Browser() : await host.Joined(role, role == Role.Judge ? 1 : null);
        var before = await host.Registry.Setup.List(CancellationToken.None);

        Answer[] answers =
        [
            await browser.Get("/api/setup/movements/gate-ball"),
            await browser.PutText("/api/setup/movements/gate-ball", Own.Replace("Standing.", "Lying.", StringComparison.Ordinal)),
            await browser.Delete("/api/setup/movements/gate-ball"),
        ];

        Assert.All(answers, answer => Assert.Equal(role == Role.Viewer ? "not-signed-in" : "not-yours", answer.Code));
        Assert.Equal(before, await host.Registry.Setup.List(CancellationToken.None));
    }

    [Theory]
    [InlineData("\"name\":\"gate balls\",", "", "name")]
    [InlineData("\"start\":\"Standing.\",", "", "start")]
    [InlineData("\"finish\":\"The ball is through the gate.\",", "", "finish")]
    [InlineData("\"secondsPerUnit\":2.4", "\"secondsPerUnit\":0", "secondsPerUnit fastestSecondsPerUnit")]
    [InlineData("\"fastestSecondsPerUnit\":1", "\"fastestSecondsPerUnit\":3", "fastestSecondsPerUnit")]
    [InlineData("\"One throw.\"", "\" \"", "between[0]")]
    [InlineData("\"Any hand.\"", "\"Any\\u0007hand.\"", "allowed[0]")]
    [InlineData("\"past the gate\"", "\"\"", "faults[0].name")]
    [InlineData("\"past the gate\"", "\"past the gate by a finger or two\"", "faults[0].name")]
    [InlineData("\"second throw\"", "\"Past the gate\"", "faults[1].name")]
    [InlineData(",\"how\":\"\"", "", "faults[1].how")]
    [InlineData("\"wide gate\"", "\"\"", "variants[0].name")]
    [InlineData("\"movement\":\"wall-ball\"", "\"movement\":\"Wall Ball\"", "variants[0].movement")]
    [InlineData("\"source\":\"the organiser\",", "", "source")]
    [InlineData("\"basedOn\":\"wall-ball\"", "\"basedOn\":\"?\"", "basedOn")]
    [InlineData("\"basedOn\":\"wall-ball\"", "\"picture\":\"/api/setup/movements/gate-ball/picture?v=0123456789abcdef0123456789abcdef\"", "picture")]
    [InlineData("\"basedOn\":\"wall-ball\"", "\"picture\":\"https://elsewhere.test/a.png\"", "picture")]
    public async Task A_movement_that_cannot_be_is_refused_with_its_fields(string good, string bad, string fields)
    {
        await using var host = await SmallHost.Start();
        var desk = await host.Organiser();
        Assert.Contains(good, Own, StringComparison.Ordinal);

        var answer = await desk.PutText("/api/setup/movements/gate-ball", Own.Replace(good, bad, StringComparison.Ordinal));

        Assert.Equal((400, "bad-setup"), Told(answer));
        Assert.Equal(fields, answer.Fields());
        Assert.Empty(await host.Registry.Setup.List(CancellationToken.None));
    }

    [Fact]
    public async Task A_list_has_an_end()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.Organiser();
        var long21 = JsonNode.Parse(Own)!;
        long21["between"] = new JsonArray([.. Enumerable.Range(0, 21).Select(n => (JsonNode)$"Rule {n}.")]);

        Assert.Equal("between", (await desk.PutText("/api/setup/movements/gate-ball", long21.ToJsonString())).Fields());
    }

    [Theory]
    [InlineData("\"start\":\"Standing.\",", "", "movements[0].fullStandard.start")]
    [InlineData("\"One throw.\"", "\"\"", "movements[0].fullStandard.between[0]")]
    [InlineData("\"picture\":null", "\"picture\":\"https://elsewhere.test/a.png\"", "movements[0].fullStandard.picture")]
    public async Task A_workouts_standard_is_checked_part_by_part(string good, string bad, string fields)
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();
        const string Full = """{"start":"Standing.","finish":"Through.","between":["One throw."],"allowed":[],"faults":[],"caution":null,"picture":null}""";
        Assert.Contains(good, Full, StringComparison.Ordinal);

        Assert.Equal(200, (await desk.PutText("/api/setup/workouts/low-tide", With(Full))).Status);
        Assert.Equal(fields, (await desk.PutText("/api/setup/workouts/low-tide", With(Full.Replace(good, bad, StringComparison.Ordinal)))).Fields());

        static string With(string full) => SetupSome.Workout.Replace("\"standard\":\"Hips below knees.\"", $"\"standard\":\"Hips below knees.\",\"fullStandard\":{full}", StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_workout_keeps_its_copy_when_the_movement_changes_or_goes()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();
        await desk.PutText("/api/setup/movements/wall-ball", Own.Replace("gate-ball", "wall-ball", StringComparison.Ordinal));
        var before = (await desk.Get("/api/setup")).Json.GetProperty("workouts").GetRawText();

        await desk.Delete("/api/setup/movements/wall-ball");

        Assert.Equal(before, (await desk.Get("/api/setup")).Json.GetProperty("workouts").GetRawText());
        Assert.Null(await host.Registry.Setup.Get(SetupKind.Movement, "wall-ball", CancellationToken.None));
    }

    private static (int, string) Told(Answer answer) => (answer.Status, answer.Code);
}
