using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting.Faults;
using Xunit.Abstractions;

namespace LiveHeat.Server.Network;

/// <summary>A venue behind one address: to the server sixty phones look like one, at exactly the moment when the WiFi is back.</summary>
public sealed class OneAddressTests(ITestOutputHelper output)
{
    private const int Lanes = 20;
    private const int TapsEach = 3;
    private static readonly Duty[] Duties = [Duty.Primary, Duty.Witness, Duty.Witness];

    [Fact]
    public async Task Sixty_phones_that_come_back_at_once_are_neither_slowed_down_nor_locked_out()
    {
        await using var floor = await FaultFloor.Open(Lanes, rounds: 8);
        var link = floor.Link();
        var codes = await Task.WhenAll(Enumerable.Range(1, Lanes).Select(floor.Desk.Code));
        var phones = await Task.WhenAll(from lane in Enumerable.Range(1, Lanes) from duty in Duties select floor.Phone(lane, link, duty, codes[lane - 1]));
        Assert.Equal(60, phones.Length);
        await floor.Desk.Go();

        link.Be(Fault.Refuse);
        foreach (var phone in phones)
        {
            for (var tap = 0; tap < TapsEach; tap++)
            {
                phone.NoRep(1);
            }
        }

        // Each has knocked in vain before the network is back for all at once.
        await FaultFloor.Until(() => Task.FromResult(phones.All(phone => !phone.Online)), "every phone has noticed");
        link.Be(Fault.None);
        output.WriteLine($"all safe after {await floor.AllSafe()}");

        Assert.Empty(TapsOnce.Broken(await floor.Desk.Facts(), floor.OnPhones()));
        Assert.True(link.Statuses.GetValueOrDefault(200) >= phones.Length, string.Join(", ", link.Statuses));
        Assert.DoesNotContain(link.Statuses, status => status.Key >= 400);
    }
}
