using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Callouts;

/// <summary>The fastest of a heat or of several: by prescription and work, milliseconds.</summary>
/// <param name="Ms">By the key of <see cref="DoneWork"/>.</param>
public sealed record Bests(IReadOnlyDictionary<string, long> Ms)
{
    /// <summary>No earlier heat.</summary>
    public static Bests None { get; } = new(new Dictionary<string, long>());

    /// <summary>The fastest sets and legs of a heat.</summary>
    public static Bests Of(HeatState heat) =>
        new(heat.Lanes.Where(lane => !lane.Withdrawn).SelectMany(DoneWork.Of).GroupBy(done => done.Key).ToDictionary(group => group.Key, group => group.Min(done => done.Ms)));

    /// <summary>The fastest of all of them.</summary>
    public static Bests Of(IEnumerable<Bests> heats) =>
        new(heats.SelectMany(heat => heat.Ms).GroupBy(pair => pair.Key).ToDictionary(group => group.Key, group => group.Min(pair => pair.Value)));
}

/// <summary>A set or a leg that was done, with both its ends known.</summary>
/// <param name="Key">What can be compared with it: the same work, prescribed alike.</param>
/// <param name="Lane">Whose.</param>
/// <param name="Leg">It is a leg, from tag to tag.</param>
/// <param name="Step">The step that ended it.</param>
/// <param name="Ms">How long it took, lane time.</param>
/// <param name="End">Its end.</param>
internal sealed record DoneWork(string Key, LaneState Lane, bool Leg, int Step, long Ms, Split End)
{
    /// <summary>All sets and legs of a lane.</summary>
    public static IEnumerable<DoneWork> Of(LaneState lane)
    {
        var (legFrom, legWork) = ((long?)0, "");
        for (var number = 1; number <= lane.DoneSteps; number++)
        {
            var step = lane.Plan.Steps[number - 1];
            var from = Begins(lane, number) ?? lane.Splits[number - 2]?.LaneMs;
            var end = lane.Splits[number - 1];
            if (step.Kind == StepKind.Tag)
            {
                if (legWork.Length > 0 && end is { } tagged && tagged.LaneMs - legFrom is { } legMs and > 0)
                {
                    yield return new DoneWork($"{lane.Plan.Group}|leg{legWork}", lane, true, number, legMs, tagged);
                }

                (legFrom, legWork) = (end?.LaneMs, "");
                continue;
            }

            legWork += $"|{step.Label}";
            if (step.Kind == StepKind.Set && end is { } done && done.LaneMs - from is { } ms and > 0)
            {
                yield return new DoneWork($"{lane.Plan.Group}|{step.Label}", lane, false, number, ms, done);
            }
        }
    }

    /// <summary>When a step begins that no step before it begins: the first one, and the first of each round by the clock.</summary>
    private static long? Begins(LaneState lane, int step) => step == 1 ? 0 : lane.Plan.Windows.FirstOrDefault(window => window.First == step)?.FromMs;
}
