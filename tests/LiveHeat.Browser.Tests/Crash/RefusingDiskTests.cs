using System.Text.RegularExpressions;
using LiveHeat.Testing.Hosting.Faults;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Crash;

/// <summary>The server's disk refuses writes: what the people see of it.</summary>
[Collection(OneAtATime.Name)]
public sealed partial class RefusingDiskTests
{
    [Fact]
    public async Task The_desk_says_so_and_the_pad_keeps_its_taps_until_the_disk_is_back()
    {
        await using var hall = await ProcessHall.Open(lanes: 1, before: RefusingDisk.Before);
        var pad = await hall.Pad(1, hall.Floor.Link());
        var desk = await hall.DeskScreen();
        await hall.Desk.Go();
        await pad.IsAt("heat");
        await pad.Record("step-done", 1);
        await pad.IsAllSafe();
        await Expect(desk.View("disk-trouble")).ToHaveCountAsync(0);

        await RefusingDisk.Refuse(hall.Floor.Hub);
        await pad.Record("step-done", 2);
        await pad.HasUnsent(1);
        await Expect(desk.View("disk-trouble")).ToContainTextAsync(Sentence());
        await pad.Record("step-done", 3);
        await pad.HasUnsent(2);
        Assert.Equal(2, (await hall.Desk.Frame()).Lanes[0].Open);

        await RefusingDisk.Accept(hall.Floor.Hub);
        await pad.IsAllSafe();
        await Expect(desk.View("disk-trouble")).ToHaveCountAsync(0);
        Assert.Empty(await hall.Broken());
        Assert.Equal(4, (await hall.Desk.Frame()).Lanes[0].Open);
    }

    [GeneratedRegex(@"The disk takes no writes since \d\d:\d\d:\d\d .*Nothing new is recorded; the phones keep their taps")]
    private static partial Regex Sentence();
}
