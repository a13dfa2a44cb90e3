using System.Net.Http.Json;
using LiveHeat.Contracts;
using LiveHeat.Contracts.Wire;
using LiveHeat.Testing.Hosting.Faults;

namespace LiveHeat.Server.Crash;

/// <summary>A disk that refuses writes in the middle of a heat, and takes them again.</summary>
public sealed class RefusingDiskTests
{
    private const int TapsEach = 4;

    [Fact]
    public async Task Nothing_is_acknowledged_the_phones_keep_it_and_it_arrives_when_the_disk_is_back()
    {
        await using var floor = await FaultFloor.Open(lanes: 2, before: RefusingDisk.Before);
        var link = floor.Link();
        var phones = new[] { await floor.Phone(1, link), await floor.Phone(2, link) };
        await floor.Desk.Go();
        var viewer = floor.Viewer(link);
        await FaultFloor.Until(() => Task.FromResult(viewer.Newest is not null), "the viewer has a frame");
        Assert.Equal((Health.Well, null), await Told(floor));
        var before = await floor.Desk.Facts();

        await RefusingDisk.Refuse(floor.Hub);
        foreach (var phone in phones)
        {
            for (var step = 1; step <= TapsEach; step++)
            {
                phone.StepDone(step);
            }
        }

        await FaultFloor.Until(async () => (await Told(floor)).Status == Health.LedgerUnavailable && link.Statuses.GetValueOrDefault(503) >= 2, "both phones were told that nothing is written");
        Assert.Matches(@"^The disk takes no writes since \d\d:\d\d:\d\d \(.+\)\. Nothing new is recorded; the phones keep their taps", (await Told(floor)).Detail);
        Assert.All(phones, phone => Assert.Equal(TapsEach, phone.Outbox.Unsent));
        var refused = await Assert.ThrowsAsync<InvalidOperationException>(() => floor.Desk.Do(new Engine.Rules.HeatCommand.Halt { Id = floor.Desk.NewId(), Reason = "x" }));
        Assert.Contains("503", refused.Message, StringComparison.Ordinal);
        Assert.Contains("\"ledger-unavailable\"", refused.Message, StringComparison.Ordinal);
        Assert.Equal(before.Count, (await floor.Desk.Facts()).Count);
        Assert.All((await floor.Desk.Frame()).Lanes, lane => Assert.Equal(1, lane.Open));

        await RefusingDisk.Accept(floor.Hub);
        await floor.AllSafe();
        await FaultFloor.Until(async () => await Told(floor) == (Health.Well, null), "the server says that it can write again");
        Assert.Empty(TapsOnce.Broken(await floor.Desk.Facts(), floor.OnPhones()));
        await FaultFloor.Until(() => Task.FromResult(viewer.Newest!.Lanes.All(lane => lane.Open == TapsEach + 1)), "the viewer has all steps");
        Assert.DoesNotContain(link.Statuses, status => status.Key is >= 400 and not 503);
    }

    private static async Task<(string Status, string? Detail)> Told(FaultFloor floor)
    {
        using var client = new HttpClient { BaseAddress = floor.Hub.Address };
        var health = await client.GetFromJsonAsync<Health>("health", WireJson.Options);
        return (health!.Status, health.Detail);
    }
}
