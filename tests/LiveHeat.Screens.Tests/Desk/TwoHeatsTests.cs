using System.Globalization;
using System.Net;
using Bunit;
using LiveHeat.Contracts.Access;
using LiveHeat.Contracts.Programme;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Access;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Heats;
using LiveHeat.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using MudBlazor.Services;

namespace LiveHeat.Screens.Desk;

/// <summary>The desk's link to a board of two heats.</summary>
public sealed class TwoHeatsTests : BunitContext, IAsyncLifetime
{
    private readonly CultureInfo before = CultureInfo.CurrentUICulture;

    public TwoHeatsTests()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        JSInterop.SetupModule("./page.js").Mode = JSRuntimeMode.Loose;
        Services.AddMudServices().AddLogging().AddSingleton<TimeProvider>(new FakeTimeProvider()).AddSingleton(new HttpClient(new NobodyAnswers()) { BaseAddress = new Uri("http://127.0.0.1/") })
            .AddScreens(new Uri("http://127.0.0.1/"));
    }

    public Task InitializeAsync() => Task.CompletedTask;

    /// <summary>Some services can only be let go of this way.</summary>
    async Task IAsyncLifetime.DisposeAsync()
    {
        CultureInfo.CurrentUICulture = before;
        await DisposeAsync();
    }

    private static ProgramList Listed(params Phase[] phases) => new(
        "Breakwater Relays", "e1", null, Some.Go, [.. phases.Select((phase, i) => new ProgramHeat(new HeatId($"h {i + 1}"), i + 1, $"Heat {i + 1}", "Low Tide", null, phase, []))]);

    [Theory]
    [InlineData(null, Phase.Certified, Phase.Running, Phase.Planned)]
    [InlineData("2 3", Phase.Ended, Phase.Running, Phase.Called)]
    [InlineData("1 3", Phase.Halted, Phase.Frozen, Phase.CountingDown)]
    [InlineData("3 1", Phase.Armed, Phase.Called, Phase.Running)]
    public void It_is_of_two_heats_that_are_on_the_floor_or_called_the_live_one_first(string? numbers, params Phase[] phases) =>
        Assert.Equal(numbers, TwoHeats.Of(Listed(phases)) is var (left, right) ? $"{left.Number} {right.Number}" : null);

    [Theory]
    [InlineData("en", "Board of 2 and 3")]
    [InlineData("es", "Pantalla de 2 y 3")]
    [InlineData("fr", "Tableau 2 et 3")]
    [InlineData("de", "Anzeige für 2 und 3")]
    public void It_stands_beside_the_board_while_there_are_two_and_says_which(string language, string words)
    {
        CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(language);
        var program = Services.GetRequiredService<ProgramStore>();
        Services.GetRequiredService<SignInStore>().Take(new Reply<Me>(new Me(Role.Organiser, "Ona", null, "in-desk"), null));
        program.Take(new Reply<ProgramList>(Listed(Phase.Ended, Phase.Running, Phase.Called), null));
        var desk = Render<DeskLayout>(layout => layout.AddCascadingValue(ActivatorUtilities.CreateInstance<ScreenLayout>(Services)));

        var link = desk.Find("[data-act=go-two-boards]");
        Assert.Equal((words, "/board/h%202+h%203"), (link.TextContent, link.GetAttribute("href")));

        program.Take(new Reply<ProgramList>(Listed(Phase.Ended, Phase.Ended, Phase.Called), null));
        desk.WaitForAssertion(() => Assert.Empty(desk.FindAll("[data-act=go-two-boards]")));
    }

    private sealed class NobodyAnswers : HttpMessageHandler
    {
        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken) =>
            Task.FromResult(new HttpResponseMessage(HttpStatusCode.ServiceUnavailable));
    }
}
