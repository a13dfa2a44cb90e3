using System.Globalization;
using System.Text.Json;
using LiveHeat.Contracts.Proof;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Forecasts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;
using LiveHeat.Rehearsal.Demo;
using LiveHeat.Testing.Paced;

namespace LiveHeat.Measure;

/// <summary>How good forecasts would have been on heats that were judged: each is played again as it was known, and what is foretold on the way is compared with what became of it.</summary>
internal static class Replayed
{
    /// <summary>What earlier heats of the same workout showed, within the files of one folder: those are taken for one day.</summary>
    private sealed record Shown(string Day, string Workout, IReadOnlyDictionary<PaceKey, PacePrior> Pace);

    /// <summary>The command's answer.</summary>
    /// <param name="paths">Exported heats, or folders of them.</param>
    public static int Run(IReadOnlyList<string> paths)
    {
        var files = paths.SelectMany(Files).ToList();
        var heats = new List<(string File, HeatExport Export, List<Entry> Entries, HeatState End)>();
        foreach (var file in files)
        {
            if (Read(file) is not { } export)
            {
                Console.WriteLine($"{file} is no exported heat ({HeatExport.CurrentFormat}).");
                return 2;
            }

            var entries = export.Entries.Select(entry => new Entry(entry.Sequence, entry.ReceivedAt, entry.Sender, WireJson.ReadFact(entry.Body)!)).ToList();
            heats.Add((file, export, entries, HeatState.Fold(export.Heat, entries)));
        }

        var (made, shown, rehearsals, judged) = (new Calibration(), new List<Shown>(), 0, 0);
        foreach (var (file, export, entries, end) in heats.OrderBy(heat => heat.Export.Epoch, StringComparer.Ordinal).ThenBy(heat => heat.End.CalledAt?.UnixMs))
        {
            if (end.EndedAt is null || end.Snapshot is not { } snapshot)
            {
                Console.WriteLine($"{file}: not over, left out.");
                continue;
            }

            var priors = PacePriors.From(shown.Where(one => one.Day == export.Epoch && one.Workout == snapshot.Workout.Id).Select(one => one.Pace));
            var before = made.Forecasts;
            Judge(made, entries, end, priors, judged);
            shown.Add(new Shown(export.Epoch, snapshot.Workout.Id, Forecast.Learned(end)));
            judged++;
            rehearsals += snapshot.Competition == DemoCompetition.Name ? 1 : 0;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileName(file)}: {snapshot.Competition}, {snapshot.Title}, {snapshot.Workout.Name}: {made.Forecasts - before} forecasts"));
        }

        if (made.Forecasts == 0)
        {
            Console.WriteLine("Nothing is foretold in these heats.");
            return 1;
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"""

            {made.Forecasts} forecasts in {judged} heats played again, at a third, half, two thirds and five sixths of the time until the first finish
            {Whose(rehearsals, judged)}
            80 % intervals held            {made.Coverage:P1}   (standard error at one moment, from heat to heat, {Error(made):P1} at most; {made.Capped} are of teams that the cap stopped, whose finish nobody knows)
            Brier score, beats the cap     {made.Cap.Own:0.0000}   pace so far goes on {made.Cap.Pace:0.0000}   order now stands {made.Cap.Order:0.0000}
            Brier score, wins              {made.Wins.Own:0.0000}   pace so far goes on {made.Wins.Pace:0.0000}   order now stands {made.Wins.Order:0.0000}
            """));
        return 0;
    }

    private static IEnumerable<string> Files(string path) =>
        Directory.Exists(path) ? Directory.EnumerateFiles(path, "*.json", SearchOption.AllDirectories).Order(StringComparer.Ordinal) : [path];

    private static string Whose(int rehearsals, int judged) => rehearsals == judged
        ? "ALL ARE REHEARSALS: invented teams and simulated judges. They say nothing of how good forecasts are on real heats."
        : rehearsals > 0
            ? string.Create(CultureInfo.InvariantCulture, $"{rehearsals} ARE REHEARSALS, with invented teams and simulated judges: judge the others without them.")
            : "None is of the rehearsals' competition; whether people worked in them, the files do not say.";

    private static double Error(Calibration made) => made.ByMoment.Max(moment => moment.Error);

    private static void Judge(Calibration made, List<Entry> entries, HeatState end, PacePriors priors, int cluster)
    {
        var placings = LiveOrder.Of(end).ToDictionary(placing => placing.Lane);
        var truth = end.Lanes.Where(lane => !lane.Unranked && lane.Plan.Timed && lane.Stopped is null && lane.CapHeatMs is not null).ToDictionary(
            lane => lane.Lane, lane => new LaneTruth(lane.Lane, lane.Finish?.LaneMs, lane.CapHeatMs!.Value - lane.HeldMs, placings[lane.Lane].Place == 1));
        if (truth.Count == 0 || end.Clock.Start is not { } start)
        {
            return;
        }

        var first = end.Lanes.Select(lane => lane.Finish?.LaneMs + lane.HeldMs).Min() ?? truth.Values.Max(lane => lane.CapMs);
        for (var moment = 0; moment < Calibration.Moments.Count; moment++)
        {
            var at = end.Clock.InstantOf((long)(first * Calibration.Moments[moment])) ?? start.GoAt;
            var then = Replay.AsKnown(end.Heat, entries).TakeWhile(known => known.At <= at).Last().State;
            made.Judge(moment, then, at, priors, truth, 1, cluster);
        }
    }

    private static HeatExport? Read(string file)
    {
        try
        {
            return JsonSerializer.Deserialize<HeatExport>(File.ReadAllText(file), WireJson.Options) is { Format: HeatExport.CurrentFormat } export ? export : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
