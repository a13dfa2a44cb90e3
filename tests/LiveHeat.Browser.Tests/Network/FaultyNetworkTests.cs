using System.Diagnostics;
using System.Globalization;
using LiveHeat.Browser.Crash;
using LiveHeat.Browser.Pages;
using LiveHeat.Contracts.Frames;
using LiveHeat.Rehearsal.Phones;
using LiveHeat.Testing.Hosting.Faults;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace LiveHeat.Browser.Network;

/// <summary>
/// Pads in real browsers, simulated phones, a board and a screen on the hub, all behind a network that does its worst one thing after another, on the real server
/// process; beside it another network is silent for half a minute.
/// </summary>
[Collection(OneAtATime.Name)]
public sealed class FaultyNetworkTests(ITestOutputHelper output)
{
    /// <summary>Order and length of the faults.</summary>
    private const int Seed = 20261125;

    private const string NewestOnPad = "async () => (await import('/pad/pad.js')).pad.frame?.sequence ?? 0";
    private static readonly TimeSpan HalfAMinute = TimeSpan.FromSeconds(30);

    /// <summary>What is promised: from the moment the network is back until every screen shows what is newest, taps made meanwhile included.</summary>
    private static readonly TimeSpan Promised = TimeSpan.FromSeconds(5);

    private readonly Random random = new(Seed);
    private readonly List<(string Fault, TimeSpan Took)> took = [];

    [Fact]
    public async Task Every_tap_arrives_once_and_every_screen_is_up_to_date_five_seconds_after_each_fault()
    {
        await using var hall = await ProcessHall.Open(lanes: 6, rounds: 80);
        var (floor, near, far) = (hall.Floor, hall.Floor.Link(), hall.Floor.Link());
        var hall1 = new Side(hall, near, await hall.Pad(1, near), 1, [await floor.Phone(2, near), await floor.Phone(3, near), await floor.Phone(4, near)], floor.Viewer(near));
        var hall2 = new Side(hall, far, await hall.Pad(5, far), 5, [await floor.Phone(6, far)], floor.Viewer(far));
        hall1.Board = await hall.Board(near);
        await hall.Desk.Go();
        await Task.WhenAll(hall1.Pad.IsAt("heat"), hall2.Pad.IsAt("heat"));
        await Task.WhenAll(hall1.UpToDate(), hall2.UpToDate());

        await Task.WhenAll(OneAfterAnother(hall1), Silence(hall2));

        foreach (var (fault, time) in took)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{fault}: {time.TotalSeconds:F2} s"));
        }

        Assert.Empty(await hall.Broken());
        Assert.DoesNotContain(near.Statuses.Concat(far.Statuses), status => status.Key is 403 or 429 or >= 500);
        Assert.True(near.Repeated > 0, "No answered request was repeated.");
        Assert.True(near.Cuts > 0, "No connection was cut.");
        Assert.Equal(7, took.Count);
        Assert.All(took, fault => Assert.True(fault.Took <= Promised, $"Up to date {fault.Took.TotalSeconds:F1} s after {fault.Fault} (seed {Seed})"));
    }

    private async Task OneAfterAnother(Side side)
    {
        var faults = Enum.GetValues<Fault>().Where(fault => fault != Fault.None).ToArray();
        random.Shuffle(faults);
        foreach (var fault in faults)
        {
            side.Link.Be(fault);
            await side.Work(steps: 2);
            await Task.Delay(random.Next(200, 2_000));
            await Heal(side, $"{fault}");
        }
    }

    private async Task Silence(Side side)
    {
        var since = Stopwatch.StartNew();
        side.Link.Be(Fault.Hang);
        await side.Work(steps: 4);
        await Task.Delay(HalfAMinute - since.Elapsed > TimeSpan.Zero ? HalfAMinute - since.Elapsed : TimeSpan.Zero);
        await Heal(side, "half a minute of silence");
    }

    private async Task Heal(Side side, string after)
    {
        side.Link.Be(Fault.None);
        var time = await side.UpToDate();
        lock (took)
        {
            took.Add((after, time));
        }
    }

    /// <summary>Who shares one network.</summary>
    private sealed class Side(ProcessHall hall, FaultProxy link, JudgePhone pad, int padLane, IReadOnlyList<SimulatedPhone> phones, FaultViewer viewer)
    {
        private int done;

        public FaultProxy Link => link;

        public JudgePhone Pad => pad;

        public BigBoard? Board { get; set; }

        /// <summary>Every judge goes on by so many steps, network or not.</summary>
        public async Task Work(int steps)
        {
            for (var i = 0; i < steps; i++)
            {
                done++;
                foreach (var phone in phones)
                {
                    phone.NoRep(done);
                    phone.StepDone(done);
                }

                await pad.Record("step-done", done);
            }

            await pad.Carries("step-done", done + 1);
        }

        /// <summary>Waits until the ledger has all of it, every phone knows, and every screen shows it.</summary>
        /// <returns>How long that took.</returns>
        public Task<TimeSpan> UpToDate()
        {
            long? head = null;
            return FaultFloor.Until(
                async () =>
                {
                    head ??= HasAll(await hall.Desk.Frame());
                    return head is { } newest && viewer.Newest?.Sequence >= newest && phones.All(phone => phone.Outbox.Unsent == 0 && phone.Frame?.Sequence >= newest)
                        && await pad.Status.GetAttributeAsync("data-unsent") == "0" && await pad.Page.EvaluateAsync<long>(NewestOnPad) >= newest
                        && (Board is null || await OnBoard() >= newest);
                },
                $"{phones.Count + 1} phones and their screens are up to date; the pad says {pad.Pad}");
        }

        private long? HasAll(Frame frame) => frame.Lanes.Where(lane => lane.Lane.Value == padLane || phones.Any(phone => phone.Lane == lane.Lane)).All(lane => lane.Open == done + 1) ? frame.Sequence : null;

        private async Task<long> OnBoard() => long.TryParse(await Board!.Main.GetAttributeAsync("data-sequence", new LocatorGetAttributeOptions { Timeout = 1_000 }), CultureInfo.InvariantCulture, out var shown) ? shown : 0;
    }
}
