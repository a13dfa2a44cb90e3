namespace LiveHeat.Server.Library;

public sealed class PictureAddressTests
{
    private const string Key = "0123456789abcdef0123456789abcdef";

    [Fact]
    public void The_key_is_read_out_of_our_own_addresses() => Assert.Equal(Key, PictureAddress.KeyOf(PictureAddress.Of("wall-ball-2", Key)));

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("https://elsewhere.test/api/setup/movements/a/picture?v=0123456789abcdef0123456789abcdef")]
    [InlineData("//elsewhere.test/api/setup/movements/a/picture?v=0123456789abcdef0123456789abcdef")]
    [InlineData("/api/setup/movements/a/picture")]
    [InlineData("/api/setup/movements/a/picture?v=0123")]
    [InlineData("/api/setup/movements/../picture?v=0123456789abcdef0123456789abcdef")]
    [InlineData("/api/setup/movements/a/picture?v=0123456789abcdef0123456789abcdef&x=\"")]
    public void Any_other_address_has_none(string? address) => Assert.Null(PictureAddress.KeyOf(address));
}
