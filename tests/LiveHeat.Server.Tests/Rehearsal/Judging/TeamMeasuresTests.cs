using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;
using LiveHeat.Rehearsal.Judging;
using LiveHeat.Testing;

namespace LiveHeat.Server.Rehearsal.Judging;

public class TeamMeasuresTests
{
    private static SheetLane Lane(Workout workout) => SheetMaking.Of(HeatScript.Play("start", Some.Snapshot(1, workout)), "e1")!.Lanes[0];

    [Fact]
    public void Each_athlete_lifts_more_from_attempt_to_attempt_in_whole_plates()
    {
        var lane = Lane(Some.Lifting());
        for (var seed = 0; seed < 50; seed++)
        {
            var team = new TeamMeasures(new Random(seed));
            var loads = lane.Steps.Where(step => step.Kind == StepKind.Attempt).Select(step => (step.Athlete, team.Lift(lane, step).Load)).ToList();

            Assert.All(loads.GroupBy(one => one.Athlete), athlete => Assert.Equal([5, 5], athlete.Zip(athlete.Skip(1), (before, next) => next.Load - before.Load)));
            Assert.All(loads, one => Assert.True(Attempts.CanBe(one.Load) && one.Load % 2.5m == 0, $"{one.Load} kg"));
        }
    }

    [Fact]
    public void Some_attempts_are_no_lift_and_the_later_the_more()
    {
        var lane = Lane(Some.Lifting());
        double Good(int step) => Enumerable.Range(0, 400).Count(seed => new TeamMeasures(new Random(seed)).Lift(lane, lane.Steps[step - 1]).Good) / 400.0;

        Assert.InRange(Good(1), 0.90, 0.99);
        Assert.InRange(Good(3), 0.45, 0.65);
    }

    [Fact]
    public void A_reading_is_about_what_is_expected_where_it_is_the_score_and_just_that_elsewhere()
    {
        var work = Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription("open", 3, 540_000, new PrescribedSet("carry", 800, Reading: true)));
        var (plain, scored) = (Lane(work), Lane(work with { Scoring = new ScoringRule.MostReading() }));
        var team = new TeamMeasures(new Random(5));
        var readings = Enumerable.Range(0, 200).Select(_ => team.Reading(scored, scored.Steps[0])).ToList();

        Assert.Equal(800, team.Reading(plain, plain.Steps[0]));
        Assert.InRange(readings.Average(), 780, 820);
        Assert.True(readings.Distinct().Count() > 50);
        Assert.All(readings, reading => Assert.Equal(decimal.Truncate(reading), reading));
    }

    [Fact]
    public void An_attempt_is_judged_once_a_little_after_it_is_over()
    {
        var play = SetPlaying.Make(Lane(Some.Lifting()).Steps[0], 20_000, 0, MistakeRates.Usual, new Random(1));

        Assert.Equal(Deed.Done, Assert.Single(play.Moments).Deed);
        Assert.InRange(play.Moments[0].AtMs - play.EndMs, 100, 300);
    }
}
