using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pages;

/// <summary>One of the screens below /screens/: its controls are named by data-act, its parts by data-view.</summary>
internal abstract class BlazorScreen(IPage page, Uri site)
{
    /// <summary>A cold start of the runtime on a busy machine.</summary>
    private static readonly LocatorAssertionsToBeVisibleOptions ColdStart = new() { Timeout = 45_000 };

    public IPage Page => page;

    protected Uri Site => site;

    public ILocator Act(string name) => page.Locator($"[data-act='{name}']");

    public ILocator View(string name) => page.Locator($"[data-view='{name}']");

    /// <summary>A control within a lane's row.</summary>
    public ILocator InLane(int lane, string act) => page.Locator($"[data-lane='{lane}'] [data-act='{act}']");

    /// <summary>Opens an address and waits until one of its parts is there.</summary>
    public async Task Open(string address, string view)
    {
        await page.GotoAsync(new Uri(site, address).ToString());
        await Expect(View(view).First).ToBeVisibleAsync(ColdStart);
    }

    public Task Press(string act) => Act(act).First.ClickAsync();

    public Task Shows(string view) => Expect(View(view).First).ToBeVisibleAsync();

    /// <summary>Presses a button that asks once, reads that it says what will happen, and confirms.</summary>
    public async Task PressAndConfirm(string act, string? reason = null)
    {
        await Press(act);
        await Expect(Act($"{act}-asked").Locator("p").First).Not.ToBeEmptyAsync();
        if (reason is not null)
        {
            await Act($"{act}-reason").FillAsync(reason);
        }

        await Press($"{act}-yes");
    }

    /// <summary>Joins with a code as its printed address has it.</summary>
    public async Task Join(string address, string name, string viewThen)
    {
        await Open(address, "join");
        await Act("name").FillAsync(name);
        await Press("join");
        await Shows(viewThen);
    }
}

/// <summary>The organiser's desk.</summary>
internal sealed class DeskScreen(IPage page, Uri site) : BlazorScreen(page, site)
{
    public async Task SignIn(string passphrase, string name)
    {
        await Open("screens/", "sign-in");
        await Act("passphrase").FillAsync(passphrase);
        await Act("name").FillAsync(name);
        await Press("sign-in");
        await Shows("program");
    }

    public async Task OpenHeat(string heat)
    {
        await Press("go-program");
        await Page.Locator($"[data-heat='{heat}'] [data-act='open-heat']").ClickAsync();
        await Expect(View("heat-desk")).ToHaveAttributeAsync("data-heat", heat);
    }

    /// <summary>Makes codes on the codes page and gives their printed addresses: the lanes' by number, then the head judge's.</summary>
    public async Task<(Dictionary<int, string> Lanes, string HeadJudge, string Announcer)> MakeCodes(params int[] lanes)
    {
        await Press("go-codes");
        await Act("code-lanes").FillAsync(string.Join(", ", lanes));
        await Press("make-lane-codes");
        await Press("make-head-judge-code");
        await Press("make-announcer-code");
        await Expect(Page.Locator("[data-code]")).ToHaveCountAsync(lanes.Length + 2);
        var addresses = new Dictionary<int, string>();
        foreach (var lane in lanes)
        {
            addresses[lane] = await Address($"Lane {lane}");
        }

        return (addresses, await Address("Head judge"), await Address("Announcer"));
    }

    public Task IsIn(string phase) => Expect(View("heat-desk")).ToHaveAttributeAsync("data-phase", phase);

    private async Task<string> Address(string whose) => (await Page.Locator($"[data-code][data-for='{whose}']").GetAttributeAsync("data-url"))!;
}

/// <summary>The head judge's phone.</summary>
internal sealed class HeadJudgeScreen(IPage page, Uri site) : BlazorScreen(page, site)
{
    public Task IsIn(string phase) => Expect(View("head-judge")).ToHaveAttributeAsync("data-phase", phase);
}

/// <summary>The announcer's screen.</summary>
internal sealed class AnnouncerScreen(IPage page, Uri site) : BlazorScreen(page, site)
{
    /// <summary>Team names from first to last.</summary>
    public Task OrderIs(params string[] teams) => Expect(View("order").Locator("[data-act='team']")).ToHaveTextAsync(teams);

    public ILocator Lane(int lane) => View("order").Locator($"[data-lane='{lane}']");

    public ILocator Strip(int lane) => View("order").Locator($"[data-strip='{lane}']");

    public ILocator Sayings => View("sayings");

    public Task IsIn(string phase) => Expect(View("announcer")).ToHaveAttributeAsync("data-phase", phase);
}
