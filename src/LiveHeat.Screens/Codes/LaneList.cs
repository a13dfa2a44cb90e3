using System.Globalization;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Codes;

/// <summary>Lanes as a person writes them: "1-8", "1, 2, 5".</summary>
public static class LaneList
{
    private const int Most = 99;

    /// <summary>The lanes in order, none twice; null when it cannot be read.</summary>
    public static IReadOnlyList<LaneNumber>? Read(string text)
    {
        var lanes = new SortedSet<int>();
        foreach (var part in text.Split([',', ' ', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var ends = part.Split('-', '–').Select(end => int.TryParse(end, NumberStyles.None, CultureInfo.InvariantCulture, out var lane) && lane is >= 1 and <= Most ? lane : 0).ToList();
            if (ends.Count > 2 || ends.Contains(0) || ends[^1] < ends[0])
            {
                return null;
            }

            lanes.UnionWith(Enumerable.Range(ends[0], ends[^1] - ends[0] + 1));
        }

        return lanes.Count == 0 ? null : [.. lanes.Select(lane => new LaneNumber(lane))];
    }
}
