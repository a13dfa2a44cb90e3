using System.Globalization;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pages;

/// <summary>The organiser's setup, from the competition's name to the heats, as somebody fills it in.</summary>
internal sealed class SetupScreen(IPage page, Uri site) : BlazorScreen(page, site)
{
    /// <summary>The field of a division's work.</summary>
    public ILocator Work(string division, string act) => Page.Locator($"[data-division='{division}'] [data-act='{act}']").First;

    public async Task Name(string competition)
    {
        await Press("go-setup");
        await Shows("competition-form");
        await Act("competition-name").FillAsync(competition);
        await Press("save-competition");
        await Expect(View("competition-form")).ToContainTextAsync("Saved");
    }

    public async Task AddDivision(string name)
    {
        await Act("new-division").FillAsync(name);
        await Press("add-division");
        await Expect(Page.Locator($"[data-division='{name.ToLowerInvariant()}']")).ToBeVisibleAsync();
    }

    /// <summary>Teams as pasted lines.</summary>
    public async Task PasteTeams(params string[] lines)
    {
        await Press("edit-teams");
        await Shows("teams");
        await Act("paste-text").FillAsync(string.Join('\n', lines));
        await Press("paste-teams");
        await Expect(Page.Locator(".team-cards [data-team]:not([data-team='new'])")).ToHaveCountAsync(lines.Length);
        await Press("back");
        await Shows("setup");
    }

    /// <summary>A workout of one movement; what else it has is filled in by <paramref name="fill"/> before it is saved.</summary>
    public async Task AddWorkout(string name, string scoring, string movement, string unit, Func<Task> fill)
    {
        await Press("new-workout");
        await Shows("workout-form");
        await Act("workout-name").FillAsync(name);
        await Act("scoring").SelectOptionAsync(scoring);
        await Act("movement-name").First.FillAsync(movement);
        await Act("movement-unit").First.SelectOptionAsync(unit);
        await Act("movement-seconds").First.FillAsync("0.5");
        await Act("movement-fastest").First.FillAsync("0.05");
        await fill();
        await Act("movement-name").First.BlurAsync();
        await Press("save-workout");
        await Shows("setup");
        await Expect(View("setup")).ToContainTextAsync(name);
    }

    /// <summary>A heat with all teams that have still to do the workout.</summary>
    public async Task AddHeat(string title, string workout, int lanes)
    {
        await Press("new-heat");
        await Shows("heat-form");
        await Act("heat-title").FillAsync(title);
        await Act("heat-workout").SelectOptionAsync(new SelectOptionValue { Label = workout });
        await Act("heat-lanes").FillAsync(lanes.ToString(CultureInfo.InvariantCulture));
        await Act("heat-lanes").BlurAsync();
        await Press("fill-lanes");
        await Press("save-heat");
        await Shows("setup");
        await Expect(View("setup")).ToContainTextAsync(title);
    }
}
