using System.Text.Json;
using System.Text.Json.Nodes;
using LiveHeat.Contracts.Wire;

namespace LiveHeat.Engine.Wire;

/// <summary>What cannot be read is one kind of error, whatever is wrong with it: a <see cref="JsonException"/>.</summary>
public class UnreadableTests
{
    private const string Tap = """{"fact":"step-done","id":"Zm9vYmFyYmF6cXV4MTIzNA.1","instant":1795600841200,"lane":2,"step":5}""";

    /// <summary>Each is put into a tap that could be read without it.</summary>
    [Theory]
    [InlineData("fact", null)]
    [InlineData("fact", "null")]
    [InlineData("fact", "7")]
    [InlineData("fact", "\"step-begun\"")]
    [InlineData("fact", "\"StepDone\"")]
    [InlineData("fact", "{}")]
    [InlineData("id", null)]
    [InlineData("id", "null")]
    [InlineData("id", "17")]
    [InlineData("id", "\"17\"")]
    [InlineData("id", "\"Zm9vYmFyYmF6cXV4MTIzNA.0\"")]
    [InlineData("id", "\"Zm9vYmFyYmF6cXV4MTIzNA.9223372036854775808\"")]
    [InlineData("instant", null)]
    [InlineData("instant", "null")]
    [InlineData("instant", "1795600841200.5")]
    [InlineData("instant", "\"2026-11-25\"")]
    [InlineData("instant", "0")]
    [InlineData("instant", "1e300")]
    [InlineData("lane", null)]
    [InlineData("lane", "null")]
    [InlineData("lane", "\"2\"")]
    [InlineData("lane", "0")]
    [InlineData("lane", "100")]
    [InlineData("lane", "2.5")]
    [InlineData("step", null)]
    [InlineData("step", "null")]
    [InlineData("step", "\"5\"")]
    [InlineData("step", "2147483648")]
    [InlineData("step", "[5]")]
    [InlineData("timeKnown", "1")]
    [InlineData("timeKnown", "null")]
    [InlineData("uncertaintyMs", "12.5")]
    [InlineData("uncertaintyMs", "1e999")]
    [InlineData("plan", "\"1\"")]
    [InlineData("seat", "7")]
    [InlineData("start", "7")]
    [InlineData("start", "\"\\ud800\"")]
    [InlineData("phone", "{\"monoMs\":null,\"wallMs\":1,\"offsetMs\":1}")]
    [InlineData("phone", "{\"monoMs\":\"1\",\"wallMs\":1,\"offsetMs\":1}")]
    [InlineData("phone", "7")]
    public void A_tap_with_a_field_that_is_missing_or_not_as_it_should_be(string field, string? value)
    {
        Assert.NotNull(WireJson.ReadFact(Tap));
        var text = value is null ? Without(field) : Without(field).Replace("{", $"{{\"{field}\":{value},", StringComparison.Ordinal);

        Assert.Throws<JsonException>(() => WireJson.ReadFact(text));
        Assert.Throws<JsonException>(() => WireJson.ReadTap(JsonDocument.Parse(text).RootElement));
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("7")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("\"step-done\"")]
    [InlineData("{\"fact\":\"step-done\"")]
    [InlineData("{\"fact\":\"fact-added\",\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.1\",\"instant\":1795600841200,\"source\":\"paper\",\"tap\":{\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.2\",\"instant\":1795600841200,\"lane\":2,\"step\":5},\"by\":{\"signIn\":\"a\",\"name\":\"b\",\"role\":\"judge\"}}")]
    [InlineData("{\"fact\":\"fact-added\",\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.1\",\"instant\":1795600841200,\"source\":\"paper\",\"tap\":null,\"by\":{\"signIn\":\"a\",\"name\":\"b\",\"role\":\"judge\"}}")]
    [InlineData("{\"fact\":\"heat-ended\",\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.1\",\"instant\":1795600841200,\"by\":null}")]
    [InlineData("{\"fact\":\"heat-ended\",\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.1\",\"instant\":1795600841200,\"by\":{\"signIn\":\"a\",\"name\":\"b\",\"role\":\"king\"}}")]
    [InlineData("{\"fact\":\"heat-ended\",\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.1\",\"instant\":1795600841200,\"by\":{\"signIn\":\"a\",\"name\":null,\"role\":\"judge\"}}")]
    [InlineData("{\"fact\":\"lanes-overridden\",\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.1\",\"instant\":1795600841200,\"lanes\":null,\"by\":{\"signIn\":\"a\",\"name\":\"b\",\"role\":\"judge\"}}")]
    [InlineData("{\"fact\":\"lanes-overridden\",\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.1\",\"instant\":1795600841200,\"lanes\":[2,null],\"by\":{\"signIn\":\"a\",\"name\":\"b\",\"role\":\"judge\"}}")]
    public void A_text_that_is_no_fact(string text) => Assert.Throws<JsonException>(() => WireJson.ReadFact(text));

    [Theory]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("{\"command\":\"begin\",\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.1\"}")]
    [InlineData("{\"command\":null,\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.1\"}")]
    [InlineData("{\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.1\",\"reason\":\"x\"}")]
    [InlineData("{\"command\":\"halt\"}")]
    [InlineData("{\"command\":\"halt\",\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.1\",\"reason\":null}")]
    [InlineData("{\"command\":\"send-back\",\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.1\",\"lane\":2}")]
    [InlineData("{\"command\":\"freeze\",\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.1\",\"head\":9223372036854775808}")]
    [InlineData("{\"command\":\"add\",\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.1\",\"source\":\"paper\",\"tap\":{\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.2\"}}")]
    [InlineData("{\"command\":\"add\",\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.1\",\"source\":\"paper\",\"tap\":{\"fact\":\"heat-ended\",\"id\":\"Zm9vYmFyYmF6cXV4MTIzNA.2\"}}")]
    public void A_text_that_is_no_command(string text) => Assert.Throws<JsonException>(() => WireJson.ReadCommand(JsonDocument.Parse(text).RootElement));

    /// <summary>A fact of the desk is no tap, though it is a fact.</summary>
    [Fact]
    public void A_fact_of_the_desk_sent_as_a_tap() => Assert.All(
        FactPins.All.Where(pin => pin.Contains("\"by\":", StringComparison.Ordinal)),
        pin => Assert.Throws<JsonException>(() => WireJson.ReadTap(JsonDocument.Parse(pin).RootElement)));

    private static string Without(string field)
    {
        var json = JsonNode.Parse(Tap)!.AsObject();
        json.Remove(field);
        return json.ToJsonString();
    }
}
