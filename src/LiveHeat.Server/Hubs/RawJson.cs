using System.Text.Json;
using System.Text.Json.Serialization;
using LiveHeat.Contracts.Wire;

namespace LiveHeat.Server.Hubs;

/// <summary>JSON that was written once and goes to many connections as it is.</summary>
[JsonConverter(typeof(AsItIs))]
internal sealed class RawJson(byte[] utf8)
{
    public ReadOnlyMemory<byte> Utf8 => utf8;

    public static RawJson Of<T>(T value) => new(JsonSerializer.SerializeToUtf8Bytes(value, WireJson.Options));

    private sealed class AsItIs : JsonConverter<RawJson>
    {
        public override RawJson Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            throw new NotSupportedException("Raw JSON is only written.");

        public override void Write(Utf8JsonWriter writer, RawJson value, JsonSerializerOptions options) =>
            writer.WriteRawValue(value.Utf8.Span, skipInputValidation: true);
    }
}
