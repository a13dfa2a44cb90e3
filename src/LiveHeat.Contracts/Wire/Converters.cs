using System.Text.Json;
using System.Text.Json.Serialization;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Wire;

/// <summary>An id as plain text.</summary>
/// <param name="write">To text.</param>
/// <param name="read">From text; null when it is none.</param>
/// <param name="unknown">What <c>null</c> stands for, where an unknown one is allowed.</param>
internal sealed class TextConverter<T>(Func<T, string> write, Func<string, T?> read, T? unknown = null) : JsonConverter<T>
    where T : struct
{
    public override bool HandleNull => unknown is not null;

    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        (reader.TokenType == JsonTokenType.Null ? unknown : reader.TokenType == JsonTokenType.String ? read(reader.GetString()!) : null) ?? throw new JsonException(WireWords.NoId);

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(write(value));
}

/// <summary>A lane as a number from 1 to 99.</summary>
internal sealed class LaneNumberConverter : JsonConverter<LaneNumber>
{
    private const int Most = 99;

    public override LaneNumber Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.Number && reader.TryGetInt32(out var lane) && lane is >= 1 and <= Most
            ? new LaneNumber(lane)
            : throw new JsonException(WireWords.Lane(Most));

    public override void Write(Utf8JsonWriter writer, LaneNumber value, JsonSerializerOptions options) => writer.WriteNumberValue(value.Value);
}

/// <summary>An instant as whole Unix milliseconds, from 2000 to 2200.</summary>
internal sealed class InstantConverter : JsonConverter<Instant>
{
    private const long Earliest = 946_684_800_000;
    private const long Latest = 7_258_118_400_000;

    public override Instant Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.Number && reader.TryGetInt64(out var ms) && ms is >= Earliest and <= Latest
            ? new Instant(ms)
            : throw new JsonException(WireWords.Instant);

    public override void Write(Utf8JsonWriter writer, Instant value, JsonSerializerOptions options) => writer.WriteNumberValue(value.UnixMs);
}

/// <summary>Flags as a list of their names.</summary>
internal sealed class FactFlagsConverter : JsonConverter<FactFlags>
{
    private static readonly IReadOnlyList<(FactFlags Flag, string Name)> Names =
        [.. Enum.GetValues<FactFlags>().Where(flag => flag != FactFlags.None).Select(flag => (flag, JsonNamingPolicy.KebabCaseLower.ConvertName(flag.ToString())))];

    public override FactFlags Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var names = JsonSerializer.Deserialize<List<string>>(ref reader, options) ?? [];
        return Names.Where(pair => names.Contains(pair.Name)).Aggregate(FactFlags.None, (flags, pair) => flags | pair.Flag);
    }

    public override void Write(Utf8JsonWriter writer, FactFlags value, JsonSerializerOptions options)
    {
        writer.WriteStartArray();
        foreach (var (_, name) in Names.Where(pair => value.HasFlag(pair.Flag)))
        {
            writer.WriteStringValue(name);
        }

        writer.WriteEndArray();
    }
}

/// <summary><see cref="Items{T}"/> as a JSON array.</summary>
internal sealed class ItemsConverterFactory : JsonConverterFactory
{
    public override bool CanConvert(Type typeToConvert) =>
        typeToConvert.IsGenericType && typeToConvert.GetGenericTypeDefinition() == typeof(Items<>);

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        (JsonConverter)Activator.CreateInstance(typeof(ItemsConverter<>).MakeGenericType(typeToConvert.GetGenericArguments()))!;

    private sealed class ItemsConverter<T> : JsonConverter<Items<T>>
    {
        public override Items<T> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            var items = Array(ref reader, options) ?? throw new JsonException(WireWords.ListMissing);
            return items.Any(item => item is null) ? throw new JsonException(WireWords.ListGap) : items.ToItems();
        }

        private static T[]? Array(ref Utf8JsonReader reader, JsonSerializerOptions options)
        {
            try
            {
                return JsonSerializer.Deserialize<T[]>(ref reader, options);
            }
            catch (JsonException wrong) when (wrong.Path is { Length: > 1 })
            {
                throw WirePlace.InList(wrong);
            }
        }

        public override void Write(Utf8JsonWriter writer, Items<T> value, JsonSerializerOptions options)
        {
            writer.WriteStartArray();
            foreach (var item in value)
            {
                JsonSerializer.Serialize(writer, item, options);
            }

            writer.WriteEndArray();
        }
    }
}
