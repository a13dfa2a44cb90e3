using System.Text.Json;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Live;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Live;

/// <summary>The one address that pages of other origins may read.</summary>
public sealed class LiveEndpointsTests(SharedFloor shared) : FloorTest(shared)
{
    private static readonly (string, string) Elsewhere = ("Origin", "https://elsewhere.example");

    [Fact]
    public async Task A_page_of_another_origin_reads_where_everybody_is_and_its_tag_until_something_changes()
    {
        var heat = await Floor.Run(lanes: 2);
        await heat[1].Finish(1);

        var answer = (await Floor.Visitor().Get($"/api/live/{heat.Id}", Elsewhere)).Fine();

        var live = answer.Read<LiveHeatFrame>();
        Assert.Equal((heat.Id, "Breakwater Relays", "Low Tide", Phase.Running, false), (live.Heat.Value, live.Competition, live.Workout, live.Phase, live.Official));
        Assert.Equal((await heat.Frame()).Start!.GoAt, live.GoAt);
        Assert.Equal((1, "Team 1", 1, 10, LaneStatus.Working), (live.Lanes[0].Lane.Value, live.Lanes[0].Team, live.Lanes[0].Place, live.Lanes[0].Worth, live.Lanes[0].Status));
        Assert.Equal("12 cal row", live.Lanes[0].Doing);
        Assert.Equal(("*", "ETag", "public, max-age=1"), (Header(answer, "Access-Control-Allow-Origin"), Header(answer, "Access-Control-Expose-Headers"), Header(answer, "Cache-Control")));
        Assert.False(answer.Message.Headers.Contains("Access-Control-Allow-Credentials"));
        Assert.False(answer.Message.Headers.Contains("Set-Cookie"));

        var tag = answer.Message.Headers.ETag!.ToString();
        Floor.Time.Advance(TimeSpan.FromSeconds(1));
        var again = await Floor.Visitor().Get($"/api/live/{heat.Id}", Elsewhere, ("If-None-Match", tag));
        Assert.Equal((304, "", "*", "public, max-age=1"), (again.Status, again.Text, Header(again, "Access-Control-Allow-Origin"), Header(again, "Cache-Control")));

        await heat[2].Finish(1);
        Assert.Equal(200, (await Floor.Visitor().Get($"/api/live/{heat.Id}", Elsewhere, ("If-None-Match", tag))).Status);
    }

    [Fact]
    public async Task The_browsers_question_before_it_is_answered_for_reading_and_nothing_else()
    {
        var answer = await Floor.Visitor().Send(
            HttpMethod.Options, "/api/live/current", null, Elsewhere, ("Access-Control-Request-Method", "GET"), ("Access-Control-Request-Headers", "if-none-match"));

        Assert.Equal((204, "*", "GET", "If-None-Match"),
            (answer.Status, Header(answer, "Access-Control-Allow-Origin"), Header(answer, "Access-Control-Allow-Methods"), Header(answer, "Access-Control-Allow-Headers")));
        Assert.Equal(405, (await Floor.Organiser.Post("/api/live/current", new { })).Status);
    }

    [Fact]
    public async Task No_person_is_named_and_nothing_is_told_that_is_the_floors_own()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat[1].Finish(1);
        await heat[1].Finish(2);
        var open = (await heat.Frame()).Lanes[0].Open;
        var people = (await Floor.Visitor().Get($"{heat.Path}/sheet")).Read<Contracts.Sheets.Sheet>().Lanes[0].Athletes;

        var text = (await Floor.Visitor().Get($"/api/live/{heat.Id}")).Fine().Text;

