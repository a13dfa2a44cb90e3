using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Contracts.Standings;
using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Scoring;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Result;

/// <summary>A heat for the heaviest load through the server's addresses, from the attempt to the page and the files.</summary>
public sealed class LoadResultTests(SharedFloor shared) : FloorTest(shared)
{
    [Fact]
    public async Task Loads_are_told_in_kilograms_on_frames_pages_and_files()
    {
        var heat = await Lifting();
        await heat[1].SendOne(Attempt(heat[1], 1, 102.5, true));
        Assert.Equal(TapOutcome.Accepted, (await heat[1].SendOne(Attempt(heat[1], 2, 110, false, "not low enough"))).Outcome);
        await heat[1].SendOne(heat[1].Tap("tag-made", ("step", 3)));
        await heat[1].SendOne(Attempt(heat[1], 4, 60.25, true));
        await heat[2].SendOne(Attempt(heat[2], 1, 90, true));

        var (frame, sheet) = (await heat.Frame(), (await Floor.Visitor().Get($"{heat.Path}/sheet")).Read<Sheet>());
        var result = (await Floor.Visitor().Get($"{heat.Path}/result")).Read<ResultTable>();
        var page = (await Floor.Visitor().Get($"/result/{heat.Id}")).Fine().Text;
        var csv = (await Floor.Visitor().Get($"{heat.Path}/result.csv")).Fine().Text;
        var splits = (await Floor.Visitor().Get($"{heat.Path}/splits.csv")).Fine().Text;

        var kilograms = new ScoreUnit(Unit.Kg, 1000);
        Assert.Equal((162_750, kilograms, 72_750), (frame.Lanes[0].Worth, frame.Lanes[0].Score, frame.Lanes[1].GapWorth));
        Assert.All(sheet.Lanes, lane => Assert.Equal(kilograms, lane.Score));
        Assert.Equal(["Ann 102.5 good", "Ann 110 no lift: not low enough", "Bo 60.25 good"], result.Lanes[0].Attempts!.Select(Told));
        Assert.Contains("162.75 kg", page, StringComparison.Ordinal);
        Assert.Contains("110 kg, no lift: not low enough", page, StringComparison.Ordinal);
        Assert.Contains("the best good lift of each athlete, added up. Equal loads share the place.", page, StringComparison.Ordinal);
        Assert.Contains(",162.75,kg", csv, StringComparison.Ordinal);
        Assert.Contains(",1,,110,False", splits, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_attempt_without_a_load_or_with_one_that_cannot_be_is_refused_with_a_sentence()
    {
        var heat = await Lifting();
        var none = await heat[1].SendOne(heat[1].Tap("attempt-judged", ("step", 1), ("good", true)));
        var heavy = await heat[1].SendOne(Attempt(heat[1], 1, 1000.5, true));

        Assert.Equal((TapOutcome.Refused, "unreadable"), (none.Outcome, none.Code));
        Assert.Contains("a field is missing", none.Detail, StringComparison.Ordinal);
        Assert.Equal((TapOutcome.Refused, "unreadable"), (heavy.Outcome, heavy.Code));
        Assert.Contains("at most 1,000", heavy.Detail, StringComparison.Ordinal);
        Assert.Equal(1, (await heat.Frame()).Lanes[0].Open);
    }

    [Fact]
    public async Task Through_all_attempts_the_lane_is_done_without_a_time_and_the_standings_tell_the_load()
    {
        var heat = await Lifting();
        await heat[1].SendOne(Attempt(heat[1], 1, 100, true));
        await heat[1].SendOne(Attempt(heat[1], 8, 327.5, true));
        var lane = (await heat.Frame()).Lanes[0];

        Assert.Equal((LaneStatus.Through, null, null), (lane.Status, lane.FinishMs, lane.OfficialMs));
        Assert.Equal(Outcome.Through, (await Floor.Visitor().Get($"{heat.Path}/result")).Read<ResultTable>().Lanes[0].Outcome);
        Assert.Contains((await Floor.Visitor().Get("/api/standings")).Read<StandingsTable>().Divisions.SelectMany(division => division.Lines).SelectMany(line => line.Scores),
            score => score is { Score.Unit: Unit.Kg, Worth: 427_500 });
        Assert.Contains("427.5 kg", (await Floor.Visitor().Get("/standings")).Fine().Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Reps_are_told_without_a_unit_as_before()
    {
        var heat = await Floor.Run(lanes: 1);
        var (frame, result) = ((await Floor.Visitor().Get($"{heat.Path}/frame")).Fine().Text, (await Floor.Visitor().Get($"{heat.Path}/result")).Fine().Text);

        Assert.DoesNotContain("\"score\"", frame, StringComparison.Ordinal);
        Assert.DoesNotContain("\"score\"", result, StringComparison.Ordinal);
        Assert.DoesNotContain("\"attempts\"", result, StringComparison.Ordinal);
    }

    private static string Told(ResultAttempt attempt) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{attempt.Athlete} {attempt.Load} {(attempt.Good ? "good" : $"no lift: {attempt.Fault}")}");

    private static System.Text.Json.Nodes.JsonObject Attempt(LaneJudge judge, int step, double load, bool good, string? fault = null) =>
        judge.Tap("attempt-judged", ("step", step), ("load", load), ("good", good), ("fault", fault));

    /// <summary>Two attempts each, three athletes: 1 2, tag 3, 4 5, tag 6, 7 8.</summary>
    private async Task<TestHeat> Lifting()
    {
        (await Floor.Organiser.Put("/api/setup/workouts/w-lift", Some.Lifting(attempts: 2) with { Id = "w-lift" })).Fine();
        return await Floor.Run(lanes: 2, workout: "w-lift");
    }
}
