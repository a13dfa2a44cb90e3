using LiveHeat.Server.Access;

namespace LiveHeat.Server.Setup;

/// <summary>A small competition, as a desk sends it.</summary>
internal static class SetupSome
{
    public const string Workout = """
        {"id":"low-tide","name":"Low Tide","order":{"kind":"in-turn"},"counting":"sets","checkpointEvery":5,"finish":"none",
         "movements":[{"id":"wall-ball","name":"wall balls","unit":"reps","secondsPerUnit":2.6,"fastestSecondsPerUnit":1.0,"standard":"Hips below knees.","faults":["Ball short of the line"]}],
         "prescriptions":[{"division":"open","divisionName":"Open","capMs":720000,"rounds":8,"before":[],"round":[{"movement":"wall-ball","quantity":18}],"after":[]}]}
        """;

    public static object Team(string id, string name, string division = "open", params string[] athletes) =>
        new { id, name, division, athletes = athletes.Length == 0 ? ["Joss", "Ilka"] : athletes };

    public static object Heat(string id, int number, params (int Lane, string Team)[] lanes) =>
        new { id, number, title = $"Heat {number}", workout = "low-tide", lanes = lanes.Select(lane => new { lane = lane.Lane, team = lane.Team }).ToArray() };

    /// <summary>Division, workout, two teams and a heat of both.</summary>
    public static async Task<Browser> SetUp(this SmallHost host)
    {
        var desk = await host.Organiser();
        Answer[] answers =
        [
            await desk.Put("/api/setup/competition", new { name = "Breakwater Relays" }),
            await desk.Put("/api/setup/divisions/open", new { id = "open", name = "Open" }),
            await desk.PutText("/api/setup/workouts/low-tide", Workout),
            await desk.Put("/api/setup/teams/t-anvils", Team("t-anvils", "Harbour Anvils")),
            await desk.Put("/api/setup/teams/t-gulls", Team("t-gulls", "Gull Street")),
            await desk.Put("/api/setup/heats/h1", Heat("h1", 1, (1, "t-anvils"), (2, "t-gulls"))),
        ];
        Assert.All(answers, answer => Assert.True(answer.Status == 200, answer.ToString()));
        return desk;
    }

    /// <summary>The fields that a refusal names.</summary>
    public static string Fields(this Answer answer) =>
        string.Join(" ", answer.Json.GetProperty("errors").EnumerateArray().Select(error => error.GetProperty("field").GetString()));
}
