using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using LiveHeat.Browser.Pages;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Screens;

/// <summary>The setup on devices that are set to other languages, whose words are longer; and what stands there before the program does.</summary>
public sealed class SetupLookTests(Hall hall) : HallTest(hall)
{
    private static readonly (int Width, int Height)[] Sizes = [(1440, 900), (390, 844)];

    /// <summary>Each with the part that shows that it is there.</summary>
    private static readonly (string Address, string Shown)[] Pages =
    [
        ("setup", "competition-form"), ("setup/teams", "teams"), ("setup/workouts/new", "workout-form"), ("setup/heats/new", "heat-form"), ("setup/movements/new", "movement-form"),
        ("codes", "codes"), ("judges", "judges"),
    ];

    [Theory]
    [InlineData("en-GB", "Setup")]
    [InlineData("es-ES", "Preparación")]
    [InlineData("de-DE", "Einrichtung")]
    public async Task Nothing_of_the_setup_is_cut_covered_or_too_small_to_hit(string locale, string setup)
    {
        await Hall.Plan(QuickWork.Sets(), new Entrant(1, "Harbour Anvils", "Joss", "Ilka"), new Entrant(2, "Tin Whistle Four", "Ravi", "Ansel"));
        var desk = new DeskScreen(await Page(1440, 900, locale: locale), Hall.Site);
        await desk.SignIn(Hall.Passphrase, "Ona");
        await Expect(desk.Page.Locator("html")).ToHaveAttributeAsync("lang", locale[..2]);
        await Expect(desk.Act("go-setup")).ToHaveTextAsync(setup);

        var faults = new List<string>();
        foreach (var (address, shown) in Pages)
        {
            await desk.Page.EvaluateAsync("to => Blazor.navigateTo(to)", address);
            await desk.Shows(shown);
            foreach (var (width, height) in Sizes)
            {
                await desk.Page.SetViewportSizeAsync(width, height);
                faults.AddRange((await desk.Page.Faults("body", scrolls: true)).Select(fault => $"{address}, {width}x{height}: {fault}"));
            }
        }

        Assert.Empty(faults);
    }

    [Theory]
    [InlineData("es-MX", "", "es", "Cargando la vista…")]
    [InlineData("en-GB", "?lang=fr", "fr", "Chargement de l’écran…")]
    [InlineData("pt-BR", "", "en", "Loading the screen…")]
    public async Task Before_the_program_is_there_its_page_speaks_the_language_of_address_or_device(string locale, string query, string language, string words)
    {
        var page = await Page(390, 844, locale: locale);
        await page.RouteAsync("**/_framework/blazor.webassembly.js", route => route.AbortAsync());
        await page.GotoAsync(new Uri(Hall.Site, $"screens/{query}").ToString());
        await Expect(page.Locator(".starting")).ToHaveTextAsync(words);
        await Expect(page.Locator("html")).ToHaveAttributeAsync("lang", language);
    }

    /// <summary>Or lanes would stand a moment without their strips.</summary>
    [Fact]
    public async Task The_strips_are_fetched_while_the_program_is()
    {
        var page = await Page(1280, 720, locale: "fr-FR");
        await page.RouteAsync("**/_framework/blazor.webassembly.js", route => route.AbortAsync());
        var words = page.WaitForResponseAsync(answer => answer.Url.EndsWith("/floor/words/board.fr.json", StringComparison.Ordinal));
        await page.GotoAsync(new Uri(Hall.Site, "screens/").ToString());
        Assert.Equal(200, (await words).Status);
        Assert.True(await page.EvaluateAsync<bool>("() => performance.getEntriesByName(new URL('/floor/strip/lane-strip.js', location.href).href).length > 0"));
    }
}
