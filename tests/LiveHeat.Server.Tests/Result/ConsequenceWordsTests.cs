using LiveHeat.Contracts.Results;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Server.Result;

/// <summary>What was applied, and why, in a sentence.</summary>
public sealed class ConsequenceWordsTests
{
    private static ResultLane Lane1(string score, Consequences consequences)
    {
        var setting = Some.Snapshot(workout: Some.Workout() with { Consequences = consequences, Penalty = new PenaltyRule(30_000) });
        return ResultMaking.Of(HeatScript.Play("start\n" + score, setting), "", HeatScript.At("11:00"))!.Lanes.Single(lane => lane.Lane == new LaneNumber(1));
    }

    private static string Words(string score, Consequences consequences) => ResultWords.Penalties(Lane1(score, consequences));

    [Theory]
    [InlineData(Consequence.Allowed, "")]
    [InlineData(Consequence.Penalty, "+0:30.0 (Cy worked in place of Ann from round 1)")]
    [InlineData(Consequence.RanksBelow, "Ranked below: Cy worked in place of Ann from round 1")]
    [InlineData(Consequence.Void, "Result void: Cy worked in place of Ann from round 1")]
    public void A_wrong_athlete_is_told_by_name_and_round(Consequence consequence, string words) =>
        Assert.Equal(words, Words("lane 1 athlete 3 works step 1 at 0:10", new(consequence)));

    [Fact]
    public void A_line_up_that_changed_is_told_from_its_round() =>
        Assert.Equal("Ranked below: changed the line-up from round 2", Words("lane 1 line-up Cy,Bo,Ann from step 4 at 0:20", new(LineUpChange: Consequence.RanksBelow)));

    [Fact]
    public void A_variant_is_told_as_what_it_came_to()
    {
        const string Taken = "lane 1 variant scaled from step 7 at 0:20";

        Assert.Equal("did the work of Scaled from step 7 on: not ranked with Open", Words(Taken, new()));
        Assert.Equal("Ranked with its division, as the workout allows: took the work of Scaled from round 3", Words(Taken, new() { Variant = Consequence.Allowed }));
        Assert.Equal("+0:30.0 (took the work of Scaled from round 3)", Words(Taken, new() { Variant = Consequence.Penalty }));
        Assert.Equal("Ranked below: took the work of Scaled from round 3", Words(Taken, new() { Variant = Consequence.RanksBelow }));
        Assert.Equal("Result void: took the work of Scaled from round 3", Words(Taken, new() { Variant = Consequence.Void }));
    }

    [Fact]
    public void A_ruling_says_in_which_part_it_counts()
    {
        var parts = Some.Snapshot(1, Some.Workout(prescriptions: Some.Prescription() with { Parts = (Items<WorkoutPart>)[new("First buy-in", new TiebreakSet(1, 2)), new("The rest", null)] }));
        ResultLane Lane(string score) => ResultMaking.Of(HeatScript.Play("start\n" + score, parts), "", HeatScript.At("11:00"))!.Lanes.Single();

        Assert.Equal("+0:30.0, counts in First buy-in (reason to follow)", ResultWords.Penalties(Lane("penalise lane 1 by 30000 ms in part 1 at 9:00")));
        Assert.Equal("−2 reps, counts only in the whole (reason to follow)", ResultWords.Penalties(Lane("penalise lane 1 by 2 reps in part 0 at 9:00")));
        Assert.Equal("+0:30.0 (reason to follow)", ResultWords.Penalties(Lane("penalise lane 1 by 30000 ms at 9:00")));
        var appealed = Lane("lane 1 appeals at 8:00 [a]\ndecide a: -2 reps in part 2 at 9:00");
        Assert.Equal("Appeal by Ann about a rep: decided, +2 reps, counts in The rest: seen on video", AppealLines.Of(appealed.Appeals.Single(), appealed));
    }

    [Fact]
    public void An_appeal_is_told_open_and_decided()
    {
        static string Line(string score, ScoreUnit? unit = null) => Lane1(score, new()) is var lane ? AppealLines.Of(lane.Appeals.Single(), lane with { Score = unit }) : "";

        Assert.Equal("Appeal by Ann about a rep: open, the place is not settled", Line("lane 1 appeals at 0:10 [a]"));
        Assert.Equal("Appeal by Ann about a rep: decided, −5 s: seen on video", Line("lane 1 appeals at 0:10 [a]\ndecide a: -5000 ms"));
        Assert.Equal("Appeal by Ann about a rep: decided, +1:05.0: seen on video", Line("lane 1 appeals at 0:10 [a]\ndecide a: 65000 ms"));
        Assert.Equal("Appeal by Ann about a rep: decided, +2 reps: seen on video", Line("lane 1 appeals at 0:10 [a]\ndecide a: -2 reps"));
        Assert.Equal("Appeal by Ann about a rep: decided, −1 rep: seen on video", Line("lane 1 appeals at 0:10 [a]\ndecide a: 1 reps"));
        Assert.Equal("Appeal by Ann about a rep: decided, −1 kg: seen on video", Line("lane 1 appeals at 0:10 [a]\ndecide a: 1 reps", ScoreUnit.Of(Unit.Kg)));
        Assert.Equal("Appeal by Ann about a rep: decided, the result stands: seen on video", Line("lane 1 appeals at 0:10 [a]\ndecide a: no change"));
        Assert.Equal("Appeal by Ann about a rep: decided, done again in heat h9: wet floor", Line("lane 1 appeals at 0:10 [a]\ndecide a: rerun in h9"));
    }
}
