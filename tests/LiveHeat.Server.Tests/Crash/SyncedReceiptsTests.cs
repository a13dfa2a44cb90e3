using LiveHeat.Testing.Hosting.Faults;
using LiveHeat.Testing.Hosting.Torture;
using LiveHeat.Testing.Tracing;

namespace LiveHeat.Server.Crash;

/// <summary>The real server, traced: a receipt is a promise that the power cannot break.</summary>
public sealed class SyncedReceiptsTests
{
    private const int Lanes = 3;
    private const int TapsEach = 15;

    /// <summary>Requests that may go unanswered, 2 s each.</summary>
    private const int Patience = 15;

    [Fact]
    public async Task Each_tap_is_written_and_synchronised_before_its_receipt_leaves_the_server()
    {
        var folder = Directory.CreateTempSubdirectory("synced-").FullName;
        var file = Path.Combine(folder, "trace.log");
        var phones = new List<TorturePhone>();
        try
        {
            await using var hub = new HubProcess(folder, SyncTrace.Before(file));
            await hub.Start();
            using var desk = await TortureDesk.Open(hub);
            phones = await desk.CallAndGo(hub.Address, Lanes, seed: 3);
            await Task.WhenAll(phones.Select(TapAndSend));
            await hub.Kill();

            var trace = SyncTrace.Read(file);
            Assert.All(phones, phone => Assert.Equal(TapsEach, phone.Receipted.Count));
            Assert.Empty(phones.SelectMany(phone => phone.Receipted).Select(id => trace.WhyNotSafe($"{id}")).OfType<string>());
        }
        finally
        {
            phones.ForEach(phone => phone.Dispose());
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>One request a tap; the lanes' taps come together, and are committed together.</summary>
    private static async Task TapAndSend(TorturePhone phone)
    {
        for (var i = 0; i < TapsEach; i++)
        {
            phone.Tap();
            for (var tries = 1; !await phone.Send(TortureDesk.Heat); tries++)
            {
                Assert.True(tries < Patience, "A traced server is slow, but not so slow.");
            }
        }
    }
}
