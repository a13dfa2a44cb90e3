using System.Text.Json;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Testing.Places;

/// <summary>The table of where a lane is by the clock that all screens must pass; see its own "about".</summary>
public static class PlaceCases
{
    private static readonly JsonSerializerOptions AsWritten = new(JsonSerializerDefaults.Web);
    private static readonly Lazy<PlaceTable> Table = new(() => JsonSerializer.Deserialize<PlaceTable>(Text, AsWritten)!);

    /// <summary>The rounds of all cases but the plain ones.</summary>
    public static IReadOnlyList<Window> Windows => Table.Value.Windows;

    /// <summary>All cases.</summary>
    public static IReadOnlyList<PlaceCase> All => Table.Value.Cases;

    /// <summary>The table as it is written, for who reads it in JavaScript.</summary>
    public static string Text
    {
        get
        {
            using var file = new StreamReader(typeof(PlaceCases).Assembly.GetManifestResourceStream("Places/places.json")!);
            return file.ReadToEnd();
        }
    }

    /// <summary>One case: what is known, and where that puts the lane.</summary>
    public sealed record PlaceCase(string Name, long? LaneMs, int Confirmed, int Open, int? Round, bool Resting, long? TurnsMs, bool Plain, bool Over);

    private sealed record PlaceTable(IReadOnlyList<Window> Windows, IReadOnlyList<PlaceCase> Cases);
}
