using System.Globalization;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Replays;

/// <summary>Where a heat is played again.</summary>
public static class ReplayLink
{
    /// <summary>The address, below that of the screens.</summary>
    /// <param name="heat">The heat.</param>
    /// <param name="lane">Whose facts are listed; null for all.</param>
    /// <param name="atMs">Where to stand, heat time; null for the beginning, or now while it runs.</param>
    public static string To(HeatId heat, LaneNumber? lane = null, long? atMs = null)
    {
        var options = new[]
        {
            lane is { } number ? $"lane={number}" : "",
            atMs is { } ms ? string.Create(CultureInfo.InvariantCulture, $"at={ms}") : "",
        }.Where(option => option.Length > 0).ToList();
        return $"replay/{Uri.EscapeDataString(heat.Value)}{(options.Count > 0 ? "?" : "")}{string.Join('&', options)}";
    }
}
