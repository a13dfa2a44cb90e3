using LiveHeat.Browser.Look;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pads;

/// <summary>A pad that shows any view of a made-up heat at once, on a clock that stands (stage.js).</summary>
internal sealed class PadStage(IPage page)
{
    /// <summary>Long, accented, and from right to left.</summary>
    public const string Team = "Żółte Łódki znad Wielkiej Rzeki Północnej";

    public static readonly string[] Athletes = ["Maximiliane-Sophie", "עבד אל־רחמן", "Þorgerður", "François-Xavier"];

    private static readonly string Script = Read();

    /// <summary>Begins on the pad's own page.</summary>
    public async Task Begin(Uri site, string language = "en")
    {
        await page.GotoAsync($"{site}pad/?lang={language}");
        await Expect(page.Locator("#pad")).ToHaveAttributeAsync("data-view", "join");
        await page.EvaluateAsync($"what => ({Script})(what)", new { team = Team, athletes = Athletes });
    }

    /// <summary>The names of all scenes.</summary>
    public Task<string[]> Scenes() => page.EvaluateAsync<string[]>("stage.names");

    /// <summary>Shows a scene.</summary>
    /// <returns>The pad's view.</returns>
    public Task<string> Show(string scene) => page.EvaluateAsync<string>("scene => stage.show(scene)", scene);

    /// <summary>light or dark, from the next scene on.</summary>
    public Task Look(string look) => page.EvaluateAsync("look => stage.look(look)", look);

    /// <summary>What is cut, covered or too small in these scenes, each shown anew at each size, as a phone comes to it.</summary>
    public async Task<IReadOnlyList<string>> Faults(IEnumerable<string> scenes, IEnumerable<(int Width, int Height)> sizes)
    {
        var faults = new List<string>();
        foreach (var scene in scenes)
        {
            foreach (var size in sizes)
            {
                await page.SetViewportSizeAsync(size.Width, size.Height);
                await Show(scene);
                var root = await page.Locator("#pad .panel:not([hidden])").CountAsync() > 0 ? ".panel" : "#pad";
                faults.AddRange(await page.FaultsAt(scene, [size], root, Looks.LeastPadControl));
            }
        }

        return faults;
    }

    private static string Read()
    {
        using var file = new StreamReader(typeof(PadStage).Assembly.GetManifestResourceStream("Pads/stage.js")!);
        return file.ReadToEnd().TrimEnd().TrimEnd(';');
    }
}
