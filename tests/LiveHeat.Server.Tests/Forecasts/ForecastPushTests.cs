using LiveHeat.Engine.Callouts;
using LiveHeat.Testing;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Forecasts;

public sealed class ForecastPushTests(SharedFloor shared) : FloorTest(shared)
{
    [Fact]
    public async Task A_lead_taken_is_pushed_to_whoever_watches_the_forecast_and_to_nobody_else()
    {
        var heat = await Floor.Run(lanes: 2);
        await using var announcer = await HubViewer.Connect(Floor.Visitor());
        await using var board = await HubViewer.Connect(Floor.Visitor());
        await announcer.Watch(heat.Id);
        await board.Watch(heat.Id);
        Assert.Empty((await announcer.WatchForecast())!.Callouts);
        await heat[1].Finish(1);

        var receipt = await heat[2].Finish(2, afterSeconds: 60);
        var told = await announcer.Forecasts.First(forecast => forecast.Sequence >= receipt.Sequence);

        var lead = told.Callouts[0];
        Assert.Equal((CalloutKind.Lead, 1), (lead.Kind, lead.Place));
        Assert.Equal([Some.Lane(2), Some.Lane(1)], lead.Lanes);
        await board.Frame(receipt.Sequence!.Value);
        Assert.Empty(board.Forecasts.All);
    }

    [Fact]
    public async Task Before_anything_is_known_every_lane_is_there_and_nothing_is_said_of_it()
    {
        var heat = await Floor.Run(lanes: 3);
        await using var announcer = await HubViewer.Connect(Floor.Visitor());
        await announcer.Watch(heat.Id);

        var told = (await announcer.WatchForecast())!;

        Assert.Equal(3, told.Lanes.Count);
        Assert.All(told.Lanes, lane => Assert.Equal((null, null, null, null), (lane.FinishMs, lane.EarlyMs, lane.LateMs, lane.BeatsCap)));
        Assert.All(told.Lanes, lane => Assert.Null(lane.Places));
    }

    [Fact]
    public async Task The_forecast_is_that_of_the_heat_watched_and_there_is_none_before_a_call()
    {
        var (first, second) = (await Floor.Run(lanes: 1), await Floor.Run(lanes: 2));
        var planned = await Floor.Plan(lanes: 1);
        await using var screen = await HubViewer.Connect(Floor.Visitor());

        await screen.Watch(first.Id);
        Assert.Equal(first.Id, (await screen.WatchForecast())!.Heat.Value);
        await screen.Watch("current");
        Assert.Equal(second.Id, (await screen.WatchForecast())!.Heat.Value);
        await screen.Watch(planned.Id);
        Assert.Null(await screen.WatchForecast());
    }

    [Fact]
    public async Task A_result_that_comes_in_is_pushed_to_whoever_watches_the_next_heat_though_nothing_happens_there()
    {
        var first = await Floor.Run(lanes: 2);
        var next = await Floor.Call(lanes: 2);
        await first[1].Finish(9, afterSeconds: 300);
        await first[2].Finish(9, afterSeconds: 5);
        await using var announcer = await HubViewer.Connect(Floor.Visitor());
        await announcer.Watch(next.Id);
        Assert.Empty((await announcer.WatchForecast())!.Callouts);

        await first.EndAndFreeze();
        var posted = await announcer.Forecasts.First(forecast => forecast.Callouts.Count > 0);
        Assert.Equal((CalloutKind.HeatResult, first.Id, false), (posted.Callouts[0].Kind, posted.Callouts[0].Earlier!.Heat.Value, posted.Callouts[0].Earlier!.Official));

        await first.Certify();
        var signed = await announcer.Forecasts.First(forecast => forecast.Callouts.Any(callout => callout.Earlier!.Official));
        Assert.Equal(5_000, signed.Callouts[0].Earlier!.AheadMs);
        Assert.All(announcer.Forecasts.All, forecast => Assert.Equal(next.Id, forecast.Heat.Value));
    }

    /// <summary>The last heat of a workout comes in, and the next heat on the floor is of another workout.</summary>
    [Fact]
    public async Task Who_leads_over_the_whole_competition_is_pushed_where_the_result_is_on_the_screen_and_where_the_next_heat_is()
    {
        await using var floor = await TestFloor.Open();    // the standings are those of all heats of a floor
        (await floor.Organiser.Put("/api/setup/workouts/w-other", Some.Workout() with { Id = "w-other", Name = "Other work" })).Fine();
        var first = await floor.Run(lanes: 2);
        await first[1].Finish(9, afterSeconds: 300);
        await first[2].Finish(9, afterSeconds: 5);
        var next = await floor.Call(lanes: 2, workout: "w-other");
        await using var announcer = await HubViewer.Connect(floor.Visitor());
        await announcer.Watch(next.Id);
        await announcer.WatchForecast();
        await using var behind = await HubViewer.Connect(floor.Visitor());
        await behind.Watch(first.Id);
        await behind.WatchForecast();

        await first.EndAndFreeze();

        foreach (var viewer in new[] { announcer, behind })
        {
            var told = await viewer.Forecasts.First(forecast => forecast.Callouts.Any(callout => callout.Kind == CalloutKind.OverallLead));
            Assert.Equal(("Team 1", 1m, 1m, false), told.Callouts.Single(callout => callout.Kind == CalloutKind.OverallLead).Overall is { } lead ? (lead.Teams[0], lead.Points, lead.Ahead, lead.Official) : default);
        }

        await first.Certify();
        await announcer.Forecasts.First(forecast => forecast.Callouts.Any(callout => callout.Overall is { Official: true }));
    }

