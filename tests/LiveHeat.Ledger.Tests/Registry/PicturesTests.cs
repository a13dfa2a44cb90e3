using System.Security.Cryptography;

namespace LiveHeat.Ledger.Registry;

public class PicturesTests : RegistryTest
{
    private static readonly byte[] Bytes = [0x89, 1, 2, 3];

    [Fact]
    public async Task A_picture_is_kept_under_what_is_in_it()
    {
        var key = await Registry.Pictures.Put(new Picture("image/png", Bytes), Go);

        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(Bytes))[..32], key);
        await Reopen();
        var kept = await Registry.Pictures.Get(key, Go);
        Assert.Equal("image/png", kept!.ContentType);
        Assert.Equal(Bytes, kept.Bytes);
        Assert.True(await Registry.Pictures.Has(key, Go));
    }

    [Fact]
    public async Task The_same_picture_again_is_the_one_that_is_there()
    {
        var first = await Registry.Pictures.Put(new Picture("image/png", Bytes), Go);
        var second = await Registry.Pictures.Put(new Picture("image/png", [.. Bytes]), Go);
        var other = await Registry.Pictures.Put(new Picture("image/png", [.. Bytes, 4]), Go);

        Assert.Equal(first, second);
        Assert.NotEqual(first, other);
    }

    [Fact]
    public async Task What_is_not_there_is_told()
    {
        Assert.Null(await Registry.Pictures.Get("00", Go));
        Assert.False(await Registry.Pictures.Has("00", Go));
    }
}