        Assert.Equal(3, open);                                      // the tag, whose words name who is tagged
        Assert.NotEmpty(people);
        Assert.All(people, name => Assert.DoesNotContain($"\"{name}\"", text, StringComparison.Ordinal));
        Assert.DoesNotContain("Judge 1", text, StringComparison.Ordinal);
        Assert.Equal("tag", JsonDocument.Parse(text).RootElement.GetProperty("lanes")[0].GetProperty("doing").GetString());
        var fields = JsonDocument.Parse(text).RootElement.GetProperty("lanes")[0].EnumerateObject().Select(field => field.Name);
        Assert.Equal(["lane", "team", "division", "status", "round", "doing", "worth", "worthOfAll", "place", "tied", "gapMs", "resultMs"], fields);
    }

    [Fact]
    public async Task Current_is_the_heat_that_runs_though_the_next_is_called_and_the_next_when_its_result_was_held()
    {
        await using var floor = await TestFloor.Open();     // what another test left running would be current too
        var running = await floor.Run(lanes: 1);
        var first = (await floor.Visitor().Get("/api/live/current", Elsewhere)).Fine();
        var tag = first.Message.Headers.ETag!.ToString();
        Task<Reply> Again() => floor.Visitor().Get("/api/live/current", Elsewhere, ("If-None-Match", tag));

        var called = await floor.Call();
        Assert.Equal((running.Id, 304), (first.Read<LiveHeatFrame>().Heat.Value, (await Again()).Status));

        await running.Do(floor.Organiser, "end");
        Assert.Equal(running.Id, (await Again()).Read<LiveHeatFrame>().Heat.Value);      // its result is held
        floor.Time.Advance(TimeSpan.FromMinutes(2));
        Assert.Equal(called.Id, (await Again()).Read<LiveHeatFrame>().Heat.Value);
    }

    [Fact]
    public async Task By_the_clock_the_next_round_changes_the_tag_though_nobody_tapped()
    {
        var rounds = Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 3, capMs: 240_000) with { Clock = new WorkClock(60_000, 30_000, Repeat: false) })
            with
        { Id = "w-clock", Scoring = new ScoringRule.MostWork() };
        (await Floor.Organiser.Put("/api/setup/workouts/w-clock", rounds)).Fine();
        var heat = await Floor.Run(lanes: 1, workout: rounds.Id);
        async Task<(string Tag, LiveLane? Lane)> After(int seconds, string? known = null)
        {
            Floor.Time.Advance(TimeSpan.FromSeconds(seconds));
            var answer = await Floor.Visitor().Get($"/api/live/{heat.Id}", known is null ? Elsewhere : ("If-None-Match", known));
            return (answer.Message.Headers.ETag!.ToString(), answer.Status == 304 ? null : answer.Read<LiveHeatFrame>().Lanes[0]);
        }

        var (first, lane) = await After(10);
        Assert.Equal((1, "10 wall balls", false, (await heat.Frame()).Start!.GoAt + 60_000), (lane!.Round, lane.Doing, lane.Resting, lane.TurnsAt));
        Assert.Equal((first, null), await After(10, first));                                     // nothing changes within the round
        var (rest, resting) = await After(50, first);
        Assert.Equal((1, null, true), (resting!.Round, resting.Doing, resting.Resting));
        var (second, next) = await After(25, rest);
        Assert.Equal((2, "10 wall balls", false), (next!.Round, next.Doing, next.Resting));
        Assert.Equal(3, new[] { first, rest, second }.Distinct().Count());
    }

    [Fact]
    public async Task A_heat_that_was_not_called_is_told_to_other_origins_too_and_is_not_kept()
    {
        var planned = await Floor.Plan();

        var answer = await Floor.Visitor().Get($"/api/live/{planned.Id}", Elsewhere);

        Assert.Equal((404, "no-such-heat", "*", "no-store"), (answer.Status, answer.Code, Header(answer, "Access-Control-Allow-Origin"), Header(answer, "Cache-Control")));
    }

    /// <summary>Every other address stays our own pages'.</summary>
    [Theory]
    [InlineData("frame")]
    [InlineData("sheet")]
    [InlineData("result")]
    public async Task No_other_address_may_be_read_from_elsewhere(string what)
    {
        var heat = await Floor.Call();

        Assert.False((await Floor.Visitor().Get($"{heat.Path}/{what}", Elsewhere)).Message.Headers.Contains("Access-Control-Allow-Origin"));
    }

    private static string Header(Reply answer, string name) =>
        answer.Message.Headers.TryGetValues(name, out var values) ? string.Join(", ", values) : "";
}
