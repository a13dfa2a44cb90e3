using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Replays;

public sealed class ReplayLinkTests
{
    [Theory]
    [InlineData("272000", 272_000L)]
    [InlineData("4:32", 272_000L)]
    [InlineData("4:32.5", 272_500L)]
    [InlineData("soon", null)]
    [InlineData("-5", null)]
    [InlineData(null, null)]
    public void A_time_in_an_address_may_be_typed_by_a_person(string? text, long? ms) => Assert.Equal(ms, ReplayLink.At(text));

    [Theory]
    [InlineData("3", 3)]
    [InlineData("0", null)]
    [InlineData("three", null)]
    [InlineData(null, null)]
    public void So_may_a_lane(string? text, int? lane) => Assert.Equal(lane is { } number ? new LaneNumber(number) : null, ReplayLink.Lane(text));

    [Fact]
    public void An_address_that_was_made_is_read_back()
    {
        var address = ReplayLink.To(new HeatId("h1"), new LaneNumber(3), 272_000);

        Assert.Equal("replay/h1?lane=3&at=272000", address);
    }
}
