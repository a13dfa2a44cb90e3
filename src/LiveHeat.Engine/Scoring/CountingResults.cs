using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Scoring;

/// <summary>What counts of the heats of one workout.</summary>
public static class CountingResults
{
    /// <summary>Each team's line of the heat that counts for it: not one for which a rerun was ordered; of several the one called last.</summary>
    public static List<TeamResult> Of(IEnumerable<(HeatState Heat, Items<ResultLine> Lines)> heats, string division) => heats.OrderBy(one => one.Heat.CalledAt)
        .SelectMany(one => one.Lines.Where(line => line.Lane.Entry.Division == division && one.Heat.Reruns.All(rerun => !rerun.Lanes.Contains(line.Lane.Lane) || rerun.InHeat == one.Heat.Heat))
            .Select(line => new TeamResult(line.Lane.Entry.Team, one.Heat.Heat, line, one.Heat.Told == Phase.Certified && !line.Lane.Pending)))
        .GroupBy(result => result.Team).Select(group => group.Last()).ToList();
}
