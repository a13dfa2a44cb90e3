using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;

namespace LiveHeat.Engine.Integrity;

public class CanonicalJsonTests
{
    [Fact]
    public void The_sample_of_the_standard_has_the_bytes_of_the_standard()
    {
        // RFC 8785, section 3.2.2: the sample; 118 bytes, SHA-256 recomputed.
        var bytes = Canonical("""
            {"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]}
            """);
        Assert.Equal(
            """{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}""",
            Encoding.UTF8.GetString(bytes));
        Assert.Equal(118, bytes.Length);
        Assert.Equal("2d5e01a318d0f0879ab568c4be289c8b1f64ef8921a53c6277d5e069978baacb", Convert.ToHexStringLower(SHA256.HashData(bytes)));
    }

    [Fact]
    public void Names_are_sorted_by_UTF_16_code_units_and_not_by_code_points()
    {
        // RFC 8785, section 3.2.3: the sorting sample. The emoji's first unit, D83D, comes before FB33.
        var bytes = Canonical("""
            {"\u20ac":"Euro Sign","\r":"Carriage Return","\ufb33":"Hebrew Letter Dalet With Dagesh","1":"One","\ud83d\ude00":"Emoji: Grinning Face","\u0080":"Control","\u00f6":"Latin Small Letter O With Diaeresis"}
            """);
        using var sorted = JsonDocument.Parse(bytes);
        Assert.Equal(
            ["Carriage Return", "One", "Control", "Latin Small Letter O With Diaeresis", "Euro Sign", "Emoji: Grinning Face", "Hebrew Letter Dalet With Dagesh"],
            sorted.RootElement.EnumerateObject().Select(field => field.Value.GetString()));
    }

    [Theory]   // RFC 8785, section 3.2.2.2: five short escapes, \u00xx for other controls, nothing else
    [InlineData("\b\t\n\f\r", "\"\\b\\t\\n\\f\\r\"")]
    [InlineData("\0\u0001\u001f", "\"\\u0000\\u0001\\u001f\"")]
    [InlineData("\u000b\u001a", "\"\\u000b\\u001a\"")]
    [InlineData("\"\\/", "\"\\\"\\\\/\"")]
    [InlineData("\u007f\u2028<é>😀", "\"\u007f\u2028<é>😀\"")]
    [InlineData("", "\"\"")]
    public void Strings_escape_only_what_must_be(string text, string expected) =>
        Assert.Equal(expected, CanonicalJson.Text(JsonValue.Create(text)));

    [Theory]
    [InlineData(" [ ] ", "[]")]
    [InlineData(" { } ", "{}")]
    [InlineData("[ 1 , [ true , { \"b\" : null , \"a\" : false } ] ]", "[1,[true,{\"a\":false,\"b\":null}]]")]
    [InlineData("{\"aa\":1,\"a\":2,\"\":3,\"B\":4}", "{\"\":3,\"B\":4,\"a\":2,\"aa\":1}")]
    public void White_space_goes_and_names_are_in_order(string json, string expected) =>
        Assert.Equal(expected, Encoding.UTF8.GetString(Canonical(json)));

    [Theory]
    [InlineData("{\"a\":1,\"b\":2,\"a\":1}")]
    [InlineData("{\"a\":1,\"\\u0061\":2}")]
    [InlineData("\"\\ud800\"")]
    [InlineData("{\"\\udc00x\":1}")]
    [InlineData("1e400")]
    [InlineData("[1,]")]
    [InlineData("")]
    public void What_has_no_canonical_form_is_refused(string json) =>
        Assert.ThrowsAny<JsonException>(() => Canonical(json));

    [Fact]
    public void A_value_being_built_has_the_same_form_as_its_text()
    {
        var node = new JsonObject { ["z"] = 1, ["a"] = new JsonArray(1.5, "x", null, true), ["m"] = long.MaxValue };
        Assert.Equal("""{"a":[1.5,"x",null,true],"m":9223372036854776000,"z":1}""", CanonicalJson.Text(node));
        Assert.Equal(CanonicalJson.Bytes(node), Canonical(node.ToJsonString()));
        Assert.Equal("null", CanonicalJson.Text((JsonNode?)null));
    }

    [Fact]
    public void The_order_in_which_names_were_written_does_not_matter() =>
        Gen.Select(Value, Gen.Int).Sample((value, seed) =>
        {
            var shuffled = Shuffle(value, new Random(seed));
            Assert.Equal(CanonicalJson.Text(value), CanonicalJson.Text(shuffled));
        });

    [Fact]
    public void The_canonical_form_of_a_canonical_form_is_itself_and_means_the_same() =>
        Value.Sample(value =>
        {
            var once = CanonicalJson.Bytes(value);
            Assert.Equal(once, CanonicalJson.Bytes((ReadOnlyMemory<byte>)once));
            Assert.True(JsonNode.DeepEquals(value, JsonNode.Parse(once)));
        });

    private static readonly Gen<string> Text = Gen.Char.Where(c => !char.IsSurrogate(c)).Array[0, 6].Select(chars => new string(chars));

    private static readonly Gen<JsonNode?> Leaf = Gen.OneOf(
        Text.Select(text => (JsonNode?)JsonValue.Create(text)),
        Gen.Int.Select(number => (JsonNode?)JsonValue.Create(number)),
        Gen.Bool.Select(value => (JsonNode?)JsonValue.Create(value)),
        Gen.Const((JsonNode?)null));

    private static readonly Gen<JsonNode?> Value = Gen.Recursive<JsonNode?>((depth, inner) => depth == 3
        ? Leaf
        : Gen.OneOf(
            Leaf,
            inner.Array[0, 4].Select(items => (JsonNode?)new JsonArray(items.Select(Copy).ToArray())),
            Gen.Dictionary(Text, inner)[0, 4].Select(fields => (JsonNode?)new JsonObject(fields.Select(f => KeyValuePair.Create(f.Key, Copy(f.Value)))))));

    private static JsonNode? Copy(JsonNode? node) => node?.DeepClone();

    private static JsonNode? Shuffle(JsonNode? node, Random random) => node switch
    {
        JsonObject fields => new JsonObject(
            fields.OrderBy(_ => random.Next()).Select(f => KeyValuePair.Create(f.Key, Shuffle(f.Value, random))).ToList()),
        JsonArray items => new JsonArray(items.Select(item => Shuffle(item, random)).ToArray()),
        _ => Copy(node),
    };

    private static byte[] Canonical(string json) => CanonicalJson.Bytes((ReadOnlyMemory<byte>)Encoding.UTF8.GetBytes(json));
}
