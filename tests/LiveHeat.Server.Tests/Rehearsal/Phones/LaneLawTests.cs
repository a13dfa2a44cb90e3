using System.Text.Json;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Rehearsal.Phones;

namespace LiveHeat.Server.Rehearsal.Phones;

/// <summary>The simulated phone is held to the same table of cases as the pad in the browser and the engine.</summary>
public class LaneLawTests
{
    private static readonly JsonElement Table = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Steps", "cases.json"))).RootElement;

    public static TheoryData<string> Cases => [.. Table.GetProperty("cases").EnumerateArray().Select(one => one.GetProperty("name").GetString()!)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Agrees_with_the_table(string name)
    {
        var one = Table.GetProperty("cases").EnumerateArray().Single(one => one.GetProperty("name").GetString() == name);
        var facts = one.GetProperty("facts").EnumerateArray().Select(Known);
        var now = LaneLaw.Read(facts, new LaneNumber(Table.GetProperty("lane").GetInt32()), one.GetProperty("steps").GetInt32(), start: null);
        Assert.Equal((Number(one, "open"), Number(one, "count"), Number(one, "owed")), (now.Open, now.Count, now.Owed));
    }

    private static int Number(JsonElement one, string field) => one.TryGetProperty(field, out var number) ? number.GetInt32() : 0;

    private static KnownFact Known(JsonElement line)
    {
        var fact = line.GetProperty("fact").Deserialize<HeatFact>(WireJson.Options)!;
        var flags = line.TryGetProperty("flags", out var names) ? names.Deserialize<FactFlags>(WireJson.Options) : FactFlags.None;
        var sequence = line.TryGetProperty("sequence", out var place) && place.ValueKind == JsonValueKind.Number ? place.GetInt64() : (long?)null;
        var refused = line.TryGetProperty("refused", out var why) && why.ValueKind is not (JsonValueKind.Null or JsonValueKind.False);
        return fact is HeatFact.FactAdded added
            ? new KnownFact(added.Tap, sequence, flags, refused, added.Id)
            : new KnownFact(fact, sequence, flags, refused);
    }
}
