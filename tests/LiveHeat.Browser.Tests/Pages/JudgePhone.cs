using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pages;

/// <summary>A judge's phone with the pad on it: touches what is on its screen, and waits for what must come to it.</summary>
internal sealed partial class JudgePhone(IPage page, Uri site)
{
    public IPage Page => page;

    public IBrowserContext Browser => page.Context;

    public ILocator Pad => page.Locator("#pad");

    /// <summary>The large target that carries its fact.</summary>
    public ILocator Target => Act("done");

    /// <summary>What is on the phone and what is safe, how good the clock is, the link.</summary>
    public ILocator Status => page.Locator("#pad footer");

    /// <summary>The line over the target: what comes next, or what matters more.</summary>
    public ILocator Notice => page.Locator("#pad .then-line");

    public ILocator Act(string name) => page.Locator($"[data-act='{name}']");

    public Task Open(string fragment = "") => page.GotoAsync($"{site}pad/{fragment}");

    /// <summary>Waits until the pad shows this view.</summary>
    public Task IsAt(string view) => Expect(Pad).ToHaveAttributeAsync("data-view", view);

    public Task Touch(string act) => Act(act).First.TapAsync();

    /// <summary>Closes the panel that asks where the lane is. What was under it is dead for a moment: nobody has read it yet.</summary>
    public async Task CloseHere()
    {
        await Touch("close");
        await Expect(page.Locator("#pad .panel")).ToBeHiddenAsync();
    }

    public async Task Join(string code, string name)
    {
        await Open($"#{code}");
        await IsAt("join");
        await Act("name").FillAsync(name);
        await Touch("join");
        await Expect(Pad).Not.ToHaveAttributeAsync("data-view", "join");
    }

    /// <summary>From the question whether this is the team to the count-down's waiting room.</summary>
    public async Task GetReady()
    {
        await IsAt("confirm");
        await Touch("confirm");
        await IsAt("checks");
        await Touch("ready");
        await IsAt("ready");
    }

    /// <summary>The same for somebody who is not there as the lane's judge, or not yet.</summary>
    /// <param name="duty">primary, witness or timekeeper.</param>
    public async Task GetReady(string duty)
    {
        await Choose(duty);
        await IsAt("checks");
        await Touch("ready");
        await IsAt("ready");
    }

    /// <summary>Says what for, where the pad asks or offers to.</summary>
    public async Task Choose(string duty, string view = "confirm")
    {
        await IsAt(view);
        await Touch("choose");
        await Touch($"duty-{duty}");
    }

    /// <summary>Touches the target of a timekeeper once its dead time is over.</summary>
    public async Task Time()
    {
        await IsAt("timer");
        await Expect(Target).ToBeEnabledAsync();
        await IsSettled(Target);
        await Target.TapAsync();
    }

    /// <summary>Waits until the target carries this fact of this step.</summary>
    public Task Carries(string fact, int step, int? count = null) => Expect(Target).ToHaveAttributeAsync("data-fact", Fact(fact, step, count));

    /// <summary>Touches the target, once its dead time is over, when it says that it will record this.</summary>
    public async Task Record(string fact, int step, int? count = null)
    {
        await Carries(fact, step, count);
        await IsSettled(Target);
        await Target.TapAsync();
    }

    /// <summary>Touches the target for each of these steps in turn: "step-done 1", "tag-made 3".</summary>
    public async Task RecordAll(params string[] facts)
    {
        foreach (var parts in facts.Select(fact => fact.Split(' ')))
        {
            await Record(parts[0], int.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture));
        }
    }

    /// <summary>Touches a control beside the target (no-rep, already) once its own dead time is over.</summary>
    public async Task Press(string act)
    {
        await IsSettled(Act(act));
        await Touch(act);
    }

    /// <summary>The dead time after a new label is over.</summary>
    public static Task IsSettled(ILocator target) => Expect(target).Not.ToHaveClassAsync(Settling());

    /// <summary>A finger stays on a control until something is on the screen.</summary>
    public async Task Hold(string act, Func<Task> until)
    {
        await using var finger = await Finger.Down(Act(act));
        await until();
    }

    /// <summary>Holds undo until the target carries this again.</summary>
    public Task Undo(string carriesThen, int step) => Hold("undo", () => Carries(carriesThen, step));

    /// <summary>The last tap is on the phone's disk, and the target says so.</summary>
    public Task IsStored() => Expect(Target.Locator(".state")).ToContainTextAsync(new Regex("on phone|safe"));

    /// <summary>So many taps are on the phone only.</summary>
    public Task HasUnsent(int taps) => Expect(Status).ToHaveAttributeAsync("data-unsent", $"{taps}");

    /// <summary>All that was recorded is in the ledger, and the status line says so.</summary>
    public async Task IsAllSafe()
    {
        await HasUnsent(0);
        await Expect(Status).ToContainTextAsync("all safe");
    }

    /// <summary>The service worker has kept this build, so that a reload needs no network.</summary>
    public Task IsKept() => page.EvaluateAsync("""
        async () => {
          const { serviceWorker } = navigator, cache = await caches.open('pad');
          while (!serviceWorker.controller || !await cache.match('/pad/build')) await new Promise(again => setTimeout(again, 50));
        }
        """);

    /// <summary>Whether an expression of the page, which may be a promise, becomes true soon. (A promise itself would be true enough for WaitForFunctionAsync.)</summary>
    public Task<bool> Becomes(string condition) => page.EvaluateAsync<bool>(
        $"async () => {{ for (const end = Date.now() + 15_000; Date.now() < end; await new Promise(again => setTimeout(again, 50))) if (await ({condition})) return true; return false; }}");

    /// <summary>A second tab of the same phone.</summary>
    public async Task<JudgePhone> SecondTab() => new(await Browser.NewPageAsync(), site);

    private static Regex Fact(string fact, int step, int? count) =>
        new($"\"fact\":{Regex.Escape(JsonSerializer.Serialize(fact))}.*\"step\":{step}\\b{(count is null ? "" : $".*\"count\":{count}\\b")}");

    [GeneratedRegex(@"\bsettling\b")]
    private static partial Regex Settling();
}
