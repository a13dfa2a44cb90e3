using System.Net;
using Bunit;
using LiveHeat.Contracts.Forecasts;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Timing;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Forecasts;
using LiveHeat.Screens.Heats;
using LiveHeat.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using MudBlazor.Services;

namespace LiveHeat.Screens.Announcer;

/// <summary>The announcer's page by a clock that is moved by hand, with no server.</summary>
public sealed class AnnouncerPageTests : BunitContext, IAsyncLifetime
{
    private readonly FakeTimeProvider time = new(DateTimeOffset.FromUnixTimeMilliseconds((Some.Go + 302_000).UnixMs));

    public AnnouncerPageTests()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        JSInterop.SetupModule("./page.js").Mode = JSRuntimeMode.Loose;
        JSInterop.SetupModule("./strips.js").Mode = JSRuntimeMode.Loose;
        Services.AddMudServices().AddLogging().AddSingleton<TimeProvider>(time).AddSingleton(new HttpClient(new NobodyAnswers()) { BaseAddress = new Uri("http://127.0.0.1/") })
            .AddScreens(new Uri("http://127.0.0.1/"));
    }

    public Task InitializeAsync() => Task.CompletedTask;

    /// <summary>Some services can only be let go of this way.</summary>
    async Task IAsyncLifetime.DisposeAsync() => await DisposeAsync();

    [Theory]
    [InlineData("end at 5:01")]
    [InlineData("end at 5:01\nfreeze at 5:02")]
    public void Of_a_heat_that_is_over_what_is_stale_goes_though_nothing_arrives_any_more(string over)
    {
        var page = Shown($"start\nlane 1 step 9 done at 5:00\n{over}", new Callout("finish", CalloutKind.Finish, 100, Some.Go + 300_000, CalloutGrounds.Confirmed, [Some.Lane(1)]));
        Assert.Single(page.FindAll("[data-callout=finish]"));

        time.Advance(TimeSpan.FromSeconds(37));
        Assert.Single(page.FindAll("[data-callout=finish]"));
        time.Advance(TimeSpan.FromSeconds(3));
        page.WaitForAssertion(() => Assert.Empty(page.FindAll("[data-callout=finish]")));
    }

    private IRenderedComponent<AnnouncerPage> Shown(string score, Callout callout)
    {
        var (frame, sheet) = SomeHeat.Told(score);
        var page = Render<AnnouncerPage>(page => page.AddCascadingValue(ActivatorUtilities.CreateInstance<ScreenLayout>(Services)));
        var heat = Services.GetRequiredService<HeatStore>();
        heat.Follow(HeatConnection.Current);
        heat.Take(frame);
        heat.Take(sheet);
        Services.GetRequiredService<ForecastStore>().Take(new ForecastFrame(frame.Heat, frame.Epoch, frame.Sequence, Some.Go + 302_000, [], [], [], [callout], []));
        time.Advance(TimeSpan.FromMilliseconds(100));     // it draws ten times a second at most
        return page;
    }

    private sealed class NobodyAnswers : HttpMessageHandler
    {
        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken) =>
            Task.FromResult(new HttpResponseMessage(HttpStatusCode.ServiceUnavailable));
    }
}
