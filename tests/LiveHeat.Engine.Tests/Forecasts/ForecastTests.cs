using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;
using LiveHeat.Testing.Paced;

namespace LiveHeat.Engine.Forecasts;

public class ForecastTests
{
    private static readonly PacedHeat Heat = PacedHeat.From(new Random(5), PacedHeat.Hall(new Random(6)));

    private static Items<LaneForecast> At(double share, PacedHeat? heat = null)
    {
        heat ??= Heat;
        var at = (long)(heat.Finishes.Min() * share);
        return Forecast.Of(heat.At(at), Some.Go + at, PacePriors.None, 1);
    }

    /// <summary>On heats whose truth is known: 80 % intervals hold 75 to 85 % of the time from the first third on, and both chances are better than two simpler rules.</summary>
    [Fact]
    public void Intervals_hold_as_often_as_they_say_and_chances_beat_simpler_rules()
    {
        var calibration = Calibration.Of(25, 20_261_125);

        Assert.InRange(calibration.Forecasts, 1_500, 2_000);
        Assert.InRange(calibration.Coverage, 0.75, 0.85);
        Assert.InRange(calibration.Cap.Own, 0.001, Math.Min(calibration.Cap.Pace, calibration.Cap.Order));
        Assert.InRange(calibration.Wins.Own, 0.001, Math.Min(calibration.Wins.Pace, calibration.Wins.Order));
    }

    /// <summary>At every moment by itself, and for other work too: 75 to 85 %, as far as so many heats can tell (two standard errors more).</summary>
    [Theory]
    [InlineData(nameof(PacedShape.InTurn), 10)]
    [InlineData(nameof(PacedShape.LongSets), 6)]
    [InlineData(nameof(PacedShape.TwoDivisions), 10)]
    public void Intervals_hold_at_every_moment_and_for_other_work(string shape, int lanes)
    {
        var calibration = Calibration.Of(25, 20_261_126, (PacedShape)typeof(PacedShape).GetProperty(shape)!.GetValue(null)!, lanes);

        Assert.All(calibration.ByMoment, moment =>
        {
            Assert.InRange(moment.Count, lanes * 40, lanes * 50);
            Assert.InRange(moment.Error, 0.005, 0.04);
            Assert.InRange(moment.Share, 0.75 - (2 * moment.Error), 0.85 + (2 * moment.Error));
        });
    }

    [Fact]
    public void What_one_prescription_showed_is_not_taken_for_another_and_is_believed_less_where_nothing_else_is_known()
    {
        var truth = PacedHeat.From(new Random(5), PacedHeat.Hall(new Random(6), 0.4), shape: PacedShape.TwoDivisions);
        var learned = Forecast.Learned(truth.At(truth.Finishes.Max()));
        var (open, scaled) = (learned[new PaceKey("open", "burpees")], learned[new PaceKey("scaled", "burpees")]);
        var (both, alone) = (PacePriors.From([learned]), PacePriors.From([learned.Where(pair => pair.Key.Group == "open").ToDictionary()]));

        Assert.True(Math.Abs(open.Mean - scaled.Mean) > 0.1);
        Assert.InRange(both.Of("scaled", "burpees").Mean / scaled.Mean, 0.9, 1);     // a little is believed of the sheet
        Assert.InRange(both.Of("open", "burpees").Mean / open.Mean, 0.9, 1);
        Assert.InRange(Math.Abs(alone.Of("scaled", "burpees").Mean), 0.001, Math.Abs(open.Mean));
        Assert.True(alone.Of("scaled", "burpees").Variance > 2 * alone.Of("open", "burpees").Variance);
        Assert.Equal(PacePriors.None.Of("x", "row"), alone.Of("scaled", "row"));
    }

    [Fact]
    public void Before_half_the_lanes_have_shown_something_nothing_is_said() => Assert.Empty(At(0.02));

    [Fact]
    public void The_nearer_the_finish_the_surer()
    {
        var (early, late) = (At(1 / 3.0), At(0.9));

        Assert.Equal(10, early.Count);
        foreach (var lane in early)
        {
            var then = late.Single(one => one.Lane == lane.Lane);
            Assert.True(then.LateMs - then.EarlyMs < lane.LateMs - lane.EarlyMs, $"lane {lane.Lane}");
            Assert.InRange(lane.FinishMs, lane.EarlyMs, lane.LateMs);
        }
    }

