namespace LiveHeat.Ledger.Registry;

public class PassphraseTests : RegistryTest
{
    private Passphrase Passphrase => Registry.Passphrase;

    [Fact]
    public async Task It_is_made_once_and_opens_after_a_restart()
    {
        var text = await Passphrase.MakeFirst(Go);
        Assert.Matches("^([0-9A-HJKMNP-TV-Z]{5}-){3}[0-9A-HJKMNP-TV-Z]{5}$", text);
        Assert.Null(await Passphrase.MakeFirst(Go));
        await Reopen();
        Assert.Null(await Passphrase.MakeFirst(Go));
        Assert.True(await Passphrase.Verify(text, Go));
    }

    [Fact]
    public async Task It_may_be_typed_as_people_type()
    {
        var text = (await Passphrase.MakeFirst(Go))!;
        Assert.True(await Passphrase.Verify(text.Replace("-", "", StringComparison.Ordinal).ToLowerInvariant(), Go));
        Assert.True(await Passphrase.Verify($" {text.Replace('-', ' ')} ", Go));
    }

    [Fact]
    public async Task Anything_else_does_not_open()
    {
        Assert.False(await Passphrase.Verify("00000-00000-00000-00000", Go));
        var text = (await Passphrase.MakeFirst(Go))!;
        Assert.False(await Passphrase.Verify(null, Go));
        Assert.False(await Passphrase.Verify("", Go));
        Assert.False(await Passphrase.Verify(text[..^1], Go));
        Assert.False(await Passphrase.Verify(text[..^1] + (text[^1] == 'A' ? 'B' : 'A'), Go));
    }

    [Fact]
    public async Task A_new_one_voids_the_old()
    {
        var old = await Passphrase.MakeFirst(Go);
        var renewed = await Passphrase.Renew(Go);
        Assert.NotEqual(old, renewed);
        Assert.False(await Passphrase.Verify(old, Go));
        Assert.True(await Passphrase.Verify(renewed, Go));
    }

    [Fact]
    public async Task It_is_stored_nowhere()
    {
        var text = (await Passphrase.MakeFirst(Go))!;
        var stored = await EverythingStored();
        Assert.Contains(stored, value => value.Length > 60);   // the hash is there
        Assert.DoesNotContain(stored, value => value.Contains(text, StringComparison.Ordinal));
        Assert.DoesNotContain(stored, value => value.Contains(text.Replace("-", "", StringComparison.Ordinal), StringComparison.Ordinal));
    }
}
