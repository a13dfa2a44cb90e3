using System.Globalization;
using CsvHelper;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Exports;

public sealed class ExportEndpointsTests(SharedFloor shared) : FloorTest(shared)
{
    private static List<IDictionary<string, object>> Rows(string text)
    {
        using var reader = new CsvReader(new StringReader(text.TrimStart('\uFEFF')), CultureInfo.InvariantCulture);
        return [.. reader.GetRecords<dynamic>().Select(row => (IDictionary<string, object>)row)];
    }

    [Fact]
    public async Task A_result_is_a_row_a_team_and_splits_a_row_a_step()
    {
        var heat = await Floor.Run(lanes: 2);
        for (var step = 1; step <= 9; step++)
        {
            await heat[2].Finish(step);
        }

        await heat[1].SendOne(heat[1].Done(1));
        await heat.Do(Floor.HeadJudge, "penalise", new { lane = 2, addMs = 5000, reason = "left too early" });
        await heat.Do(Floor.Organiser, "end");

        var answer = await Floor.Visitor().Get($"{heat.Path}/result.csv");
        var result = Rows(answer.Fine().Text);
        var splits = Rows((await Floor.Visitor().Get($"{heat.Path}/splits.csv")).Fine().Text);

        Assert.Equal("text/csv", answer.Message.Content.Headers.ContentType?.MediaType);
        Assert.Equal($"result-{heat.Id}.csv", answer.Message.Content.Headers.ContentDisposition?.FileName);
        Assert.Equal(["1 Team 2 3:05.0 185000 finished", "2 Team 1   capped"], result.Select(row => $"{row["place"]} {row["team"]} {row["time"]} {row["time_ms"]} {row["outcome"]}"));
        Assert.Equal("5000", result[0]["penalty_ms"]);
        Assert.Equal(18, splits.Count);
        Assert.Equal("1 1 10 wall balls Ann", string.Join(' ', new[] { "lane", "step", "label", "athlete" }.Select(column => splits[0][column])));
        Assert.Equal("", splits[1]["time_ms"]);
    }

    [Fact]
    public async Task Facts_are_for_the_desk_and_have_every_entry_with_its_JSON()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat[1].SendOne(heat[1].Done(1));
        var facts = Rows((await Floor.Organiser.Get($"{heat.Path}/facts.csv")).Fine().Text);

        Assert.Equal((await heat.Frame()).Sequence, facts.Count);
        Assert.Contains(facts, row => (string)row["fact"] == "step-done" && (string)row["lane"] == "1" && ((string)row["json"]).Contains("\"step\":1", StringComparison.Ordinal));
        Assert.Equal("not-signed-in", (await Floor.Visitor().Get($"{heat.Path}/facts.csv")).Code);
    }

    [Fact]
    public async Task Standings_are_a_row_for_every_team_and_workout()
    {
        var heat = await Floor.Run(lanes: 2);
        await heat[2].Finish(1);

        Assert.Contains(Rows((await Floor.Visitor().Get("/api/standings.csv")).Fine().Text), row => (string)row["team"] == "Team 2" && (string)row["heat"] == heat.Id);
    }

    /// <summary>Columns that came later stand last, so that nobody's sheet moves.</summary>
    [Fact]
    public void Most_work_is_told_in_rounds_and_reps_too()
    {
        var endless = Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 0, capMs: 300_000)) with { Scoring = new ScoringRule.MostWork() };
        var heat = HeatScript.Play("start\nlane 1 step 6 done at 3:00\nlane 1 4 reps at cap in step 7 at 5:01\nend at 5:10", Some.Snapshot(1, endless));
        var file = Assert.IsType<Microsoft.AspNetCore.Http.HttpResults.FileContentHttpResult>(ExportEndpoints.Result(ResultMaking.Of(heat, "", HeatScript.At("6:00"))!));
        var text = System.Text.Encoding.UTF8.GetString(file.FileContents.Span);

        Assert.Equal(("48", "2", "4"), (Rows(text)[0]["worth"], Rows(text)[0]["rounds"], Rows(text)[0]["reps"]));
        Assert.EndsWith(",pending,rounds,reps", text.Split('\n')[0].Trim(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_heat_that_is_not_there_is_told() => Assert.Equal((404, "no-such-heat"), await Told("/api/heats/nowhere/result.csv"));

    /// <summary>A name that a spreadsheet would run is written as text (OWASP, CSV injection, from memory).</summary>
    [Theory]
    [InlineData("=1+2")]
    [InlineData("@SUM(A1)")]
    public void A_cell_that_begins_like_a_formula_is_no_formula(string name)
    {
        var file = Assert.IsType<Microsoft.AspNetCore.Http.HttpResults.FileContentHttpResult>(Csv.File("x", ["team"], [[name]]));
        var text = System.Text.Encoding.UTF8.GetString(file.FileContents.Span);

        Assert.DoesNotContain($"\n{name}", text, StringComparison.Ordinal);
        Assert.Contains(name, text, StringComparison.Ordinal);
    }

    private async Task<(int Status, string? Code)> Told(string path)
    {
        var answer = await Floor.Visitor().Get(path);
        return (answer.Status, answer.Code);
    }
}
