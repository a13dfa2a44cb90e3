using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Replays;

/// <summary>The moment that a replay shows, in words.</summary>
public static class ReplayMoment
{
    /// <summary>Its heat time; without a start the time of day.</summary>
    public static string Words(ReplayStore store) =>
        store.HeatMs is { } ms ? ReplayWords.Time(ms) : store.IsHere ? TimeWords.TimeOfDay(store.Player.Now.UnixMs) : CommonWords.NotYet;
}
