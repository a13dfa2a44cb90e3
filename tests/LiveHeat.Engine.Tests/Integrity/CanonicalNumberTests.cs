using System.Globalization;
using System.Text.Json.Nodes;
using CsCheck;

namespace LiveHeat.Engine.Integrity;

public class CanonicalNumberTests
{
    [Theory]   // RFC 8785, appendix B: IEEE 754 bits and their text
    [InlineData(0x0000000000000000, "0")]
    [InlineData(0x8000000000000000, "0")]
    [InlineData(0x0000000000000001, "5e-324")]
    [InlineData(0x8000000000000001, "-5e-324")]
    [InlineData(0x7fefffffffffffff, "1.7976931348623157e+308")]
    [InlineData(0xffefffffffffffff, "-1.7976931348623157e+308")]
    [InlineData(0x4340000000000000, "9007199254740992")]
    [InlineData(0xc340000000000000, "-9007199254740992")]
    [InlineData(0x4430000000000000, "295147905179352830000")]
    [InlineData(0x44b52d02c7e14af5, "9.999999999999997e+22")]
    [InlineData(0x44b52d02c7e14af6, "1e+23")]
    [InlineData(0x44b52d02c7e14af7, "1.0000000000000001e+23")]
    [InlineData(0x444b1ae4d6e2ef4e, "999999999999999700000")]
    [InlineData(0x444b1ae4d6e2ef4f, "999999999999999900000")]
    [InlineData(0x444b1ae4d6e2ef50, "1e+21")]
    [InlineData(0x3eb0c6f7a0b5ed8c, "9.999999999999997e-7")]
    [InlineData(0x3eb0c6f7a0b5ed8d, "0.000001")]
    [InlineData(0x41b3de4355555553, "333333333.3333332")]
    [InlineData(0x41b3de4355555554, "333333333.33333325")]
    [InlineData(0x41b3de4355555555, "333333333.3333333")]
    [InlineData(0x41b3de4355555556, "333333333.3333334")]
    [InlineData(0x41b3de4355555557, "333333333.33333343")]
    [InlineData(0xbecbf647612f3696, "-0.0000033333333333333333")]
    [InlineData(0x43143ff3c1cb0959, "1424953923781206.2")]
    public void Numbers_are_written_as_the_standard_writes_them(ulong bits, string expected) =>
        Assert.Equal(expected, TextOf(BitConverter.UInt64BitsToDouble(bits)));

    [Theory]   // ECMA-262, Number::toString: computed from its cases k <= n <= 21, 0 < n <= 21, -6 < n <= 0 and the rest
    [InlineData(1, "1")]
    [InlineData(10, "10")]
    [InlineData(-1.5, "-1.5")]
    [InlineData(1795600841200, "1795600841200")]
    [InlineData(81234.5, "81234.5")]
    [InlineData(0.1, "0.1")]
    [InlineData(123e18, "123000000000000000000")]
    [InlineData(123e19, "1.23e+21")]
    [InlineData(1e-6, "0.000001")]
    [InlineData(1e-7, "1e-7")]
    [InlineData(1.25e-7, "1.25e-7")]
    [InlineData(100, "100")]
    [InlineData(1e100, "1e+100")]
    public void Numbers_change_to_an_exponent_where_ECMAScript_does(double value, string expected) =>
        Assert.Equal(expected, TextOf(value));

    [Fact]
    public void Every_number_reads_back_as_itself() =>
        Gen.ULong.Select(BitConverter.UInt64BitsToDouble).Where(double.IsFinite).Sample(
            value => double.Parse(TextOf(value), CultureInfo.InvariantCulture) == value,
            iter: 20_000);

    private static string TextOf(double value) => CanonicalJson.Text(JsonValue.Create(value));
}
