using LiveHeat.Contracts.Setup;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Connection;

namespace LiveHeat.Screens.Introductions;

/// <summary>What an announcer may say of the teams, as the organiser wrote it.</summary>
public sealed class IntroductionStore(HeatApi api, TimeProvider time)
{
    private static readonly TimeSpan BeforeTheNextTry = TimeSpan.FromSeconds(10);
    private long? failedAt;
    private HeatId? readFor;
    private IReadOnlyList<TeamIntroduction> all = [];

    /// <summary>It changed.</summary>
    public event Action? Changed;

    /// <summary>Of one team; null when there is nothing.</summary>
    public TeamIntroduction? Of(string team) => all.FirstOrDefault(one => one.Team == team);

    /// <summary>Reads them anew with each heat; after a problem again, but not with every frame.</summary>
    public async Task ReadFor(HeatId heat)
    {
        if (readFor == heat || (failedAt is { } failed && time.GetElapsedTime(failed) < BeforeTheNextTry))
        {
            return;
        }

        readFor = heat;
        if ((await api.Introductions()).Value is { } read)
        {
            all = read;
            Changed?.Invoke();
        }
        else
        {
            (readFor, failedAt) = (null, time.GetTimestamp());
        }
    }
}
