using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace LiveHeat.Engine.Integrity;

/// <summary>The one way to write a JSON value as bytes, so that whoever hashes or signs it gets the same: RFC 8785.</summary>
/// <remarks>
/// Names sorted by UTF-16 code units, no white space, numbers and strings as ECMAScript writes them. Numbers are doubles: a whole
/// number beyond 2^53 loses its last digits here, so nothing on the wire is that large. What has no canonical form (a name twice,
/// half a surrogate pair, a number beyond a double) throws a <see cref="JsonException"/>.
/// </remarks>
public static class CanonicalJson
{
    /// <summary>The canonical bytes of JSON text in UTF-8.</summary>
    public static byte[] Bytes(ReadOnlyMemory<byte> utf8)
    {
        using var document = JsonDocument.Parse(utf8);
        return Bytes(document.RootElement);
    }

    /// <summary>The canonical bytes of a value already read.</summary>
    public static byte[] Bytes(JsonElement value) => Write(value).WrittenSpan.ToArray();

    /// <summary>The canonical bytes of a value being built; <c>null</c> is JSON's null.</summary>
    public static byte[] Bytes(JsonNode? value) => Bytes(JsonSerializer.SerializeToElement(value));

    /// <summary>The canonical form as text.</summary>
    public static string Text(JsonElement value) => Encoding.UTF8.GetString(Write(value).WrittenSpan);

    /// <summary>The canonical form as text; <c>null</c> is JSON's null.</summary>
    public static string Text(JsonNode? value) => Text(JsonSerializer.SerializeToElement(value));

    private static ArrayBufferWriter<byte> Write(JsonElement value)
    {
        var output = new ArrayBufferWriter<byte>(1024);
        Write(output, value);
        return output;
    }

    private static void Write(ArrayBufferWriter<byte> output, JsonElement value)
    {
        switch (value.ValueKind)
        {
            case JsonValueKind.Object:
                WriteObject(output, value);
                break;
            case JsonValueKind.Array:
                WriteArray(output, value);
                break;
            case JsonValueKind.String:
                CanonicalString.Write(output, TextOf(value));
                break;
            case JsonValueKind.Number:
                CanonicalNumber.Write(output, value.GetDouble());
                break;
            case JsonValueKind.True:
                output.Write("true"u8);
                break;
            case JsonValueKind.False:
                output.Write("false"u8);
                break;
            case JsonValueKind.Null:
                output.Write("null"u8);
                break;
            default:
                throw new JsonException("There is no JSON value here.");
        }
    }

    private static void WriteObject(ArrayBufferWriter<byte> output, JsonElement value)
    {
        var fields = value.EnumerateObject().Select(field => (Name: NameOf(field), field.Value)).ToList();
        fields.Sort((left, right) => string.CompareOrdinal(left.Name, right.Name));

        output.Write("{"u8);
        for (var i = 0; i < fields.Count; i++)
        {
            if (i > 0)
            {
                if (fields[i].Name == fields[i - 1].Name)
                {
                    throw new JsonException($"The name \"{fields[i].Name}\" stands twice in one object.");
                }

                output.Write(","u8);
            }

            CanonicalString.Write(output, fields[i].Name);
            output.Write(":"u8);
            Write(output, fields[i].Value);
        }

        output.Write("}"u8);
    }

    private static void WriteArray(ArrayBufferWriter<byte> output, JsonElement value)
    {
        output.Write("["u8);
        var first = true;
        foreach (var item in value.EnumerateArray())
        {
            if (!first)
            {
                output.Write(","u8);
            }

            first = false;
            Write(output, item);
        }

        output.Write("]"u8);
    }

    private static string TextOf(JsonElement value)
    {
        try
        {
            return value.GetString()!;
        }
        catch (InvalidOperationException e)
        {
            throw new JsonException(CanonicalString.HalfAPair, e);
        }
    }

    private static string NameOf(JsonProperty field)
    {
        try
        {
            return field.Name;
        }
        catch (InvalidOperationException e)
        {
            throw new JsonException(CanonicalString.HalfAPair, e);
        }
    }
}
