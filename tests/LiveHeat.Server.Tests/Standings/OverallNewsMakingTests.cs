using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Standings;
using LiveHeat.Engine;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Server.Standings;

/// <summary>Who leads over the whole competition since a result came in. Low points: place 1 gives 1, place 2 gives 2; three teams, two workouts of one heat each.</summary>
public sealed class OverallNewsMakingTests
{
    private static readonly SetupAll Setup = Make(("h1", "w1"), ("h2", "w2"));

    private static SetupAll Make(params (string Id, string Workout)[] heats) => new(
        new CompetitionSetup("Breakwater Relays"), [new DivisionSetup("open", "Open")],
        [.. heats.Select(heat => heat.Workout).Distinct().Select(workout => Some.Workout() with { Id = workout, Name = workout })],
        [.. Enumerable.Range(1, 3).Select(team => new TeamSetup($"t{team}", $"Team {team}", "open", ["Ann", "Bo", "Cy"]))],
        [.. heats.Select((heat, i) => new HeatSetup(heat.Id, i + 1, $"Heat {i + 1}", heat.Workout, null, Enumerable.Range(1, 3).Select(team => new HeatSetupLane(new LaneNumber(team), $"t{team}")).ToItems()))]);

    /// <summary>A heat of the three teams, each at work for so many minutes.</summary>
    private static HeatState Heat(string id, string workout, string minutes, string then)
    {
        var snapshot = Some.Snapshot(3, Some.Workout() with { Id = workout, Name = workout });
        snapshot = snapshot with { Lanes = Enumerable.Range(1, 3).Select(team => Some.Entry(team) with { Team = $"t{team}", Name = $"Team {team}" }).ToItems() };
        var finishes = minutes.Split(' ').Select((finish, i) => (Lane: i + 1, At: finish)).OrderBy(one => one.At, StringComparer.Ordinal).Select(one => $"lane {one.Lane} step 9 done at {one.At}");
        return HeatState.Fold(new HeatId(id), new HeatScript(snapshot).Then($"start\n{string.Join('\n', finishes)}\n{then}").Entries);
    }

    private static HeatState First(bool certified = true, string then = "end at 10:10\nfreeze at 10:20") => Heat("h1", "w1", "5:00 6:00 7:00", certified ? $"{then}\nsign organiser at 10:30\nsign head judge at 10:40" : then);

    private static HeatState Second(string minutes, bool certified = false, string then = "end at 10:10\nfreeze at 14:00") => Heat("h2", "w2", minutes, certified ? $"{then}\nsign organiser at 14:10\nsign head judge at 14:20" : then);

    private static IReadOnlyList<OverallNews> Told(params HeatState[] called) => OverallNewsMaking.Of(Setup, called, HeatScript.At("14:30"));

    [Fact]
    public void After_the_first_workout_of_several_somebody_leads_and_nobody_did_before()
    {
        var news = Assert.Single(Told(First()));

        Assert.Equal(HeatScript.At("10:40"), news.At);
        Assert.Equal(new OverallLead(new HeatId("h1"), null, 1, ["Team 1"], true, 1) { Second = "Team 2", Ahead = 1 }, news.Lead);
    }

    // Places 1 2 3 and then 2 1 3 or 2 3 1: totals 3 3 6 and 3 5 4, or with 3 1 2: 4 3 5.
    [Theory]
    [InlineData("6:00 7:00 5:00", "Team 1", 3, "Team 3", 1, true)]
    [InlineData("7:00 5:00 6:00", "Team 2", 3, "Team 1", 1, false)]
    public void A_lead_is_taken_or_kept_and_told_with_its_points(string minutes, string leads, int points, string second, int ahead, bool kept)
    {
        var lead = Assert.Single(Told(First(), Second(minutes))).Lead;

        Assert.Equal(new OverallLead(new HeatId("h2"), null, 2, [leads], false, points) { Second = second, Ahead = ahead, Kept = kept }, lead);
    }

    /// <summary>Places 1 2 3, then 2 1 3: 3 points each, one first and one second place each; the last workout decides (A8.2), and of points there is nothing to say.</summary>
    [Fact]
    public void Where_a_tie_rule_alone_parts_them_no_points_are_between_them()
    {
        var lead = Assert.Single(Told(First(), Second("6:00 5:00 7:00"))).Lead;

        Assert.Equal(("Team 2", 3m, null, null, false), (lead.Teams.Single(), lead.Points, lead.Second, lead.Ahead, lead.Kept));
    }

