using Bunit;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Setup;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Words;
using MudBlazor.Services;

namespace LiveHeat.Screens.Setup;

public sealed class CompetitionFormTests : BunitContext
{
    private readonly List<CompetitionSetup> kept = [];

    public CompetitionFormTests()
    {
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    [Fact]
    public void The_time_for_appeals_is_shown_and_kept()
    {
        var form = Form(new("Breakwater Relays", AppealMinutes: 30));
        Assert.Equal("30", form.Find("input[data-act=appeal-minutes]").GetAttribute("value"));

        form.Find("input[data-act=appeal-minutes]").Change("20");
        form.Find("[data-act=save-competition]").Click();

        Assert.Equal(new CompetitionSetup("Breakwater Relays", AppealMinutes: 20), Assert.Single(kept));
    }

    [Fact]
    public void Metres_are_shown_with_the_languages_decimal_sign_and_read_with_either()
    {
        Tongue.Speak("fr");
        var form = Form(new("Breakwater Relays") { Screen = new ScreenSize(4.5m, 25) });
        Assert.Equal("4,5", form.Find("input[data-act=screen-width]").GetAttribute("value"));

        form.Find("input[data-act=farthest-seat]").Change("30.5");
        form.Find("[data-act=save-competition]").Click();

        Assert.Equal(new ScreenSize(4.5m, 30.5m), Assert.Single(kept).Screen);
    }

    [Fact]
    public void What_is_no_number_of_minutes_is_told_and_not_sent()
    {
        var form = Form(new("Breakwater Relays"));

        form.Find("input[data-act=appeal-minutes]").Change("a while");
        form.Find("[data-act=save-competition]").Click();

        Assert.Empty(kept);
        Assert.Contains(SetupWords.AppealMinutesWrong, form.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_that_cannot_be_read_is_told_at_once_and_only_as_long_as_it_is_wrong()
    {
        var form = Form(new("Breakwater Relays"));

        form.Find("input[data-act=hand-timing]").Change("?");
        form.Find("input[data-act=appeal-minutes]").Change("-1");
        form.Find("input[data-act=screen-width]").Change("4");
        form.Find("[data-act=save-competition]").Click();
        Assert.Equal([SetupWords.HandTimingWrong, SetupWords.AppealMinutesWrong, HallWords.Wrong], Wrong(form));

        form.Find("input[data-act=hand-timing]").Change("80");
        form.Find("[data-act=save-competition]").Click();
        Assert.Equal([SetupWords.AppealMinutesWrong, HallWords.Wrong], Wrong(form));
        Assert.Empty(kept);
    }

    private static IEnumerable<string> Wrong(IRenderedComponent<CompetitionForm> form) => form.FindAll(".mud-input-helper-text.mud-input-error").Select(one => one.TextContent.Trim());

    private IRenderedComponent<CompetitionForm> Form(CompetitionSetup competition)
    {
        Func<object, Task<Problem?>> keep = sent =>
        {
            kept.Add((CompetitionSetup)sent);
            return Task.FromResult<Problem?>(null);
        };
        return Render<CompetitionForm>(form => form.Add(component => component.Competition, competition).Add(component => component.Keep, keep));
    }
}
