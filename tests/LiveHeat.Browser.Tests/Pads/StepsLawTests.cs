using System.Text.Json;
using LiveHeat.Browser.Floor;
using LiveHeat.Browser.Halls;
using LiveHeat.Testing.Steps;

namespace LiveHeat.Browser.Pads;

/// <summary>The pad's one law in a real browser, held to the table that the engine's fold is held to as well.</summary>
public sealed class StepsLawTests(Hall hall) : ModuleTest(hall)
{
    /// <summary>In any order of arrival, and with everything arriving twice.</summary>
    private const string Law = """
        ([steps], text) => {
          const { lane, cases } = JSON.parse(text);
          const mix = facts => facts.map((fact, i) => [(i * 7919 + 13) % 101, fact]).sort((a, b) => a[0] - b[0]).map(([, fact]) => fact);
          const orders = facts => ({ 'as told': facts, 'backwards': facts.toReversed(), 'twice': [...facts, ...facts], 'mixed': mix(facts) });
          return cases.flatMap(one => Object.entries(orders(one.facts)).map(([order, facts]) => {
            const { open, count, owed } = steps.laneNow(facts, lane, one.steps);
            return `${one.name}, ${order}: open ${open} count ${count} owed ${owed}`;
          }));
        }
        """;

    [Fact]
    public async Task Every_case_of_the_table_opens_the_step_and_count_that_it_says()
    {
        using var file = typeof(StepCases).Assembly.GetManifestResourceStream("Steps/cases.json")!;
        using var table = await JsonDocument.ParseAsync(file);
        var cases = table.RootElement.GetProperty("cases").EnumerateArray().ToList();

        var told = await Run<string[]>(["/pad/steps.js"], Law, table.RootElement.GetRawText());

        Assert.True(cases.Count >= 40, $"The table has {cases.Count} cases.");
        Assert.Equal(
            cases.SelectMany(one => new[] { "as told", "backwards", "twice", "mixed" }.Select(order =>
                $"{one.GetProperty("name")}, {order}: open {one.GetProperty("open")} count {one.GetProperty("count")} owed {one.GetProperty("owed")}")),
            told);
    }
}
