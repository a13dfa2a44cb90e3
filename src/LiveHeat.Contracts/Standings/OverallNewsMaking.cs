using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Standings;

/// <summary>Finds who leads over the whole competition, from results that are posted or signed; a heat that runs changes nothing in it.</summary>
public static class OverallNewsMaking
{
    /// <summary>One thing a division at most. Nothing where a single workout is all there is, and nothing while a question is open in a result that counts.</summary>
    /// <param name="setup">What was set up.</param>
    /// <param name="called">All heats that were called.</param>
    /// <param name="now">The instant.</param>
    public static IReadOnlyList<OverallNews> Of(SetupAll setup, IReadOnlyList<HeatState> called, Instant now)
    {
        var posted = called.Where(heat => CameIn.At(heat) is not null).ToList();
        var divisions = StandingsMaking.Of(setup, posted, now).Divisions;
        return [.. divisions.Select(division => Of(division, divisions.Count > 1, setup, posted, now)).OfType<OverallNews>()];
    }

    private static OverallNews? Of(StandingsDivision division, bool named, SetupAll setup, List<HeatState> posted, Instant now)
    {
        var counting = division.Workouts.Where((_, i) => division.Lines.Any(line => line.Scores[i] is { Counts: true })).Select(StandingsMaking.WorkoutOf).ToHashSet();
        var heats = posted.Where(heat => counting.Contains(heat.Snapshot!.Workout.Id) && heat.Lanes.Any(lane => lane.Entry.Division == division.Division)).ToList();
        var leaders = Leaders(division);
        if (division.Workouts.Count < 2 || leaders.Count == 0 || heats.Exists(heat => IsOpen(heat, division.Division, now)))
        {
            return null;
        }

        var last = heats.MaxBy(heat => CameIn.At(heat)!.Value.UnixMs)!;
        var second = leaders.Count == 1 && division.Lines.Where(line => line.Place == 2).ToList() is [var next] && next.Total != leaders[0].Total ? next : null;
        var lead = new OverallLead(
            last.Heat, named ? division.Name : null, counting.Count, leaders.Select(line => line.Name).ToItems(),
            heats.TrueForAll(CameIn.IsFinal), leaders[0].Total)
        {
            Second = second?.Name,
            Ahead = second is null ? null : Math.Abs(second.Total - leaders[0].Total),
            Kept = last.Told == Phase.Certified ? null : Kept(division.Division, leaders, setup, posted.Where(heat => heat != last).ToList(), now),
        };
        return new OverallNews($"overall-lead.{last.Heat}.{last.Revision}.{last.Told}.{division.Division}".ToLowerInvariant(), CameIn.At(last)!.Value, lead);
    }

    private static bool? Kept(string division, List<StandingsLine> leaders, SetupAll setup, List<HeatState> before, Instant now)
    {
        var led = StandingsMaking.Of(setup, before, now).Divisions.Where(one => one.Division == division).SelectMany(Leaders).Select(line => line.Team).ToHashSet();
        return led.Count == 0 ? null : led.SetEquals(leaders.Select(line => line.Team));
    }

    private static List<StandingsLine> Leaders(StandingsDivision division) => [.. division.Lines.Where(line => line.Place == 1)];

    private static bool IsOpen(HeatState heat, string division, Instant now) =>
        OpenQuestions.Of(heat, now).SelectMany(question => question.Lanes).Any(lane => heat.Find(lane)?.Entry.Division == division);
}
