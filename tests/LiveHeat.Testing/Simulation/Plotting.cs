using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Testing.Simulation;

/// <summary>Makes a heat with all its faults from one number.</summary>
internal sealed class Plotting
{
    private const double BeforeATapMs = 700;
    private readonly Random chance;
    private readonly int seed;

    private Plotting(int seed) => (this.seed, chance) = (seed, new Random(seed));

    /// <summary>The same number gives the same heat.</summary>
    public static Plot Of(int seed) => new Plotting(seed).Make();

    /// <summary>Two rounds for two athletes, wall balls counted in fives; the steps are 1 set, 2 set, 3 tag, 4 set, 5 set, 6 finish.</summary>
    public static Workout Workout(int capMs) => new(
        "w-simulated", "Low Tide", new RelayOrder.InTurn(), Counting.Reps, 5, FinishKind.Line,
        [Some.Movement(), Some.Movement("row", "row", Unit.Cal, 3, 0.1)], [new Prescription("open", "Open", capMs, 2, [], [new("wall-ball", 15), new("row", 8)], [])]);

    /// <summary>The heat as it is called.</summary>
    public static HeatSnapshot Snapshot(Plot plot) => new(
        "Breakwater Relays", "Heat 1", Workout(plot.CapMs), plot.Lanes.Select(lane => Some.Entry(lane.Lane, athletes: 2)).ToItems(), Rounding.UpTenth);

    private Plot Make()
    {
        var capMs = 1_000 * chance.Next(110, 240);
        var plan = ((Compiled.Plan)PlanCompiler.Compile(Workout(capMs), Some.LineUp(2))).Relay;
        var lanes = Enumerable.Range(1, chance.Next(2, 5)).Select(lane => Lane(lane, Story(plan, capMs))).ToList();
        var overMs = lanes.Max(lane => lane.Story[^1].AtMs);
        var down = Happens(0.4) ? [Span(Between(-30_000, overMs), 500, 4_000)] : Array.Empty<Stretch>();
        return new Plot(seed, capMs, lanes, down, overMs + Between(2_000, 30_000));
    }

    private List<Moment> Story(RelayPlan plan, int capMs)
    {
        var story = new List<Moment>();
        var atMs = Between(4_000, 9_000);
        void Tell(string fact, int step, int? count = null, int? undoes = null)
        {
            // Whether a tap that close to the cap counts is for people to decide, and so for no comparison.
            atMs = Math.Abs(atMs - capMs) < 3_000 ? capMs + 3_000 + Between(0, 500) : atMs;
            story.Add(new Moment(story.Count, Math.Round(atMs, 3), fact, step, count, undoes));
        }

        void Pass(double fromMs, double untilMs) => atMs += Between(fromMs, untilMs);
        foreach (var step in plan.Steps)
        {
            for (var count = 5; step.Unit == Unit.Reps && count < step.Quantity; count += 5)
            {
                Tell("count-reached", step.Number, count);
                Pass(3_000, 12_000);
            }

            if (Happens(0.15))
            {
                Tell("no-rep", step.Number);
                Pass(1_500, 9_000);
            }

            var fact = step.Kind == StepKind.Tag ? "tag-made" : "step-done";
            if (Happens(0.1))
            {
                Tell(fact, step.Number);
                Pass(1_200, 2_500);
                Tell("undone", 0, undoes: story.Count - 1);
                Pass(1_500, 9_000);
            }

            Tell(fact, step.Number);
            Pass(step.Kind == StepKind.Set ? 4_000 : 1_500, 25_000);
            if (Happens(0.01))
            {
                Tell("lane-stopped", 0);
                break;
            }
        }

        return story;
    }

