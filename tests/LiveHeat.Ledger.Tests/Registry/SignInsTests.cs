using System.Buffers.Text;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Ledger.Registry;

public class SignInsTests : RegistryTest
{
    private SignIns SignIns => Registry.SignIns;

    [Fact]
    public async Task A_token_finds_its_sign_in_after_a_restart()
    {
        var made = await SignIns.Make("device-1", "Mara", Role.Judge, new LaneNumber(2), Go);
        var expected = new SignIn(made.SignIn.Id, "device-1", "Mara", Role.Judge, new LaneNumber(2), new Instant(StartMs), new Instant(StartMs), null);
        await Reopen();
        Assert.Equal(expected, await SignIns.FindByToken(made.Token, Go));
        Assert.Equal(expected, await SignIns.Find(made.SignIn.Id, Go));
    }

    [Theory]
    [InlineData(Role.Organiser)]
    [InlineData(Role.HeadJudge)]
    [InlineData(Role.Announcer)]
    [InlineData(Role.Viewer)]
    public async Task Others_have_no_lane(Role role)
    {
        var made = await SignIns.Make("device-1", "Ilka", role, null, Go);
        Assert.Equal((role, null), ((await SignIns.Find(made.SignIn.Id, Go))!.Role, made.SignIn.Lane));
    }

    [Fact]
    public async Task A_token_is_256_bits_and_stored_nowhere()
    {
        var made = await SignIns.Make("device-1", "Mara", Role.Judge, new LaneNumber(2), Go);
        var other = await SignIns.Make("device-1", "Mara", Role.Judge, new LaneNumber(2), Go);
        Assert.Equal(32, Base64Url.DecodeFromChars(made.Token).Length);
        Assert.NotEqual(made.Token, other.Token);
        Assert.NotEqual(made.SignIn.Id, other.SignIn.Id);

        var stored = await EverythingStored();
        Assert.Contains(stored, text => text == made.SignIn.Id);
        Assert.DoesNotContain(stored, text => text.Contains(made.Token, StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_unknown_token_is_nobody()
    {
        var made = await SignIns.Make("device-1", "Mara", Role.Judge, new LaneNumber(2), Go);
        Assert.Null(await SignIns.FindByToken("", Go));
        Assert.Null(await SignIns.FindByToken(made.Token + "A", Go));
        Assert.Null(await SignIns.FindByToken(made.SignIn.Id, Go));
    }

    [Fact]
    public async Task A_revoked_sign_in_lets_nobody_in_but_is_still_known_by_its_id()
    {
        var made = await SignIns.Make("device-1", "Mara", Role.Judge, new LaneNumber(2), Go);
        var stays = await SignIns.Make("device-2", "Bram", Role.HeadJudge, null, Go);
        Time.Advance(TimeSpan.FromSeconds(5));
        Assert.True(await SignIns.Revoke(made.SignIn.Id, Go));
        Time.Advance(TimeSpan.FromSeconds(5));
        Assert.False(await SignIns.Revoke(made.SignIn.Id, Go));
        Assert.False(await SignIns.Revoke("no such sign-in", Go));

        Assert.Null(await SignIns.FindByToken(made.Token, Go));
        Assert.Equal(new Instant(StartMs + 5000), (await SignIns.Find(made.SignIn.Id, Go))!.RevokedAt);
        Assert.Equal([stays.SignIn], await SignIns.List(Go));
    }

    [Fact]
    public async Task When_a_device_was_last_there_is_kept()
    {
        var made = await SignIns.Make("device-1", "Mara", Role.Judge, new LaneNumber(2), Go);
        Time.Advance(TimeSpan.FromMinutes(3));
        await SignIns.Seen(made.SignIn.Id, Go);
        Assert.Equal(
            made.SignIn with { LastSeenAt = new Instant(StartMs + 180_000) },
            await SignIns.FindByToken(made.Token, Go));
    }
}
