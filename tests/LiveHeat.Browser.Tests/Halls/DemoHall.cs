using LiveHeat.Engine.Timing;
using LiveHeat.Rehearsal.Demo;

namespace LiveHeat.Browser.Halls;

/// <summary>The same with the demo's competition set up, of which nothing is called yet: a programme as long as a real one.</summary>
public sealed class DemoHall : Hall
{
    private protected override async Task SetUp()
    {
        var all = DemoCompetition.Make(new Instant(TimeProvider.System.GetUtcNow().ToUnixTimeMilliseconds()));
        (await Organiser.Put("/api/setup/competition", all.Competition)).Fine();
        foreach (var (path, document) in all.Divisions.Select(one => ($"divisions/{one.Id}", (object)one)).Concat(all.Workouts.Select(one => ($"workouts/{one.Id}", (object)one)))
            .Concat(all.Teams.Select(one => ($"teams/{one.Id}", (object)one))).Concat(all.Heats.Select(one => ($"heats/{one.Id}", (object)one))))
        {
            (await Organiser.Put($"/api/setup/{path}", document)).Fine();
        }
    }
}
