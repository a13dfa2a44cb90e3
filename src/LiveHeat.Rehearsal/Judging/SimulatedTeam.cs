using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Rehearsal.Judging;

/// <summary>A team at work: athletes of differing strength who tire.</summary>
public sealed class SimulatedTeam
{
    private const double AthleteSpread = 0.07;
    private const double StartReactionMs = 300;

    private readonly Sheet sheet;
    private readonly LaneStory story;
    private readonly FloorDay day;
    private readonly MistakeRates rates;
    private readonly Random random;
    private readonly double[] strengths;

    public SimulatedTeam(Sheet sheet, SheetLane lane, LaneStory story, FloorDay day, MistakeRates rates, Random random)
    {
        (this.sheet, this.story, this.day, this.rates, this.random) = (sheet, story, day, rates, random);
        strengths = [.. Enumerable.Range(0, lane.Athletes.Count + 1).Select(_ => Math.Exp(AthleteSpread * random.NextNormal()))];
    }

    /// <summary>How the step will go this time. Asked again (sent back), it goes another way.</summary>
    public SetPlay Play(SheetLane lane, SheetStep step)
    {
        var strength = story.Strength * strengths[Math.Min(step.Athlete, strengths.Length - 1)] * day.Factor(step);
        var doneShare = (step.Step - 1) / (double)lane.Steps.Count;
        var paceMs = Pace.Ms(step, strength, story.Tiring, doneShare, random) + (step.Step == 1 ? StartReactionMs : 0);
        return SetPlaying.Make(step, paceMs, CheckpointEvery(step), rates, random);
    }

    /// <summary>Units between two counts, as the pad has it: reps by the workout's checkpoint, a stretch by its increment.</summary>
    private int CheckpointEvery(SheetStep step) => (sheet.Counting, step.Kind, step.Unit) switch
    {
        (Counting.Reps, StepKind.Set, Unit.Reps) => Math.Max(1, sheet.CheckpointEvery),
        (Counting.Reps, StepKind.Set, _) when step.Increment > 1 => step.Increment,
        _ => 0,
    };
}
