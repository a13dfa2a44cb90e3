using LiveHeat.Server.Access;

namespace LiveHeat.Server.Setup;

public sealed class WorkoutSetupCheckTests
{
    [Theory]
    [InlineData("\"name\":\"Low Tide\",", "", "name")]
    [InlineData("\"order\":{\"kind\":\"in-turn\"},", "", "order")]
    [InlineData("\"kind\":\"in-turn\"", "\"kind\":\"listed\",\"athletes\":[]", "order.athletes")]
    [InlineData("\"kind\":\"in-turn\"", "\"kind\":\"blocks\",\"size\":0", "order.size")]
    [InlineData("\"id\":\"wall-ball\",", "", "movements[0].id")]
    [InlineData("\"id\":\"wall-ball\",", "\"id\":\"Wall Ball\",", "movements[0].id")]
    [InlineData("\"standard\":\"Hips below knees.\",", "", "movements[0].standard")]
    [InlineData("\"faults\":[\"Ball short of the line\"]", "\"faults\":[\"\"]", "movements[0].faults[0]")]
    [InlineData("\"capMs\":720000", "\"capMs\":0", "prescriptions[0].capMs")]
    [InlineData("\"rounds\":8", "\"rounds\":-1", "prescriptions[0].rounds")]
    [InlineData("\"division\":\"open\"", "\"division\":\"rx\"", "prescriptions[0].division")]
    [InlineData("\"division\":\"open\",", "", "prescriptions[0].division")]
    [InlineData("\"movement\":\"wall-ball\",", "", "prescriptions[0].round[0].movement")]
    [InlineData("\"movement\":\"wall-ball\",", "\"movement\":\"row\",", "prescriptions[0].round[0].movement")]
    [InlineData("\"quantity\":18", "\"quantity\":0", "prescriptions[0].round[0].quantity")]
    [InlineData("\"quantity\":18", "\"quantity\":18,\"worth\":100001", "prescriptions[0].round[0].worth")]
    [InlineData("\"quantity\":18", "\"quantity\":18,\"load\":\"6\\u0000kg\"", "prescriptions[0].round[0].load")]
    public async Task A_workout_that_cannot_be_is_refused_with_its_fields(string good, string bad, string fields)
    {
        await using var host = await SmallHost.Start();
        var desk = await host.Organiser();
        await desk.Put("/api/setup/divisions/open", new { id = "open", name = "Open" });
        Assert.Contains(good, SetupSome.Workout, StringComparison.Ordinal);

        var answer = await desk.PutText("/api/setup/workouts/low-tide", SetupSome.Workout.Replace(good, bad, StringComparison.Ordinal));

        Assert.Equal(400, answer.Status);
        Assert.Equal("bad-setup", answer.Code);
        Assert.Equal(fields, answer.Fields());
    }

    [Fact]
    public async Task A_division_has_one_prescription()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();
        var one = SetupSome.Workout[SetupSome.Workout.IndexOf("{\"division\"", StringComparison.Ordinal)..].TrimEnd()[..^2];

        var answer = await desk.PutText("/api/setup/workouts/low-tide", SetupSome.Workout.Replace(one, $"{one},{one}", StringComparison.Ordinal));

        Assert.Equal("prescriptions[1].division", answer.Fields());
    }

    [Fact]
    public async Task A_change_that_a_team_of_a_planned_heat_cannot_do_is_refused_with_the_lane()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();
        var listed = SetupSome.Workout.Replace("\"kind\":\"in-turn\"", "\"kind\":\"listed\",\"athletes\":[1,2,3]", StringComparison.Ordinal);

        var refused = await desk.PutText("/api/setup/workouts/low-tide", listed);

        Assert.Equal("bad-setup", refused.Code);
        Assert.Contains("Heat 1, lane 1: Harbour Anvils has 2 athletes; the list names athlete 3.", refused.Detail, StringComparison.Ordinal);

        // A heat that was called has its own copy.
        host.Called.Add(new("h1"));
        Assert.Equal(200, (await desk.PutText("/api/setup/workouts/low-tide", listed)).Status);
    }

    [Fact]
    public async Task A_team_cannot_move_to_a_division_that_its_heats_workout_does_not_know()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();
        await desk.Put("/api/setup/divisions/rx", new { id = "rx", name = "Rx" });

        var answer = await desk.Put("/api/setup/teams/t-gulls", SetupSome.Team("t-gulls", "Gull Street", "rx"));

        Assert.Equal("division", answer.Fields());
        Assert.StartsWith("Heat 1, lane 2: ", answer.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_heat_takes_only_teams_that_can_do_its_workout()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();
        await desk.Put("/api/setup/divisions/rx", new { id = "rx", name = "Rx" });
        await desk.Put("/api/setup/teams/t-rx", SetupSome.Team("t-rx", "Rx Team", "rx"));

        var answer = await desk.Put("/api/setup/heats/h2", SetupSome.Heat("h2", 2, (1, "t-gulls"), (2, "t-rx")));

        Assert.Equal("lanes[1].team", answer.Fields());
        Assert.StartsWith("Lane 2: Rx Team: Low Tide has no prescription", answer.Detail, StringComparison.Ordinal);
    }
}