    [Fact]
    public void The_chances_of_all_places_of_a_lane_and_of_all_lanes_for_a_place_add_up_to_one()
    {
        var lanes = At(0.5);

        Assert.All(lanes, lane => Assert.Equal(1, lane.Places.Sum(), 9));
        Assert.All(Enumerable.Range(0, 10), place => Assert.Equal(1, lanes.Sum(lane => lane.Places[place]), 9));
    }

    [Fact]
    public void The_same_seed_says_the_same() => Assert.Equal(At(0.5), At(0.5));

    [Fact]
    public void A_finished_lane_is_no_longer_forecast_and_its_place_is_taken_from_the_others()
    {
        var at = Heat.Finishes.Min() + 10;
        var winner = Heat.Finishes.ToList().IndexOf(Heat.Finishes.Min()) + 1;
        var lanes = Forecast.Of(Heat.At(at), Some.Go + at, PacePriors.None, 1);

        Assert.DoesNotContain(lanes, lane => lane.Lane.Value == winner);
        Assert.All(lanes, lane => Assert.Equal(0, lane.Places[0]));
    }

    [Fact]
    public void Past_the_cap_nobody_beats_it() => Assert.All(
        Forecast.Of(Heat.At(Heat.CapMs + 1_000), Some.Go + Heat.CapMs + 1_000, PacePriors.None, 1), lane => Assert.Equal(0, lane.BeatsCap));

    [Fact]
    public void A_lane_that_stays_in_a_set_is_expected_later_and_later()
    {
        var at = Heat.Finishes.Min() / 2;
        var heat = Heat.At(at);
        var soon = Forecast.Of(heat, Some.Go + at, PacePriors.None, 1);
        var later = Forecast.Of(heat, Some.Go + at + 60_000, PacePriors.None, 1);

        Assert.All(soon.Zip(later), pair => Assert.True(pair.Second.FinishMs > pair.First.FinishMs + 20_000));
    }

    [Fact]
    public void What_an_earlier_heat_showed_of_a_movement_is_believed_in_the_next()
    {
        var learned = Forecast.Learned(Heat.At(Heat.Finishes.Max()));
        var priors = PacePriors.From([learned]);

        Assert.All(learned, pair => Assert.InRange(Math.Abs(priors.Of(pair.Key.Group, pair.Key.Movement).Mean - pair.Value.Mean), 0, 0.05 + Math.Abs(pair.Value.Mean * 0.2)));
        Assert.All(learned, pair => Assert.True(priors.Of(pair.Key.Group, pair.Key.Movement).Variance < PacePriors.None.Of(pair.Key.Group, pair.Key.Movement).Variance));
    }

    [Fact]
    public void Tags_that_wait_for_somebody_make_steady_sets_no_less_sure()
    {
        var (steady, waiting) = (Widths(tagMs: _ => 2_000), Widths(tagMs: tag => tag % 2 == 0 ? 600 : 9_000));

        Assert.All(steady.Zip(waiting), pair => Assert.InRange(pair.Second / (double)pair.First, 1, 2));
    }

    /// <summary>How wide the intervals of four teams are, two thirds through nine rounds of which every set takes what was expected of it.</summary>
    private static List<long> Widths(Func<int, int> tagMs)
    {
        var snapshot = Some.Snapshot(4, Some.Workout(prescriptions: Some.Prescription(rounds: 9, capMs: 1_200_000)));
        var script = new HeatScript(snapshot).Then("start");
        var plan = script.State.Lanes[0].Plan;
        var at = new long[4];
        foreach (var step in plan.Steps.Take(plan.LastStep * 2 / 3))
        {
            for (var lane = 0; lane < 4; lane++)
            {
                at[lane] += step.Kind == StepKind.Tag ? tagMs(step.Leg + lane) : step.ExpectedMs;
                script = script.Then($"lane {lane + 1} step {step.Number} done at {at[lane] / 60_000}:{at[lane] % 60_000 / 1000:00}.{at[lane] % 1000 / 10:00}");
            }
        }

        return [.. Forecast.Of(script.State, Some.Go + at.Max(), PacePriors.None, 1).Select(lane => lane.LateMs - lane.EarlyMs)];
    }
}
