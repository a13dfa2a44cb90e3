using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Ledger.Registry;

public class JoinCodesTests : RegistryTest
{
    private static readonly TimeSpan Day = TimeSpan.FromHours(12);
    private static readonly LaneNumber Lane2 = new(2);

    private JoinCodes Codes => Registry.JoinCodes;

    [Fact]
    public async Task A_code_lets_in_as_often_as_needed_and_after_a_restart()
    {
        var made = await Codes.Make(Role.Judge, Lane2, Day, Go);
        Assert.Equal(
            new JoinCode(made.Code.Id, Role.Judge, Lane2, new Instant(StartMs), new Instant(StartMs + 43_200_000), null),
            made.Code);
        Assert.Equal(new CodeCheck.Good(made.Code), await Codes.Check(made.Text, Go));
        await Reopen();
        Assert.Equal(new CodeCheck.Good(made.Code), await Codes.Check(made.Text, Go));
        Assert.Equal([made.Code], await Codes.List(Go));
    }

    [Fact]
    public async Task A_code_is_eight_characters_and_may_be_typed_as_people_type()
    {
        var made = await Codes.Make(Role.HeadJudge, null, Day, Go);
        Assert.Matches("^[0-9A-HJKMNP-TV-Z]{8}$", made.Text);
        var typed = made.Text.ToLowerInvariant().Insert(4, " - ").Replace('0', 'o').Replace('1', 'l');
        Assert.Equal(new CodeCheck.Good(made.Code), await Codes.Check(typed, Go));
    }

    [Fact]
    public async Task A_code_expires_at_its_moment()
    {
        var made = await Codes.Make(Role.Announcer, null, TimeSpan.FromMinutes(10), Go);
        Time.Advance(TimeSpan.FromMinutes(10) - TimeSpan.FromMilliseconds(1));
        Assert.IsType<CodeCheck.Good>(await Codes.Check(made.Text, Go));
        Time.Advance(TimeSpan.FromMilliseconds(1));
        Assert.Equal(new CodeCheck.Over(made.Code), await Codes.Check(made.Text, Go));
        Assert.Empty(await Codes.List(Go));
    }

    [Fact]
    public async Task A_new_code_ends_the_one_before_for_the_same_lane_only()
    {
        var first = await Codes.Make(Role.Judge, Lane2, Day, Go);
        var otherLane = await Codes.Make(Role.Judge, new LaneNumber(3), Day, Go);
        var otherRole = await Codes.Make(Role.HeadJudge, null, Day, Go);
        Time.Advance(TimeSpan.FromSeconds(1));
        var second = await Codes.Make(Role.Judge, Lane2, Day, Go);

        Assert.Equal(new CodeCheck.Over(first.Code with { ReplacedAt = new Instant(StartMs + 1000) }), await Codes.Check(first.Text, Go));
        Assert.IsType<CodeCheck.Good>(await Codes.Check(second.Text, Go));
        Assert.IsType<CodeCheck.Good>(await Codes.Check(otherLane.Text, Go));
        Assert.IsType<CodeCheck.Good>(await Codes.Check(otherRole.Text, Go));
        Assert.Equal(3, (await Codes.List(Go)).Count);

        var third = await Codes.Make(Role.HeadJudge, null, Day, Go);
        Assert.IsType<CodeCheck.Over>(await Codes.Check(otherRole.Text, Go));
        Assert.IsType<CodeCheck.Good>(await Codes.Check(third.Text, Go));
    }

    [Theory]
    [InlineData("00000000")]
    [InlineData("not a code")]
    [InlineData("")]
    [InlineData(null)]
    public async Task A_guess_is_wrong(string? typed)
    {
        await Codes.Make(Role.Judge, Lane2, Day, Go);
        Assert.Equal(new CodeCheck.Wrong(), await Codes.Check(typed, Go));
    }

    [Fact]
    public async Task The_code_is_stored_nowhere()
    {
        var made = await Codes.Make(Role.Judge, Lane2, Day, Go);
        var stored = await EverythingStored();
        Assert.Contains(stored, text => text == made.Code.Id);
        Assert.DoesNotContain(stored, text => text.Contains(made.Text, StringComparison.Ordinal));
        Assert.DoesNotContain(stored, text => text.Contains(PlainHash(made.Text), StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public async Task A_code_without_a_life_is_our_own_mistake() =>
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => Codes.Make(Role.Judge, Lane2, TimeSpan.Zero, Go));

    private static string PlainHash(string text) =>
        Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.ASCII.GetBytes(text)));
}
