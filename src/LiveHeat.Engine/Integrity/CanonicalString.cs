using System.Buffers;
using System.Text;
using System.Text.Json;

namespace LiveHeat.Engine.Integrity;

/// <summary>A JSON string as ECMAScript writes it (RFC 8785, section 3.2.2.2): only what must be escaped is.</summary>
internal static class CanonicalString
{
    /// <summary>Half of a surrogate pair is no character, so no two programs need agree on its bytes.</summary>
    internal const string HalfAPair = "A text holds half of a surrogate pair.";

    private static readonly SearchValues<char> Escaped = SearchValues.Create(
        "\"\\\0\u0001\u0002\u0003\u0004\u0005\u0006\u0007\b\t\n\u000b\f\r\u000e\u000f\u0010\u0011\u0012\u0013\u0014\u0015\u0016\u0017\u0018\u0019\u001a\u001b\u001c\u001d\u001e\u001f");

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    internal static void Write(ArrayBufferWriter<byte> output, ReadOnlySpan<char> text)
    {
        output.Write("\""u8);
        while (!text.IsEmpty)
        {
            var plain = text.IndexOfAny(Escaped);
            if (plain < 0)
            {
                WritePlain(output, text);
                break;
            }

            WritePlain(output, text[..plain]);
            WriteEscaped(output, text[plain]);
            text = text[(plain + 1)..];
        }

        output.Write("\""u8);
    }

    private static void WritePlain(ArrayBufferWriter<byte> output, ReadOnlySpan<char> text)
    {
        try
        {
            Strict.GetBytes(text, output);
        }
        catch (EncoderFallbackException e)
        {
            throw new JsonException(HalfAPair, e);
        }
    }

    private static void WriteEscaped(ArrayBufferWriter<byte> output, char character)
    {
        switch (character)
        {
            case '"':
                output.Write("\\\""u8);
                break;
            case '\\':
                output.Write("\\\\"u8);
                break;
            case '\b':
                output.Write("\\b"u8);
                break;
            case '\t':
                output.Write("\\t"u8);
                break;
            case '\n':
                output.Write("\\n"u8);
                break;
            case '\f':
                output.Write("\\f"u8);
                break;
            case '\r':
                output.Write("\\r"u8);
                break;
            default:
                output.Write("\\u00"u8);
                output.Write([HexDigit(character >> 4), HexDigit(character & 15)]);
                break;
        }
    }

    private static byte HexDigit(int value) => (byte)(value < 10 ? '0' + value : 'a' + value - 10);
}
