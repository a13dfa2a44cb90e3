using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;

namespace LiveHeat.Browser.Pads;

/// <summary>Every view of the pad with long names, in every language: nothing is cut or covered, all can be hit, and axe-core finds no serious fault.</summary>
public sealed class PadViewsTests(Hall hall) : HallTest(hall)
{
    private static readonly (int Width, int Height) Usual = (390, 844), Small = (360, 640), Turned = (844, 390);

    [Fact]
    public async Task In_English_at_every_size()
    {
        var stage = await Stage("en");
        var scenes = await stage.Scenes();
        Assert.True(scenes.Length > 50);
        Assert.Empty(await stage.Faults(scenes, [Usual, Small, Turned]));
    }

    [Theory]
    [InlineData("es")]
    [InlineData("fr")]
    [InlineData("de")]
    public async Task In_other_languages(string language)
    {
        var stage = await Stage(language);
        Assert.Empty(await stage.Faults(await stage.Scenes(), [Usual, Small]));
    }

    [Fact]
    public async Task Attempts_standard_shares_and_rest_in_the_dark()
    {
        var stage = await Stage("de");
        await stage.Look("dark");
        Assert.Empty(await stage.Faults(["attempt", "attempt typed", "standard", "no standard", "shares", "shares panel", "rest", "round over"], [Usual, Small, Turned]));
    }

    /// <summary>Each scene of the stage is the view that it is named for, or a test of it would look at something else.</summary>
    [Theory]
    [InlineData("checks", "checks")]
    [InlineData("attempt typed", "heat")]
    [InlineData("rest", "heat")]
    [InlineData("withdrew", "finish")]
    [InlineData("timed", "timer")]
    [InlineData("taken", "taken")]
    public async Task A_scene_is_the_view_it_says(string scene, string view) => Assert.Equal(view, await (await Stage("en")).Show(scene));

    [Theory]
    [InlineData("light")]
    [InlineData("dark")]
    public async Task Axe_finds_no_serious_fault(string look)
    {
        var page = await Page(Usual.Width, Usual.Height, phone: true, inReach: true);
        var stage = new PadStage(page);
        await stage.Begin(Hall.Site);
        await stage.Look(look);
        var faults = new List<string>();
        foreach (var scene in new[]
        {
            "signed out", "confirm late", "checks", "ready", "count-down", "reading", "tag", "faults", "refused", "standard", "here", "shares panel", "cap", "finish",
        })
        {
            await stage.Show(scene);
            faults.AddRange(await page.SeriousFaults(scene));
        }

        Assert.Empty(faults);
    }

    private async Task<PadStage> Stage(string language)
    {
        var stage = new PadStage(await Page(Usual.Width, Usual.Height, phone: true, inReach: true));
        await stage.Begin(Hall.Site, language);
        return stage;
    }
}
