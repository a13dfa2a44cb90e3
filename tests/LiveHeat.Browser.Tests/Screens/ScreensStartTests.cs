using LiveHeat.Testing.Hosting;
using Microsoft.Playwright;

namespace LiveHeat.Browser.Screens;

public sealed class ScreensStartTests(Chromium chromium) : IClassFixture<Chromium>, IDisposable
{
    private readonly LiveHeatApp app = new();

    public void Dispose() => app.Dispose();

    [Theory]
    [InlineData("screens/", "Sign in at the desk", ".mud-button-filled", "cursor", "pointer")]
    [InlineData("screens/some/mistyped/address", "There is no such page", ".mud-typography-h4", "margin", "0px")]
    public async Task The_screens_draw_a_page_and_its_styles_arrive(string address, string title, string control, string property, string value)
    {
        var page = await chromium.NewPage();
        var errors = new List<string>();
        page.Console += (_, line) => { if (line.Type == "error") errors.Add(line.Text); };
        page.PageError += (_, error) => errors.Add(error);

        await page.GotoAsync(new Uri(app.Open(), address).ToString());
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = title })).ToBeVisibleAsync(new() { Timeout = 30_000 });

        // MudBlazor writes its palette from C# and its rules come from its style sheet: both have to be there.
        var primary = await page.EvaluateAsync<string>("getComputedStyle(document.documentElement).getPropertyValue('--mud-palette-primary')");
        Assert.NotEqual("", primary);
        await Assertions.Expect(page.Locator(control)).ToHaveCSSAsync(property, value);
        Assert.Empty(errors);
    }
}
