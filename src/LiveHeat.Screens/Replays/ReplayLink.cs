using System.Globalization;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Words;

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

    /// <summary>A heat time in an address: milliseconds, or as people write it, 4:32. Null when it is neither: an address may be mistyped.</summary>
    public static long? At(string? text) => long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var ms) ? ms : TimeWords.Parse(text);

    /// <summary>A lane in an address; null when it is none.</summary>
    public static LaneNumber? Lane(string? text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= 99 ? new LaneNumber(number) : null;
}
