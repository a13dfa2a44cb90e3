using System.Diagnostics;
using System.Globalization;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Measure;

/// <summary>
/// The command <c>fold</c>: what one more fact of a heat costs until the new frame is there, against reading the same fact from JSON in the same run.
/// </summary>
internal static class Fold
{
    private const int BudgetUs = 50;
    private const int Rounds = 12;
    private const int MsBetweenTaps = 9_000;

    public static int Run(string[] args)
    {
        var (lanes, times) = (Number(args, "--lanes", 20), Number(args, "--times", 60));
        var facts = Facts(lanes);
        var texts = facts.Select(entry => WireJson.Write(entry.Fact)).ToList();
        var (apply, order, frame, parse) = (new List<double>(), new List<double>(), new List<double>(), new List<double>());
        for (var time = 0; time < times; time++)
        {
            var warm = time >= times / 3;
            var state = Started(lanes);
            var placings = LiveOrder.Of(state);
            for (var i = 0; i < facts.Count; i++)
            {
                var start = Stopwatch.GetTimestamp();
                var next = state.Apply(facts[i] with { Sequence = state.Head + 1 });
                var folded = Stopwatch.GetTimestamp();
                var places = LiveOrder.Of(next);
                var news = News.Between(state, placings, next, places, facts[i].Fact).ToItems();
                var ordered = Stopwatch.GetTimestamp();
                var made = FrameMaking.Of(next, places, news, "epoch", facts[i].ReceivedAt);
                var framed = Stopwatch.GetTimestamp();
                var read = WireJson.ReadFact(texts[i]);
                var parsed = Stopwatch.GetTimestamp();

                if (made.Sequence != next.Head || read != facts[i].Fact)
                {
                    throw new InvalidOperationException($"Fact {i} was not folded.");
                }

                if (warm)
                {
                    apply.Add(Us(start, folded));
                    order.Add(Us(folded, ordered));
                    frame.Add(Us(ordered, framed));
                    parse.Add(Us(framed, parsed));
                }

                (state, placings) = (next, places);
            }

            if (state.Lanes.Any(lane => !lane.Finished || lane.Flagged.Count > 0))
            {
                throw new InvalidOperationException("The heat that was measured did not go as it should.");
            }
        }

        var all = apply.Zip(order, frame).Select(parts => parts.First + parts.Second + parts.Third).ToList();
        Console.WriteLine(Line($"lanes={lanes} facts={facts.Count} times={times}, microseconds a fact, median and p95"));
        Console.WriteLine(Line($"fold   {Told(apply)}"));
        Console.WriteLine(Line($"order  {Told(order)}"));
        Console.WriteLine(Line($"frame  {Told(frame)}"));
        Console.WriteLine(Line($"parse  {Told(parse)}   (the fact read from JSON: the baseline)"));
        Console.WriteLine(Line($"fold+order+frame={At(all, 50):F1} budget={BudgetUs} ratio-to-parse={At(all, 50) / At(parse, 50):F1}"));
        return At(all, 50) <= BudgetUs ? 0 : 1;
    }

    /// <summary>The heat at GO: called, all lanes judged and ready.</summary>
    private static HeatState Started(int lanes) => new HeatScript(Snapshot(lanes)).Then("start").State;

    private static HeatSnapshot Snapshot(int lanes) => Some.Snapshot(
        lanes, Some.Workout(order: new RelayOrder.InTurn(), prescriptions: Some.Prescription(rounds: Rounds, capMs: 3_600_000)), athletes: 4);

    /// <summary>Every lane's whole way, counted at every fifth rep, the lanes side by side as on a floor.</summary>
    private static List<Entry> Facts(int lanes)
    {
        var steps = Started(lanes).Lanes[0].Plan.Steps;
        var counters = new Dictionary<int, long>();
        var facts = new List<Entry>();
        var at = Some.Go;
        void Tap(int lane, Func<FactId, HeatFact.Floor> make)
        {
            counters[lane] = counters.GetValueOrDefault(lane) + 1;
            var tap = make(Some.Id($"s-{lane}", counters[lane])) with { Instant = at + lane, Lane = new(lane), Seat = new($"s-{lane}"), UncertaintyMs = 12, Start = "start-1" };
            facts.Add(new Entry(1, tap.Instant + 100, $"in-{lane}", tap));
        }

        foreach (var step in steps)
        {
            foreach (var count in step.Kind == StepKind.Set ? Enumerable.Range(1, (step.Quantity - 1) / 5).Select(fifth => fifth * 5) : [])
            {
                at += MsBetweenTaps;
                for (var lane = 1; lane <= lanes; lane++)
                {
                    Tap(lane, id => new HeatFact.CountReached { Id = id, Instant = at, Lane = new(lane), Step = step.Number, Count = count });
                }
            }

            at += MsBetweenTaps;
            for (var lane = 1; lane <= lanes; lane++)
            {
                Tap(lane, id => step.Kind == StepKind.Tag
                    ? new HeatFact.TagMade { Id = id, Instant = at, Lane = new(lane), Step = step.Number }
                    : new HeatFact.StepDone { Id = id, Instant = at, Lane = new(lane), Step = step.Number });
            }
        }

        return facts;
    }

    private static double Us(long from, long until) => Stopwatch.GetElapsedTime(from, until).TotalMicroseconds;

    private static string Told(List<double> figures) => Line($"{At(figures, 50),8:F1} {At(figures, 95),8:F1}");

    private static double At(List<double> figures, int percent) => figures.Order().ElementAt(Math.Min(figures.Count - 1, figures.Count * percent / 100));

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static int Number(string[] args, string name, int otherwise)
    {
        var at = Array.IndexOf(args, name);
        return at >= 0 && at + 1 < args.Length && int.TryParse(args[at + 1], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : otherwise;
    }
}
