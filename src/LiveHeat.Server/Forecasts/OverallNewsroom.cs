using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Standings;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Heats;
using LiveHeat.Server.Heats;
using LiveHeat.Server.Setup;
using LiveHeat.Server.Time;

namespace LiveHeat.Server.Forecasts;

/// <summary>Who leads over the whole competition, made anew only when a result or the setup changed: every forecast asks.</summary>
internal sealed class OverallNewsroom(HeatSessions sessions, SetupReader setup, Timebase time)
{
    private Issue? last;

    public async Task<IReadOnlyList<OverallNews>> Newest(CancellationToken cancellation)
    {
        var all = await setup.All(cancellation);
        var posted = sessions.Open().Select(session => session.State).Where(heat => CameIn.At(heat) is not null).ToList();
        if (last is { } issue && ReferenceEquals(issue.Setup, all) && issue.Posted.SequenceEqual(posted, ReferenceEqualityComparer.Instance))
        {
            return issue.News;
        }

        return (last = new Issue(all, posted, OverallNewsMaking.Of(all, posted, time.Now))).News;
    }

    /// <summary>States are never changed, only replaced: the same one is the same.</summary>
    private sealed record Issue(SetupAll Setup, IReadOnlyList<HeatState> Posted, IReadOnlyList<OverallNews> News);
}