    [Fact]
    public async Task An_earlier_heat_that_is_signed_is_told_where_the_screens_are_with_a_result_themselves()
    {
        await using var floor = await TestFloor.Open();
        (await floor.Organiser.Put("/api/setup/workouts/w-other", Some.Workout() with { Id = "w-other", Name = "Other work" })).Fine();
        var (first, second) = (await Raced(floor, "w1"), await Raced(floor, "w-other"));
        await using var announcer = await HubViewer.Connect(floor.Visitor());
        await announcer.Watch(second.Id);
        Assert.Contains((await announcer.WatchForecast())!.Callouts, callout => callout.Overall is { Official: false } lead && lead.Heat.Value == second.Id);

        floor.Time.Advance(TimeSpan.FromSeconds(1));
        await first.Certify();

        var told = await announcer.Forecasts.First(forecast => forecast.Callouts.Any(callout => callout.Overall?.Heat.Value == first.Id));
        Assert.Equal(second.Id, told.Heat.Value);
    }

    private static async Task<TestHeat> Raced(TestFloor floor, string workout)
    {
        var heat = await floor.Run(lanes: 2, workout: workout);
        await heat[1].Finish(9, afterSeconds: 300);
        await heat[2].Finish(9, afterSeconds: 5);
        await heat.EndAndFreeze();
        return heat;
    }

    [Fact]
    public async Task What_is_foretold_is_made_once_a_second_and_what_is_said_from_the_newest_fact()
    {
        var heat = await Floor.Run(lanes: 2);
        await using var announcer = await HubViewer.Connect(Floor.Visitor());
        await announcer.Watch(heat.Id);
        foreach (var step in Enumerable.Range(1, 4))
        {
            await heat[1].Finish(step);
            await heat[2].Finish(step);
        }

        var before = (await announcer.WatchForecast())!;
        Assert.NotNull(before.Lanes[0].FinishMs);
        var receipt = await heat[1].Finish(5, afterSeconds: 0.5);
        var soon = (await announcer.WatchForecast())!;
        Assert.Equal((before.Lanes, receipt.Sequence), (soon.Lanes, soon.Sequence));

        Floor.Time.Advance(TimeSpan.FromSeconds(1));
        Assert.NotEqual(before.Lanes, (await announcer.WatchForecast())!.Lanes);
    }

    [Fact]
    public async Task The_second_heat_of_a_workout_begins_with_what_the_first_showed_and_a_set_is_fastest_of_the_day_against_it()
    {
        var first = await Floor.Run(lanes: 2);
        await using var announcer = await HubViewer.Connect(Floor.Visitor());
        await Work(first, 4, afterSeconds: 30);
        var before = await Told(first);
        await Work(first, 9, afterSeconds: 30, from: 5);
        await first.Do(Floor.Organiser, "end");

        var second = await Floor.Run(lanes: 2);
        await Work(second, 4, afterSeconds: 30);
        var after = await Told(second);
        await second[1].Finish(5, afterSeconds: 10);
        var faster = await Told(second);

        Assert.All(before.Lanes.Zip(after.Lanes), pair => Assert.True(pair.First.FinishMs > 0 && pair.Second.FinishMs > 0 && pair.First.FinishMs != pair.Second.FinishMs));
        Assert.DoesNotContain(before.Callouts, callout => callout.Kind == CalloutKind.FastestSet);
        var best = Assert.Single(faster.Callouts, callout => callout.Kind == CalloutKind.FastestSet);
        Assert.Equal((true, 5, Some.Lane(1)), (best.OfDay, best.Step, best.Lanes[0]));

        async Task<Contracts.Forecasts.ForecastFrame> Told(TestHeat heat)
        {
            Floor.Time.Advance(TimeSpan.FromSeconds(1.5));
            await announcer.Watch(heat.Id);
            return (await announcer.WatchForecast())!;
        }

        // Both lanes do each step in the same time.
        static async Task Work(TestHeat heat, int last, double afterSeconds, int from = 1)
        {
            for (var step = from; step <= last; step++)
            {
                await heat[1].Finish(step, afterSeconds);
                await heat[2].Finish(step, afterSeconds: 0);
            }
        }
    }
}