    [Fact]
    public void Several_lead_together_where_nothing_parts_them()
    {
        var lead = Assert.Single(Told(Heat("h1", "w1", "5:00 5:00 7:00", "end at 10:10\ndecide lanes 1,2 tie\nfreeze at 10:20"))).Lead;

        Assert.Equal(["Team 1", "Team 2"], lead.Teams);
        Assert.Null(lead.Second);
    }

    [Fact]
    public void Posted_and_signed_are_two_things_and_signed_nothing_was_taken_or_kept()
    {
        var (posted, signed) = (Assert.Single(Told(First(), Second("7:00 5:00 6:00"))), Assert.Single(Told(First(), Second("7:00 5:00 6:00", certified: true))));

        Assert.NotEqual(posted.Id, signed.Id);
        Assert.Equal((false, false), (posted.Lead.Official, posted.Lead.Kept));
        Assert.Equal((true, null), (signed.Lead.Official, signed.Lead.Kept));
    }

    [Fact]
    public void An_earlier_result_that_is_not_signed_leaves_it_open() =>
        Assert.False(Assert.Single(Told(First(certified: false), Second("7:00 5:00 6:00", certified: true))).Lead.Official);

    [Fact]
    public void Signed_with_a_lane_pending_it_is_not_final() =>
        Assert.False(Assert.Single(Told(First(then: "end at 10:10\nfreeze at 10:20\nlane 3 appeals at 10:25"))).Lead.Official);

    [Theory]
    [InlineData("end at 10:10")]
    [InlineData("lane 2 reads back disputed at 9:00\nend at 10:10\nfreeze at 10:20")]
    public void Nothing_is_told_before_a_result_is_posted_or_while_a_question_is_open_in_it(string then) => Assert.Empty(Told(First(certified: false, then)));

    [Fact]
    public void A_heat_that_runs_changes_nothing_in_it()
    {
        var news = Assert.Single(Told(First(), Second("7:00 5:00 6:00", then: "")));

        Assert.Equal((new HeatId("h1"), 1), (news.Lead.Heat, news.Lead.Workouts));
    }

    [Fact]
    public void Before_all_teams_have_done_a_workout_it_makes_no_lead()
    {
        var both = Make(("h1", "w1"), ("h2", "w1"), ("h3", "w2"));

        Assert.Empty(OverallNewsMaking.Of(
            both with { Heats = [both.Heats[0], both.Heats[1] with { Lanes = [new HeatSetupLane(new LaneNumber(1), "t4")] }, both.Heats[2]], Teams = [.. both.Teams, new TeamSetup("t4", "Team 4", "open", ["Ann", "Bo", "Cy"])] },
            [First()], HeatScript.At("14:30")));
    }

    /// <summary>Parts give points apart: who leads by them is told, of the one workout that it is.</summary>
    [Fact]
    public void Parts_of_one_workout_that_are_scored_apart_are_added_up_too()
    {
        var parted = Some.Workout() with { Id = "w1", Prescriptions = [Some.Prescription() with { Parts = (Items<WorkoutPart>)[new("Opening", new TiebreakSet(1, 2)), new("Long end", null)] }] };
        var heat = HeatState.Fold(new HeatId("h1"), new HeatScript(Some.Snapshot(2, parted)).Then("""
            start
            lane 1 step 2 done at 1:00
            lane 2 step 2 done at 0:50
            lane 2 step 9 done at 7:20
            lane 1 step 9 done at 7:40
            end at 10:10
            freeze at 10:20
            """).Entries);
        var setup = Make(("h1", "w1")) with { Workouts = [parted], Heats = [] };

        var lead = Assert.Single(OverallNewsMaking.Of(setup, [heat], HeatScript.At("14:30"))).Lead;

        Assert.Equal((1, "Team 2", 2m, 2m), (lead.Workouts, lead.Teams.Single(), lead.Points, lead.Ahead));
    }

    [Fact]
    public void One_workout_alone_is_no_competition_over_several() => Assert.Empty(OverallNewsMaking.Of(Make(("h1", "w1")), [First()], HeatScript.At("14:30")));
}
