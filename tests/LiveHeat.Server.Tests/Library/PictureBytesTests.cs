namespace LiveHeat.Server.Library;

public sealed class PictureBytesTests
{
    // PNG: W3C PNG (third edition), 5.2. JPEG: ITU-T T.81, a start-of-image marker and the next marker. WebP: RFC 9649, 2.3. All from memory.
    [Theory]
    [InlineData("89504E470D0A1A0A0000", "image/png")]
    [InlineData("FFD8FFE000104A464946", "image/jpeg")]
    [InlineData("FFD8FFDB00", "image/jpeg")]
    [InlineData("524946462400000057454250", "image/webp")]
    [InlineData("89504E470D0A1A", null)]
    [InlineData("FFD8", null)]
    [InlineData("5249464624000000", null)]
    [InlineData("52494646240000005741564520", null)]
    [InlineData("47494638396100", null)]
    [InlineData("3C68746D6C3E", null)]
    [InlineData("3C737667", null)]
    [InlineData("", null)]
    public void A_picture_is_known_by_its_first_bytes(string hex, string? type) => Assert.Equal(type, PictureBytes.TypeOf(Convert.FromHexString(hex)));
}
