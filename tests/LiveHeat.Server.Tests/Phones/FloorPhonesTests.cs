using LiveHeat.Contracts.Phones;
using LiveHeat.Engine.Heats;
using LiveHeat.Server.Access;
using LiveHeat.Server.Time;
using Microsoft.Extensions.Time.Testing;

namespace LiveHeat.Server.Phones;

public sealed class FloorPhonesTests
{
    private static readonly SignedIn Mara = new("in-mara", "Mara", Role.Judge, new LaneNumber(2));
    private static readonly SignedIn Lou = new("in-lou", "Lou", Role.Judge, new LaneNumber(1));
    private static readonly HeatId Heat = new("h1");

    private readonly FakeTimeProvider time = new(new DateTimeOffset(2026, 11, 21, 9, 0, 0, TimeSpan.Zero));
    private readonly FloorPhones phones;
    private int changes;

    public FloorPhonesTests()
    {
        phones = new FloorPhones(new Timebase(time));
        phones.Changed += () => changes++;
    }

    [Fact]
    public void A_phone_that_connected_is_online_before_it_says_anything()
    {
        phones.Connected(Mara, "c1");

        var phone = Assert.Single(phones.All());
        Assert.Equal(("in-mara", "Mara", new LaneNumber(2), true, null), (phone.Device, phone.Judge, phone.Lane, phone.Online, phone.Status));
        Assert.Equal((time.GetUtcNow().ToUnixTimeMilliseconds(), 1), (phone.LastSeen.UnixMs, changes));
    }

    [Fact]
    public void Screens_are_no_phones()
    {
        phones.Connected(SignedIn.Nobody, "c1");
        phones.Connected(new SignedIn("in-desk", "Ona", Role.Organiser, null), "c2");
        phones.Gone(SignedIn.Nobody, "c1");

        Assert.Empty(phones.All());
        Assert.Equal(0, changes);
    }

    [Fact]
    public void A_phone_speaks_for_its_own_lane()
    {
        phones.Told(Mara, "c1", Status(lane: 9, unsent: 1));

        Assert.Equal((new LaneNumber(2), new LaneNumber(2)), (phones.All()[0].Lane, phones.All()[0].Status!.Lane));
    }

    [Fact]
    public void Silence_is_offline_and_a_word_is_online_again()
    {
        phones.Told(Mara, "c1", Status());
        time.Advance(TimeSpan.FromMilliseconds(11_999));
        Assert.True(phones.All()[0].Online);
        time.Advance(TimeSpan.FromMilliseconds(1));
        Assert.False(phones.All()[0].Online);

        phones.Told(Mara, "c1", Status());
        Assert.True(phones.All()[0].Online);
    }

    [Fact]
    public void In_a_fast_rehearsal_the_same_silence_is_as_long_in_real_time()
    {
        var fast = new FloorPhones(new Timebase(time, rate: 20));
        fast.Told(Mara, "c1", Status());

        time.Advance(TimeSpan.FromSeconds(12 * 20) - TimeSpan.FromMilliseconds(1));
        Assert.True(fast.All()[0].Online);
        time.Advance(TimeSpan.FromMilliseconds(1));
        Assert.False(fast.All()[0].Online);
    }

    [Fact]
    public void A_phone_that_went_keeps_what_it_said_last()
    {
        phones.Told(Mara, "c1", Status(unsent: 3));
        phones.Gone(Mara, "c1");

        Assert.Equal((false, 3), (phones.All()[0].Online, phones.All()[0].Status!.Unsent));
        phones.Connected(Mara, "c2");
        Assert.Equal((true, 3), (phones.All()[0].Online, phones.All()[0].Status!.Unsent));
    }

    [Fact]
    public void An_old_connection_that_closes_late_does_not_take_the_new_one_offline()
    {
        phones.Connected(Mara, "c1");
        phones.Connected(Mara, "c2");
        phones.Gone(Mara, "c1");

        Assert.True(Assert.Single(phones.All()).Online);
    }

    [Fact]
    public void They_are_listed_by_lane_and_the_one_seen_last_comes_first()
    {
        phones.Connected(Mara, "c1");
        time.Advance(TimeSpan.FromSeconds(1));
        phones.Connected(Mara with { Id = "in-kim", Name = "Kim" }, "c2");
        phones.Connected(Lou, "c3");

        Assert.Equal(["Lou", "Kim", "Mara"], phones.All().Select(phone => phone.Judge));
    }

    [Fact]
    public void What_is_missing_is_named_for_seated_phones_of_that_heat_only()
    {
        phones.Told(Mara, "c1", Status(unsent: 1));
        phones.Told(Lou, "c2", Status(unsent: 7, heat: "h2"));
        var seated = new HashSet<string> { Mara.Id, Lou.Id };

        Assert.Equal((2, 1), Told(Assert.Single(phones.Missing(Heat, seated))));
        Assert.Empty(phones.Missing(Heat, new HashSet<string> { Lou.Id }));
        phones.Told(Lou, "c2", Status(unsent: 7));
        Assert.Equal([(1, 7), (2, 1)], phones.Missing(Heat, seated).Select(Told));
        phones.Told(Mara, "c1", Status(unsent: 0));
        phones.Told(Lou, "c2", Status(unsent: 0));
        Assert.Empty(phones.Missing(Heat, seated));
    }

    private static (int Lane, int Taps) Told(MissingTaps missing) => (missing.Lane.Value, missing.Taps);

    private static PhoneStatus Status(int lane = 2, int unsent = 0, string? heat = "h1") =>
        new(new LaneNumber(lane), heat, unsent, unsent, "good", 6, "safe", true, "b1");
}