    private LanePlot Lane(int lane, List<Moment> story)
    {
        var gaps = story.Zip(story.Skip(1), (from, to) => new Stretch(from.AtMs + 50, to.AtMs - BeforeATapMs)).Where(gap => gap.UntilMs > gap.FromMs).ToList();
        var roomy = gaps.Where(gap => gap.UntilMs - gap.FromMs > 5_000).ToList();
        var changes = roomy.Count > 0 && Happens(0.35) ? roomy[chance.Next(roomy.Count)] : (Stretch?)null;
        var takeoverMs = changes?.FromMs + 200 ?? double.MaxValue;
        var overMs = story[^1].AtMs;
        var first = Phone($"{seed}-{lane}-a", Plot.CallMs, [new(-45_000, -3_000), .. gaps.Where(gap => gap != changes)], overMs);
        if (changes is null)
        {
            return new LanePlot(lane, story, first, null, takeoverMs);
        }

        // What becomes of the phone that was replaced: it goes on, has no network any more, or is switched off until all is over.
        var left = new Stretch(takeoverMs - Between(0, 20_000), overMs + 1_000);
        first = chance.Next(3) switch
        {
            0 => first,
            1 => first with { Cuts = [.. first.Cuts, left] },
            _ => first with { Naps = [.. first.Naps.Where(nap => nap.UntilMs < takeoverMs)], Reboots = [.. first.Reboots.Where(off => off.UntilMs < takeoverMs), new(overMs + 500, overMs + 1_500)], Cuts = [.. first.Cuts, left] },
        };
        var second = Phone($"{seed}-{lane}-b", takeoverMs - Between(3_000, 20_000), [.. gaps.Where(gap => gap.FromMs > changes.Value.UntilMs)], overMs);
        return new LanePlot(lane, story, first, second, takeoverMs);
    }

    private PhonePlot Phone(string name, double onMs, IReadOnlyList<Stretch> idle, double overMs)
    {
        var (naps, reboots) = (new List<Stretch>(), new List<Stretch>());
        foreach (var gap in idle)
        {
            var (roll, longestMs) = (chance.NextDouble(), gap.UntilMs - gap.FromMs);
            if (roll < 0.2 && longestMs > 200)
            {
                naps.Add(Within(gap, Happens(0.4) ? Between(100, 1_100) : Between(1_000, 40_000)));
            }
            else if (roll < 0.27 && longestMs > 1_000)
            {
                reboots.Add(Within(gap, Between(800, 6_000)));
            }
        }

        var cuts = new List<Stretch>();
        for (var atMs = Between(-20_000, 60_000); atMs < overMs; atMs += Between(20_000, 150_000))
        {
            cuts.Add(Span(atMs, 1_000, 45_000));
        }

        return new PhonePlot(
            name, Math.Round(onMs, 3), Math.Round(Between(-100, 100), 2), Math.Round(Between(-20_000, 20_000)), Math.Round(Between(500, 5e6), 1), naps, reboots, cuts,
            [.. Enumerable.Range(0, 300).Select(_ => Way())]);
    }

    private Passage Way() => new(
        DelayMs(), DelayMs(), Happens(0.08), Happens(0.08), Happens(0.08) ? Math.Round(Between(0, 12_000), 3) : null);

    /// <summary>Mostly a hall's WiFi; one in ten crawls, a few take longer than a phone waits.</summary>
    private double DelayMs() => Math.Round(chance.NextDouble() switch { < 0.88 => Between(0.5, 40), < 0.98 => Between(40, 3_000), _ => Between(3_000, 14_000) }, 3);

    private Stretch Within(Stretch gap, double wantedMs)
    {
        var forMs = Math.Min(wantedMs, (gap.UntilMs - gap.FromMs) * 0.9);
        var fromMs = Math.Round(Between(gap.FromMs, gap.UntilMs - forMs), 3);
        return new Stretch(fromMs, Math.Round(fromMs + forMs, 3));
    }

    private Stretch Span(double fromMs, double shortestMs, double longestMs) => new(Math.Round(fromMs, 3), Math.Round(fromMs + Between(shortestMs, longestMs), 3));

    private double Between(double from, double until) => from + (chance.NextDouble() * (until - from));

    private bool Happens(double odds) => chance.NextDouble() < odds;
}
