using Bunit;
using LiveHeat.Contracts.Access;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Phones;
using LiveHeat.Contracts.Programme;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Access;
using LiveHeat.Screens.Announcer;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Desk;
using LiveHeat.Screens.HeadJudge;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Replays;
using LiveHeat.Testing;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor.Services;

namespace LiveHeat.Screens.Language;

/// <summary>The desk, the head judge's and the announcer's screen in the three other languages: no English of ours is left on them, from the call to the signed result.</summary>
public sealed class RunLanguageTests : BunitContext, IAsyncLifetime
{
    /// <summary>The library\'s own second is too little on a busy machine.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private const string Running = """
        start
        lane 1 step 1 done at 0:30
        lane 1 no-rep step 2 at 0:35
        lane 2 step 1 done at 0:38 [first]
        lane 2 step 2 done at 0:50 from seat nobody
        lane 1 calls at 0:52
        penalise lane 1 by 2 reps
        adjust lane 2 by -4000 ms
        lane 2 owes 2 of step 2
        hold lane 3
        void first
        """;

    /// <summary>Two lanes that nobody can part, one that is disputed, one stopped.</summary>
    private const string Ended = """
        start
        lane 1 step 23 done at 5:00
        lane 1 step 24 done at 5:10
        lane 2 step 24 done at 5:10.1
        lane 3 stopped medical at 3:00
        end at 6:00
        lane 2 reads back disputed at 6:10
        lane 1 reads back agreed at 6:10
        warn lane 3
        lane 1 appeals at 6:20
        """;

    public RunLanguageTests()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        JSInterop.SetupModule("./page.js").Mode = JSRuntimeMode.Loose;
        JSInterop.SetupModule("./strips.js").Mode = JSRuntimeMode.Loose;
        Services.AddMudServices();
        Services.AddLogging();
        Services.AddSingleton(TimeProvider.System);
        Services.AddSingleton(new HttpClient(new Nothing()) { BaseAddress = new Uri("http://127.0.0.1/") });
        Services.AddScreens(new Uri("http://127.0.0.1/"));
    }

    /// <summary>Every language at every stage of a heat.</summary>
    public static TheoryData<string, string> Stages
    {
        get
        {
            var all = new TheoryData<string, string>();
            foreach (var language in Tongue.All.Skip(1))
            {
                foreach (var score in new[] { "", Running, Running + "\nhalt", Ended, Ended + "\nfreeze", Ended + "\nfreeze\nsign organiser\nsign head judge" })
                {
                    all.Add(language, score);
                }
            }

            return all;
        }
    }

    public Task InitializeAsync() => Task.CompletedTask;

    /// <summary>Some services can only be let go of this way.</summary>
    async Task IAsyncLifetime.DisposeAsync() => await DisposeAsync();

    [Theory]
    [MemberData(nameof(Stages))]
    public void The_desk_of_a_heat(string language, string score)
    {
        Begin(language, score, Role.Organiser);
        var page = Shown<HeatDeskPage>(("Id", Some.Heat.Value));
        Holds(language, page, 10);
        if (page.FindAll("[data-lane='1'] [data-act='open-lane']") is [var lane, ..])
        {
            lane.Click();
            page.WaitForElement("[data-act='close-lane']", Patience);
            Holds(language, page, 12);
        }
    }

    [Theory]
    [MemberData(nameof(Stages))]
    public void The_head_judges_screen(string language, string score)
    {
        Begin(language, score, Role.HeadJudge);
        var page = Shown<HeadJudgePage>();
        Holds(language, page, 4);
        foreach (var number in new[] { 1, 2 })
        {
            page.WaitForElement($"[data-lane='{number}'] [data-act='open-lane']", Patience).Click();
            var back = page.WaitForElement("[data-act='close-lane']", Patience);    // a busy machine shows the lane a moment after the click
            Assert.Contains(Words.HeadJudgeWords.Back, back.TextContent, StringComparison.Ordinal);
            Holds(language, page, 6);
            page.Find("[data-act='close-lane']").Click();
        }
    }

    [Theory]
    [MemberData(nameof(Stages))]
    public void The_announcers_screen(string language, string score)
    {
        Begin(language, score, Role.Announcer);
        Holds(language, Shown<AnnouncerPage>(), 4);
    }

    [Theory]
    [InlineData("es")]
    [InlineData("fr")]
    [InlineData("de")]
    public void The_programme(string language)
    {
        Begin(language, Running, Role.Organiser);
        Holds(language, Shown<ProgramPage>(), 6);
    }

    private void Begin(string language, string score, Role role)
    {
        Tongue.Speak(language);
        var heat = new HeatScript().Then(score);
        var (frame, sheet) = SomeHeat.Told(score);
        Services.GetRequiredService<SignInStore>().Take(new Reply<Me>(new Me(role, "Ona", null, "in-desk"), null));
        Services.GetRequiredService<ProgramStore>().Take(new Reply<ProgramList>(
            new ProgramList("Breakwater", SomeHeat.Epoch, Some.Heat, SomeHeat.Now, [Listed(Some.Heat, 1, frame.Phase), Listed(new HeatId("h2"), 2, Phase.Planned), Listed(new HeatId("h3"), 3, Phase.Certified)]), null));
        var store = Services.GetRequiredService<HeatStore>();
        store.Follow(role == Role.Organiser ? Some.Heat.Value : HeatConnection.Current);
        store.Take(frame);
        store.Take(sheet);
        store.Take(
        [
            new PhoneSeen("p1", "Mara", new LaneNumber(1), true, SomeHeat.Now, new PhoneStatus(new LaneNumber(1), null, 2, 4, "poor", 180, "kept", false, null)),
            new PhoneSeen("p2", "Nils", new LaneNumber(2), false, SomeHeat.Now + -400_000, new PhoneStatus(new LaneNumber(2), null, 0, 4, "good", 8, null, true, null)),
        ]);
        var facts = Services.GetRequiredService<FactStore>();
        facts.Begin(Some.Heat);
        facts.Take(new Reply<FactLines>(new FactLines(heat.State.Head, [.. SomeReplay.Book(heat).Lines]), null), all: true);
        if (ResultMaking.Of(heat.State, "", SomeHeat.Now) is { } table)
        {
            Services.GetRequiredService<ResultStore>().Take(new Reply<ResultTable>(table, null));
        }
    }

    private static ProgramHeat Listed(HeatId heat, int number, Phase phase) => new(heat, number, $"A{number}", "Zinnober", Some.Go, phase, [new ProgramLane(new LaneNumber(1), "Zinnober", "D1")]);

    private IRenderedComponent<IComponent> Shown<T>(params (string Name, object Value)[] parameters)
        where T : IComponent => Render<CascadingValue<ScreenLayout>>(outer => outer
            .Add(one => one.Value, ActivatorUtilities.CreateInstance<ScreenLayout>(Services))
            .AddChildContent(inside =>
            {
                inside.OpenComponent<T>(0);
                foreach (var (name, value) in parameters)
                {
                    inside.AddComponentParameter(1, name, value);
                }

                inside.CloseComponent();
            }));

    private static void Holds(string language, IRenderedComponent<IComponent> page, int least)
    {
        var left = EnglishLeft.In(language);
        foreach (var node in page.Nodes)
        {
            Assert.Empty(left.On(node));
        }

        Assert.True(page.Nodes.Sum(left.ToldOn) >= least, $"It tells {page.Nodes.Sum(left.ToldOn)} texts: {page.Markup}");
    }

    /// <summary>What is on the screen is what the test put there: no answer comes to change it.</summary>
    private sealed class Nothing : HttpMessageHandler
    {
        protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
        {
            await Task.Delay(Timeout.Infinite, cancellationToken);
            throw new OperationCanceledException(cancellationToken);
        }
    }
}
