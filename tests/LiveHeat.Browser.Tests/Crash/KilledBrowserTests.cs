using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Pages;
using LiveHeat.Testing.Hosting.Faults;
using Microsoft.Playwright;

namespace LiveHeat.Browser.Crash;

/// <summary>"On phone" is a promise: the browser is killed at the very moment it says so, with the network away, and the tap is there.</summary>
[Collection(OneAtATime.Name)]
public sealed class KilledBrowserTests(Hall hall) : HallTest(hall)
{
    private const int Lane = 9;
    private const int Kills = 3;

    private static readonly Entrant Team = new(Lane, "Slate Herons", "Runa", "Otis");

    [Fact]
    public async Task A_tap_that_was_on_the_phone_when_its_browser_was_killed_reaches_the_ledger()
    {
        var profile = Directory.CreateTempSubdirectory("profile-").FullName;
        try
        {
            await using var link = new FaultProxy(Hall.Site);
            var heat = await Hall.Call(QuickWork.Long(), Team);
            await JoinAndWork(profile, link, heat);
            var told = new List<string> { "step-done 1" };
            for (var kill = 1; kill <= Kills; kill++)
            {
                var phone = await Open(profile, link);
                await phone.IsAt("heat");
                await phone.Browser.SetOfflineAsync(true);
                link.Be(Fault.Refuse);
                await KillWhenOnPhone(phone, profile, kill + 1);
                told.Add(kill + 1 == 3 ? "tag-made 3" : $"step-done {kill + 1}");
            }

            // Still no network: what it shows comes from its own disk.
            var again = await Open(profile, link);
            await again.IsAt("heat");
            await again.HasUnsent(Kills);
            Assert.Equal(["step-done 1"], await heat.Told(Lane));

            link.Be(Fault.None);
            await heat.LedgerHas(Lane, [.. told]);
            await again.IsAllSafe();
            await again.Browser.CloseAsync();
        }
        finally
        {
            Directory.Delete(profile, recursive: true);
        }
    }

    /// <summary>The judge's morning: joined, judging, and the browser closed once as people do, so that the sign-in is on the disk too.</summary>
    private async Task JoinAndWork(string profile, FaultProxy link, HallHeat heat)
    {
        var phone = await Open(profile, link);
        await phone.Join(await Hall.CodeOf(Lane), "Mara");
        await phone.GetReady();
        await heat.RunsSince(1_000);
        await phone.IsAt("heat");
        await phone.Record("step-done", 1);
        await heat.LedgerHas(Lane, "step-done 1");
        await phone.IsAllSafe();
        await phone.IsKept();
        await phone.Browser.CloseAsync();
    }

    private async Task<JudgePhone> Open(string profile, FaultProxy link)
    {
        var browser = await Hall.Chromium.Start(profile, 390, 844);
        var phone = new JudgePhone(browser.Pages[0], link.Address);
        await phone.Open();
        return phone;
    }

    /// <summary>Makes a tap; the words "on phone" themselves pull the trigger.</summary>
    private static async Task KillWhenOnPhone(JudgePhone phone, string profile, int step)
    {
        var processes = BrowserProcesses.Of(profile);
        var dead = new TaskCompletionSource();
        phone.Browser.Close += (_, _) => dead.TrySetResult();
        await phone.Page.ExposeFunctionAsync("nowKill", () => BrowserProcesses.Kill(processes));
        // The state goes from the tap before to "…" and, once this one is stored, to "on phone".
        await phone.Page.EvaluateAsync("""
            () => {
              let made = false;
              new MutationObserver(() => {
                const state = document.querySelector('[data-act="done"] .state')?.textContent ?? '';
                if (state.startsWith('…')) made = true;
                else if (made && state.startsWith('on phone')) nowKill();
              }).observe(document.getElementById('pad'), { subtree: true, childList: true, characterData: true });
            }
            """);
        try
        {
            await phone.Record(step == 3 ? "tag-made" : "step-done", step);
        }
        catch (PlaywrightException)
        {
            // It died under the finger.
        }

        await dead.Task.WaitAsync(TimeSpan.FromSeconds(30));
        await BrowserProcesses.Gone(processes);
    }
}
