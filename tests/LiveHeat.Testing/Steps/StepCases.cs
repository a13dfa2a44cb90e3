using System.Text.Json;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Testing.Steps;

/// <summary>The table of cases that pad and engine must both pass; see its own "about".</summary>
public static class StepCases
{
    /// <summary>One case: what it is called, what stands on the ledger in order, what must come out.</summary>
    public sealed record StepCase(string Name, IReadOnlyList<StepFact> Facts, int Open, int Count, int Owed)
    {
        /// <summary>The heat it is played in.</summary>
        public required HeatSnapshot Heat { get; init; }
    }

    /// <summary>A fact of a case and the flags that the server told of it.</summary>
    public sealed record StepFact(HeatFact Fact, FactFlags Flags);

    public static readonly LaneNumber Lane = new(2);

    /// <summary>1 set of 20, 2 set of 20, 3 tag, 4 set of 20, 5 value, 6 finish.</summary>
    public static readonly HeatSnapshot Heat = new(
        "Breakwater Relays", "Heat 1",
        Some.Workout(prescriptions: new Prescription(
            "open", "Open", 600_000, 2, Before: [new("wall-ball", 20)], Round: [new("wall-ball", 20)], After: [new("bar", 1, Reading: true)])),
        [Some.Entry(2, athletes: 2), Some.Entry(3, athletes: 2)], Engine.Timing.Rounding.UpTenth);

    /// <summary>1 to 3 attempts, 4 tag, 5 to 7 attempts.</summary>
    public static readonly HeatSnapshot AttemptsHeat = new(
        "Breakwater Relays", "Heat 1", Some.Lifting(attempts: 3), [Some.Entry(2, athletes: 2), Some.Entry(3, athletes: 2)], Engine.Timing.Rounding.UpTenth);

    public static IReadOnlyList<StepCase> All => Table.Value;

    private static readonly Lazy<IReadOnlyList<StepCase>> Table = new(Read);

    private static IReadOnlyList<StepCase> Read()
    {
        using var file = typeof(StepCases).Assembly.GetManifestResourceStream("Steps/cases.json")!;
        using var table = JsonDocument.Parse(file);
        return [.. table.RootElement.GetProperty("cases").EnumerateArray().Select(Case)];
    }

    private static StepCase Case(JsonElement json)
    {
        // Without a sequence it is not sent yet, and comes last; refused, it never comes; twice, it comes once.
        var facts = json.GetProperty("facts").EnumerateArray().Where(fact => !fact.TryGetProperty("refused", out _))
            .OrderBy(fact => fact.TryGetProperty("sequence", out var sequence) ? sequence.GetInt64() : long.MaxValue)
            .Select(fact => new StepFact(
                WireJson.ReadFact(fact.GetProperty("fact").GetRawText()),
                fact.TryGetProperty("flags", out var flags) ? flags.Deserialize<FactFlags>(WireJson.Options) : FactFlags.None))
            .DistinctBy(fact => fact.Fact.Id).ToList();
        return new StepCase(
            json.GetProperty("name").GetString()!, facts,
            json.GetProperty("open").GetInt32(), json.GetProperty("count").GetInt32(), json.GetProperty("owed").GetInt32())
        {
            Heat = json.TryGetProperty("attempts", out _) ? AttemptsHeat : Heat,
        };
    }
}
