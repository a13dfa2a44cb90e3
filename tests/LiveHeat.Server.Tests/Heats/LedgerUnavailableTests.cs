using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Ledger.Facts;
using LiveHeat.Testing.Hosting;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace LiveHeat.Server.Heats;

/// <summary>The disk refuses through SQLite's own write protection, which gives the error a disk gives, once: the ledger then opens it anew.</summary>
public sealed class LedgerUnavailableTests(SharedFloor shared) : FloorTest(shared)
{
    [Fact]
    public async Task A_tap_that_the_disk_refused_is_not_acknowledged_and_is_accepted_when_it_is_sent_again()
    {
        var heat = await Floor.Run(lanes: 1);
        var (tap, second) = (heat[1].Done(1), heat[1].Done(2));

        await NothingIsRecorded(heat, async () =>
        {
            await Protect();
            var refused = await heat[1].Post(tap, second);
            Assert.Equal((503, "ledger-unavailable"), (refused.Status, refused.Code));
            Assert.Matches("^The ledger cannot be written \\(.+\\)\\. Nothing was recorded\\. Free space on the disk, or make it writable; then it goes on by itself\\.$", refused.Detail);
            Assert.Equal(1, (await heat.Frame()).Lanes[0].Open);
        });

        Assert.All((await heat[1].Send(tap, second)).Receipts, receipt => Assert.Equal(TapOutcome.Accepted, receipt.Outcome));
        Assert.Equal([1, 2], (await heat.Taps()).Select(line => ((HeatFact.StepDone)line.Fact).Step));
    }

    [Fact]
    public async Task A_command_that_the_disk_refused_is_not_done_and_may_be_pressed_again()
    {
        var heat = await Floor.Run(lanes: 1);
        var id = Floor.Organiser.NewId();

        await NothingIsRecorded(heat, async () =>
        {
            await Protect();
            var refused = await heat.Command(Floor.Organiser, "halt", new { reason = "" }, id);
            Assert.Equal((503, "ledger-unavailable"), (refused.Status, refused.Code));
            Assert.Equal(Phase.Running, (await heat.Frame()).Phase);
        });

        Assert.Equal(TapOutcome.Accepted, (await heat.Command(Floor.Organiser, "halt", new { reason = "" }, id)).Read<CommandAnswer>().Outcome);
        Assert.Equal(Phase.Halted, (await heat.Frame()).Phase);
    }

    private Task Protect() => Floor.App.Services.GetRequiredService<HeatLedger>()
        .OnWriter(context => context.Database.ExecuteSqlRaw("PRAGMA query_only = 1"));
}
