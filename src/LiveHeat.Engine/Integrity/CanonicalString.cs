using System.Buffers;
using System.Text;
using System.Text.Json;

namespace LiveHeat.Engine.Integrity;

/// <summary>A JSON string as ECMAScript writes it (RFC 8785, section 3.2.2.2): only what must be escaped is.</summary>
internal static class CanonicalString
{
    /// <summary>Half of a surrogate pair is no character, so no two programs need agree on its bytes.</summary>
    internal const string HalfAPair = "A text holds half of a surrogate pair.";

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    internal static void Write(ArrayBufferWriter<byte> output, ReadOnlySpan<char> text)
    {
        output.Write("\""u8);
        while (!text.IsEmpty)
        {
            var plain = WritePlain(output, text);
            text = text[plain..];
            if (text.IsEmpty)
            {
                break;
            }

            if (text[0] < 0x80)
            {
                WriteEscaped(output, text[0]);
                text = text[1..];
            }
            else
            {
                text = text[WriteBeyondAscii(output, text)..];
            }
        }

        output.Write("\""u8);
    }

    /// <summary>Writes as much from the start as stands for itself, one byte a character; tells how much that was.</summary>
    private static int WritePlain(ArrayBufferWriter<byte> output, ReadOnlySpan<char> text)
    {
        var bytes = output.GetSpan(text.Length);
        var count = 0;
        while (count < text.Length && text[count] is >= ' ' and < (char)0x80 and not ('"' or '\\'))
        {
            bytes[count] = (byte)text[count];
            count++;
        }

        output.Advance(count);
        return count;
    }

    private static int WriteBeyondAscii(ArrayBufferWriter<byte> output, ReadOnlySpan<char> text)
    {
        var end = text.IndexOfAnyInRange('\0', (char)0x7f);
        var run = end < 0 ? text : text[..end];
        try
        {
            Strict.GetBytes(run, output);
        }
        catch (EncoderFallbackException e)
        {
            throw new JsonException(HalfAPair, e);
        }

        return run.Length;
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
