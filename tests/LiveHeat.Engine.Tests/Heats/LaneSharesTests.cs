using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats;

/// <summary>60 cal row as a pool, each of Ann, Bo and Cy at least 15; then 10 wall balls by Ann.</summary>
public class LaneSharesTests
{
    private static readonly HeatSnapshot Heat = Some.Snapshot(1, Some.Workout(finish: FinishKind.None, prescriptions:
        Some.Prescription(rounds: 1, round: [new PrescribedSet("row", 60) { MinimumEach = 15 }, new("wall-ball", 10)])));

    private static LaneState Lane(string score) => HeatScript.Play($"start\n{score}", Heat).Lanes[0];

    private static string Shares(string score) => string.Join(' ', Lane(score).Shares.Select(share => $"{share.Athlete}:{share.Units}"));

    private const string Changes = """
        lane 1 athlete 1 works step 1 at 0:05
        lane 1 count 25 of step 1 at 1:00
        lane 1 athlete 2 works step 1 at 1:01
        lane 1 count 45 of step 1 at 2:00
        lane 1 athlete 3 works step 1 at 2:01

        """;

    [Fact]
    public void What_is_counted_between_two_changes_belongs_to_who_worked() => Assert.Equal("1:25 2:20", Shares(Changes));

    [Fact]
    public void The_rest_belongs_to_who_worked_last()
    {
        Assert.Equal("1:25 2:20 3:15", Shares($"{Changes}lane 1 step 1 done at 3:00"));
        Assert.Empty(Lane($"{Changes}lane 1 step 1 done at 3:00").Short());
    }

    [Fact]
    public void Who_did_less_than_the_least_is_named_with_what_is_missing_once_the_set_is_done()
    {
        var score = """
            lane 1 athlete 1 works step 1 at 0:05
            lane 1 count 50 of step 1 at 2:00
            lane 1 athlete 2 works step 1 at 2:01

            """;
        Assert.Empty(Lane(score).Short());
        Assert.Equal([new Share(1, 2, 5), new Share(1, 3, 15)], Lane($"{score}lane 1 step 1 done at 3:00").Short());
    }

    [Fact]
    public void A_set_of_which_nobody_said_who_worked_tells_nothing()
    {
        Assert.Equal("0:60", Shares("lane 1 count 25 of step 1 at 1:00\nlane 1 step 1 done at 3:00"));
        Assert.Empty(Lane("lane 1 count 25 of step 1 at 1:00\nlane 1 step 1 done at 3:00").Short());
    }

    [Fact]
    public void A_change_taken_back_gives_its_part_to_who_worked_before() =>
        Assert.Equal("1:60", Shares("""
            lane 1 athlete 1 works step 1 at 0:05
            lane 1 count 25 of step 1 at 1:00
            lane 1 athlete 2 works step 1 at 1:01 [slip]
            lane 1 undo slip at 1:03
            lane 1 step 1 done at 3:00
            """));

    [Fact]
    public void A_lower_count_later_puts_the_last_share_right() =>
        Assert.Equal("1:20", Shares("""
            lane 1 athlete 1 works step 1 at 0:05
            lane 1 count 25 of step 1 at 1:00
            lane 1 count 20 of step 1 at 1:02
            """));

    [Fact]
    public void Sent_back_the_set_is_shared_anew() =>
        Assert.Equal("2:60", Shares($"""
            {Changes}lane 1 step 1 done at 3:00
            lane 1 sent back to 1 at 3:10
            lane 1 athlete 2 works step 1 at 3:15
            lane 1 step 1 done at 6:00
            """));

    [Fact]
    public void Nobody_of_a_pool_is_a_substitute()
    {
        Assert.Empty(Lane(Changes).Substitutes);
        Assert.Equal([(2, 3)], Lane($"{Changes}lane 1 step 1 done at 3:00\nlane 1 athlete 3 works step 2 at 3:05").Substitutes);
    }

    [Fact]
    public void What_was_done_at_the_cap_belongs_to_who_worked() => Assert.Equal("1:25 2:20 3:6", Shares($"{Changes}lane 1 51 reps at cap in step 1 at 10:02"));
}
