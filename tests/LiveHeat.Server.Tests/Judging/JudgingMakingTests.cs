using LiveHeat.Contracts.Judging;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Judging;

public sealed class JudgingMakingTests(SharedFloor shared) : FloorTest(shared)
{
    /// <summary>Lane 1 has nine no-reps in its wall balls, the others none; steps 1, 4, 7 are wall balls of ten.</summary>
    private static readonly HeatState Strict = HeatScript.Play("start\n"
        + string.Concat(Enumerable.Repeat("lane 1 no-rep step 1 at 0:20\n", 9))
        + string.Concat(Enumerable.Range(1, 6).Select(lane => $"lane {lane} step 1 done at 0:30\nlane {lane} step 4 done at 1:30\nlane {lane} step 7 done at 2:30\n")), Some.Snapshot(6));

    [Fact]
    public void A_lane_that_stands_out_is_asked_about_with_its_figures()
    {
        var lanes = JudgingMaking.Of(Strict)!.Lanes;

        Assert.Equal([1], lanes.Where(lane => lane.StandsOut).Select(lane => lane.Lane.Value));
        Assert.Equal((30, 9, "Judge s-1"), (lanes[0].Reps, lanes[0].NoReps, lanes[0].Judge));
        Assert.InRange(lanes[0].Expected, 1, 2);                            // 9 of 180 reps, 30 of them its own
        Assert.Equal(90_000, lanes[0].SinceMs);                             // the first look is after 20 reps
        var wallBalls = Assert.Single(lanes[0].Movements);
        Assert.Equal(("wall balls", 150, 0), (wallBalls.Movement, wallBalls.FloorReps, wallBalls.FloorNoReps));
        Assert.InRange(9 / 39.0, wallBalls.Rate.From, wallBalls.Rate.To);
    }

    [Fact]
    public void A_judge_has_a_page_with_what_all_others_gave_beside_it()
    {
        var pages = JudgingMaking.Judges([Strict, Strict with { Heat = new HeatId("h2") }]);
        var page = pages.Single(page => page.Judge == "Judge s-1");

        Assert.Equal(6, pages.Count);
        Assert.Equal((2, 60, 18, 300), (page.Heats, page.Movements[0].Reps, page.Movements[0].NoReps, page.Movements[0].FloorReps));
    }

    [Fact]
    public void A_set_belongs_to_the_judge_who_had_the_lane_when_it_was_done()
    {
        var heat = HeatScript.Play("""
            start
            lane 1 step 1 done at 0:30
            lane 1 seat s-9 taken as primary at 1:00
            lane 1 step 4 done at 1:30 from seat s-9
            """, Some.Snapshot(1));

        Assert.Equal(["Judge s-1 10", "Judge s-9 10"], JudgingMaking.Judges([heat]).Select(page => $"{page.Judge} {page.Movements[0].Reps}"));
    }

    [Fact]
    public async Task It_is_for_the_organiser_and_the_head_judge_alone()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat[1].SendOne(heat[1].Done(1));

        Assert.Equal(10, (await Floor.HeadJudge.Get($"{heat.Path}/judging")).Read<JudgingTable>().Lanes[0].Reps);
        Assert.Contains((await Floor.Organiser.Get("/api/judges")).Json.EnumerateArray(), page => page.GetProperty("movements").GetArrayLength() > 0);
        Assert.Equal("not-signed-in", (await Floor.Visitor().Get($"{heat.Path}/judging")).Code);
        Assert.Equal("not-yours", (await heat[1].Phone.Get("/api/judges")).Code);
        Assert.Equal("no-such-heat", (await Floor.HeadJudge.Get("/api/heats/nowhere/judging")).Code);
    }
}
