using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace LiveHeat.Engine.Integrity;

/// <summary>A number as ECMAScript writes it (ECMA-262, Number::toString; RFC 8785, section 3.2.2.3).</summary>
internal static class CanonicalNumber
{
    internal static void Write(ArrayBufferWriter<byte> output, double value) =>
        Encoding.ASCII.GetBytes(Text(value), output);

    internal static string Text(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new JsonException("A number is too large for JSON's canonical form.");
        }

        if (value == 0)
        {
            return "0";   // minus zero as well
        }

        var sign = value < 0 ? "-" : "";
        var (digits, point) = Shortest(Math.Abs(value));
        return sign + Lay(digits, point);
    }

    /// <summary>The fewest digits that read back as the same double, and where the point stands: 0.digits times ten to the power of point.</summary>
    private static (string Digits, int Point) Shortest(double value)
    {
        // .NET's "R" gives these digits, but lays them out in its own way.
        var text = value.ToString("R", CultureInfo.InvariantCulture);
        var exponentAt = text.IndexOf('E', StringComparison.Ordinal);
        var exponent = exponentAt < 0 ? 0 : int.Parse(text.AsSpan(exponentAt + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        var mantissa = exponentAt < 0 ? text : text[..exponentAt];

        var pointAt = mantissa.IndexOf('.', StringComparison.Ordinal);
        var whole = pointAt < 0 ? mantissa : mantissa[..pointAt];
        var digits = pointAt < 0 ? mantissa : whole + mantissa[(pointAt + 1)..];
        var leading = digits.Length - digits.TrimStart('0').Length;
        return (digits.Trim('0'), whole.Length + exponent - leading);
    }

    private static string Lay(string digits, int point) => point switch
    {
        > 21 or <= -6 => WithExponent(digits, point - 1),
        <= 0 => "0." + new string('0', -point) + digits,
        _ when point >= digits.Length => digits + new string('0', point - digits.Length),
        _ => digits[..point] + "." + digits[point..],
    };

    private static string WithExponent(string digits, int exponent)
    {
        var mantissa = digits.Length == 1 ? digits : digits[..1] + "." + digits[1..];
        return string.Create(CultureInfo.InvariantCulture, $"{mantissa}e{(exponent < 0 ? "-" : "+")}{Math.Abs(exponent)}");
    }
}
