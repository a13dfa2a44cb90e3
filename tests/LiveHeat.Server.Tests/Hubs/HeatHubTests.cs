using LiveHeat.Contracts;
using LiveHeat.Contracts.Phones;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting;
using Microsoft.AspNetCore.SignalR;
using Microsoft.AspNetCore.SignalR.Client;

namespace LiveHeat.Server.Hubs;

public sealed class HeatHubTests(SharedFloor shared) : FloorTest(shared)
{
    [Fact]
    public async Task Watching_gives_the_newest_frame_and_pushes_follow()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat[1].Finish(1);
        await using var board = await HubViewer.Connect(Floor.Visitor());

        Assert.Equal(await heat.Frame(), await board.Watch(heat.Id));
        var receipt = await heat[1].Finish(2);

        Assert.Equal(3, (await board.Frame(receipt.Sequence!.Value)).Lanes[0].Open);
    }

    [Fact]
    public async Task A_second_watch_moves_the_connection()
    {
        var (first, second) = (await Floor.Run(lanes: 1), await Floor.Run(lanes: 1));
        await using var screen = await HubViewer.Connect(Floor.Visitor());
        await using var witness = await HubViewer.Connect(Floor.Visitor());
        await screen.Watch(first.Id);
        await witness.Watch(first.Id);
        Assert.Equal(second.Id, (await screen.Watch(second.Id))!.Heat.Value);

        await witness.Frame((await first[1].Finish(1)).Sequence!.Value);
        await screen.Frame((await second[1].Finish(1)).Sequence!.Value);

        Assert.DoesNotContain(screen.Frames.All, pushed => pushed.Frame.Heat.Value == first.Id && pushed.Frame.Lanes[0].Open > 1);
    }

    [Theory]
    [InlineData("nowhere")]
    [InlineData("")]
    [InlineData(null)]
    public async Task A_heat_that_nobody_called_has_no_frame_yet(string? heat)
    {
        await using var board = await HubViewer.Connect(Floor.Visitor());

        Assert.Null(await board.Watch(heat!));
    }

    [Fact]
    public async Task Whoever_waits_for_a_planned_heat_is_pushed_its_first_frame()
    {
        var heat = await Floor.Plan(lanes: 1);
        await using var board = await HubViewer.Connect(Floor.Visitor());
        Assert.Null(await board.Watch(heat.Id));

        await heat.Do(Floor.Organiser, "call");

        Assert.Equal(Phase.Called, (await board.Frame(1)).Phase);
    }

    [Fact]
    public async Task A_clock_exchange_is_answered_on_the_timebase_and_names_it()
    {
        await using var phone = await HubViewer.Connect(Floor.Visitor());

        var first = await phone.Hub.InvokeAsync<ClockAnswer>(nameof(IHeatHub.Exchange), 12.5);
        Floor.Time.Advance(TimeSpan.FromMilliseconds(1500));
        var second = await phone.Hub.InvokeAsync<ClockAnswer>(nameof(IHeatHub.Exchange), 1512.5);

        Assert.True(first.Received <= first.Sent && first.Sent <= second.Received, $"{first} {second}");
        Assert.Equal((Floor.Now, Floor.Now - 1500), ((long)second.Received, (long)first.Sent));
        Assert.Equal((first.Process, 1d), (second.Process, second.Rate));
        Assert.NotEmpty(first.Process);
    }

    [Fact]
    public async Task Only_a_judge_reports_a_phone()
    {
        var status = new { lane = 1, unsent = 0, onPhone = 0, clock = "good" };
        foreach (var (visitor, code) in new[] { (Floor.Visitor(), "not-signed-in"), (Floor.Organiser, "not-yours"), (Floor.HeadJudge, "not-yours") })
        {
            await using var viewer = await HubViewer.Connect(visitor);
            var refusal = await Assert.ThrowsAsync<HubException>(() => viewer.Hub.InvokeAsync(nameof(IHeatHub.ReportPhone), status));
            Assert.Contains($"{code}: This is for a lane judge.", refusal.Message, StringComparison.Ordinal);
        }

        await using var desk = await HubViewer.Connect(Floor.Organiser);
        Assert.DoesNotContain(await Phones(desk), phone => phone.Judge is "Ona" or "Hedda");
    }

    [Fact]
    public async Task Only_organiser_and_head_judge_watch_the_phones()
    {
        var judge = await Floor.Join(Role.Judge, 1, "Mara");
        var announcer = await Floor.Join(Role.Announcer, null, "Ada");
        foreach (var (visitor, code) in new[] { (Floor.Visitor(), "not-signed-in"), (judge, "not-yours"), (announcer, "not-yours") })
        {
            await using var viewer = await HubViewer.Connect(visitor);
            var refusal = await Assert.ThrowsAsync<HubException>(() => Phones(viewer));
            Assert.Contains($"{code}: This is for the organiser or the head judge.", refusal.Message, StringComparison.Ordinal);
        }

        foreach (var visitor in new[] { Floor.Organiser, Floor.HeadJudge })
        {
            await using var viewer = await HubViewer.Connect(visitor);
            Assert.NotNull(await Phones(viewer));
        }
    }

    [Fact]
    public async Task A_phone_that_reports_reaches_whoever_watches_the_phones()
    {
        var mara = await Floor.Join(Role.Judge, 3, "Mara");
        var device = (await mara.Get("/api/me")).Json.GetProperty("signIn").GetString();
        await using var desk = await HubViewer.Connect(Floor.HeadJudge);
        await Phones(desk);
        var phone = await HubViewer.Connect(mara);

        // It says lane 1, but it joined for lane 3.
        await phone.Hub.InvokeAsync(nameof(IHeatHub.ReportPhone), new PhoneStatus(new LaneNumber(1), "h7", 3, 41, "good", 6, "safe", true, "b1"));
        var seen = Of(await desk.Phones.First(phones => Of(phones, device)?.Status is not null), device)!;
        Assert.Equal(("Mara", new LaneNumber(3), true, Floor.Now), (seen.Judge, seen.Lane, seen.Online, seen.LastSeen.UnixMs));
        Assert.Equal(new PhoneStatus(new LaneNumber(3), "h7", 3, 41, "good", 6, "safe", true, "b1"), seen.Status);

        await phone.DisposeAsync();
        var gone = Of(await desk.Phones.First(phones => Of(phones, device) is { Online: false }), device)!;
        Assert.Equal(3, gone.Status!.Unsent);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("""{"lane":1,"heat":null,"unsent":0,"onPhone":0,"clock":null}""")]
    [InlineData("""{"lane":1,"unsent":-5,"onPhone":-5,"clock":"good","uncertaintyMs":-1}""")]
    [InlineData("""{"lane":99,"heat":"<b>","unsent":1,"onPhone":1,"clock":"</script>","storage":"\u0000","build":"x"}""")]
    [InlineData("null")]
    [InlineData("7")]
    [InlineData("\"good\"")]
    public async Task A_report_that_is_odd_or_broken_harms_nobody(string report)
    {
        var mara = await Floor.Join(Role.Judge, 1, "Mara");
        var lou = await Floor.Join(Role.Judge, 2, "Lou");
        await using var desk = await HubViewer.Connect(Floor.Organiser);
        await Phones(desk);
        await using var odd = await HubViewer.Connect(mara);
        await odd.Hub.SendAsync(nameof(IHeatHub.ReportPhone), System.Text.Json.JsonSerializer.Deserialize<System.Text.Json.JsonElement>(report));
        await odd.Hub.InvokeAsync<ClockAnswer>(nameof(IHeatHub.Exchange), 1.0);

        // The server still stands, and the next phone is still seen.
        await using var good = await HubViewer.Connect(lou);
        await good.Hub.InvokeAsync(nameof(IHeatHub.ReportPhone), new PhoneStatus(new LaneNumber(2), null, 0, 0, "good", 6, "safe", true, "b1"));
        var device = (await lou.Get("/api/me")).Json.GetProperty("signIn").GetString();
        await desk.Phones.First(phones => Of(phones, device)?.Status is { Clock: "good" });
        Assert.NotEmpty(await Phones(desk));
        Assert.Equal(200, (await Floor.Visitor().Get("/health")).Status);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("http://elsewhere.test")]
    [InlineData("null")]
    public async Task A_page_of_another_site_opens_no_connection(string? origin)
    {
        var visitor = await Floor.Join(Role.Judge, 1, "Mara");
        visitor.Origin = origin;

        var refusal = await Assert.ThrowsAnyAsync<Exception>(() => HubViewer.Connect(visitor));

        Assert.Contains("403", refusal.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_but_web_sockets_is_offered()
    {
        var visitor = Floor.Visitor();

        var polling = await visitor.Get("/hub?id=1");

        Assert.NotEqual(200, polling.Status);
    }

    private static Task<IReadOnlyList<PhoneSeen>> Phones(HubViewer viewer) => viewer.Hub.InvokeAsync<IReadOnlyList<PhoneSeen>>(nameof(IHeatHub.WatchPhones));

    private static PhoneSeen? Of(IReadOnlyList<PhoneSeen> phones, string? device) => phones.FirstOrDefault(phone => phone.Device == device);
}
