using System.Net;
using System.Text;
using System.Text.Json;
using Bunit;
using LiveHeat.Contracts.Access;
using LiveHeat.Contracts.Judging;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Access;
using LiveHeat.Screens.Codes;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Judging;
using LiveHeat.Screens.Setup;
using LiveHeat.Screens.Welcome;
using LiveHeat.Screens.Words;
using LiveHeat.Testing;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor.Services;

namespace LiveHeat.Screens.Language;

/// <summary>The pages that set up and look back, in the three other languages: no English of ours is left on them, whatever is chosen, wrong or missing.</summary>
public sealed class SetupLanguageTests : BunitContext, IAsyncLifetime
{
    /// <summary>The library\'s own second is too little on a busy machine.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private static readonly SetupAll Empty = new(new CompetitionSetup(""), [], [], [], []) { Movements = [] };

    private static readonly SetupAll Full = new(
        new CompetitionSetup("Breakwater Relays"), [new DivisionSetup("open", "D1"), new DivisionSetup("scaled", "D2")], [Some.Workout()],
        [new TeamSetup("t1", "Zinnober", "open", ["Joss", "Ilka"])], [new HeatSetup("h1", 1, "A1", "w1", null, [new HeatSetupLane(new LaneNumber(1), "t1")])])
    {
        Movements = [SomeMovements.OwnWallBalls],
    };

    private readonly Server server = new();

    public SetupLanguageTests()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        JSInterop.SetupModule("./page.js").Mode = JSRuntimeMode.Loose;
        Services.AddMudServices();
        Services.AddLogging();
        Services.AddSingleton(TimeProvider.System);
        Services.AddSingleton(new HttpClient(server) { BaseAddress = new Uri("http://127.0.0.1/") });
        Services.AddScreens(new Uri("http://127.0.0.1/"));
    }

    public static TheoryData<string> Languages => [.. Tongue.All.Skip(1)];

    public Task InitializeAsync() => Task.CompletedTask;

    /// <summary>Some services can only be let go of this way.</summary>
    async Task IAsyncLifetime.DisposeAsync() => await DisposeAsync();

    [Theory]
    [MemberData(nameof(Languages))]
    public void Before_anything_is_set_up(string language)
    {
        Speak(language, Empty);
        IsTold<SetupPage>(language);
        IsTold<TeamsPage>(language);
        IsTold<WorkoutPage>(language, id: "new", least: 1);
        IsTold<CodesPage>(language);
        IsTold<JoinPage>(language);
        IsTold<NoSuchPage>(language);
        IsTold<JudgesPage>(language);
        Holds(language, Render<SignInForm>(form => form.Add(one => one.Try, (_, _) => Task.FromResult<string?>(null))), 3);
    }

    [Theory]
    [MemberData(nameof(Languages))]
    public void With_everything_set_up_and_mistakes_in_what_is_typed(string language)
    {
        Speak(language, Full);
        var setup = IsTold<SetupPage>(language, least: 10);
        setup.Find("input[data-act=hand-timing]").Change("?");
        setup.Find("[data-act=save-competition]").Click();
        setup.Find("[data-act=points-high]").Click();
        setup.Find("textarea[data-act=points-table]").Change("x");
        setup.Find("[data-act=save-points]").Click();
        Holds(language, setup, 12);

        IsTold<HeatPage>(language, id: "new", least: 5);
        IsTold<HeatPage>(language, id: "h1", least: 5);
        IsTold<MovementsPage>(language, least: 3);
        var movement = IsTold<MovementPage>(language, id: "new", least: 8);
        Assert.True(movement.Find("fieldset.movement details").HasAttribute("open"));
        movement.Find("input[data-act=movement-seconds]").Change("?");
        movement.Find("[data-act=save-movement]").Click();
        Assert.Contains(movement.FindAll(".mud-input-error"), wrong => wrong.TextContent == WorkoutWords.NeedsSeconds);
        Holds(language, movement, 8);

        var teams = IsTold<TeamsPage>(language, least: 5);
        teams.Find("textarea[data-act=paste-text]").Input("A; X; y\nZinnober\nB; D1; y\nB; D1; y");
        teams.Find("[data-act=paste-teams]").Click();
        Assert.Equal(3, teams.FindAll("[data-act=paste-wrong] li").Count);
        Holds(language, teams, 5);
    }

    [Theory]
    [MemberData(nameof(Languages))]
    public void A_workout_of_every_kind(string language)
    {
        Speak(language, Full);
        var page = IsTold<WorkoutPage>(language, id: "w1", least: 15);
        foreach (var kind in Enum.GetValues<ScoringKind>())
        {
            page.Find("[data-act=scoring]").Change(kind.ToString());
            Holds(language, page, 12);
        }

        page.Find("[data-act=scoring]").Change(nameof(ScoringKind.MostWork));
        page.Find("input[data-act=by-clock]").Change(true);
        page.Find("button[data-act=add-part]").Click();
        page.Find("button[data-act=remove-set]").Click();
        foreach (var order in Enum.GetValues<OrderKind>())
        {
            page.Find("select[data-act=order]").Change(order.ToString());
            Holds(language, page, 12);
        }
    }

    [Theory]
    [MemberData(nameof(Languages))]
    public void Codes_and_the_judging_watch(string language)
    {
        Speak(language, Full);
        var codes = IsTold<CodesPage>(language, least: 5);
        codes.Find("input[data-act=code-lanes]").Change("1-2");
        codes.Find("[data-act=make-lane-codes]").Click();
        codes.Find("[data-act=make-head-judge-code]").Click();
        Assert.Equal(3, codes.FindAll("[data-code]").Count);
        codes.Find("input[data-act=code-lanes]").Change("all");
        codes.Find("[data-act=make-lane-codes]").Click();
        codes.FindAll("[data-act=show-big]")[0].Click();
        Holds(language, codes, 8);

        IsTold<JudgesPage>(language, least: 5);
        var judging = IsTold<JudgingPage>(language, id: Some.Heat.Value);
        Services.GetRequiredService<HeatStore>().Take(SomeHeat.Told("start\nlane 1 step 1 done at 0:30").Frame);
        judging.WaitForElement("[data-stands-out=yes]", Patience);
        Holds(language, judging, 10);
        Holds(language, Render<JudgingLaneCard>(card => card.Add(one => one.Lane, SomeJudging.Lane(1)).Add(one => one.Most, 1).Add(one => one.Aside, true).Add(one => one.TakeUp, () => { })), 5);
        Holds(language, Render<JudgingQuestions>(part => part.Add(one => one.Lanes, [SomeJudging.Lane(1), SomeJudging.Lane(2)]).Add(one => one.PutAside, (LaneNumber _) => { })), 2);
    }

    [Fact]
    public void The_library_is_asked_for_in_the_language_of_the_screen()
    {
        Speak("fr", Full);
        IsTold<MovementsPage>("fr");
        Assert.Contains("/api/library?language=fr", server.Asked);
    }

    private void Speak(string language, SetupAll all)
    {
        Tongue.Speak(language);
        server.All = all;
        Services.GetRequiredService<SignInStore>().Take(new Reply<Me>(new Me(Role.Organiser, "Ona", null, "in-desk"), null));
    }

    private IRenderedComponent<T> IsTold<T>(string language, string? id = null, int least = 2)
        where T : IComponent
    {
        var page = id is null ? Render<T>() : Render<T>(parameters => parameters.TryAdd("Id", id));
        Holds(language, page, least);
        return page;
    }

    private static void Holds<T>(string language, IRenderedComponent<T> page, int least)
        where T : IComponent
    {
        var left = EnglishLeft.In(language);
        foreach (var node in page.Nodes)
        {
            Assert.Empty(left.On(node));
        }

        Assert.True(page.Nodes.Sum(left.ToldOn) >= least, $"{typeof(T).Name} tells {page.Nodes.Sum(left.ToldOn)} texts: {page.Markup}");
    }

    private sealed class Server : HttpMessageHandler
    {
        public SetupAll All { get; set; } = Empty;

        public List<string> Asked { get; } = [];

        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
        {
            Asked.Add(request.RequestUri!.PathAndQuery);
            object? answer = request.RequestUri.AbsolutePath switch
            {
                "/api/setup" => All,
                "/api/library" => new MovementLibrary("en", [SomeMovements.WallBalls, SomeMovements.Row]),
                "/api/judges" => All == Empty ? Array.Empty<JudgePage>() : JudgingMaking.Judges([SomeJudging.Strict]).ToArray(),
                { } path when path.EndsWith("/judging", StringComparison.Ordinal) => SomeJudging.Table,
                "/api/codes" => new CodeMade($"K7F3M2Q{Asked.Count}", "http://127.0.0.1/#K7F3M2QX", Asked.Count % 2 == 0 ? Role.Judge : Role.HeadJudge, new LaneNumber(Asked.Count), Some.Go),
                _ => null,
            };
            return Task.FromResult(new HttpResponseMessage(answer is null ? HttpStatusCode.NoContent : HttpStatusCode.OK)
            {
                Content = new StringContent(answer is null ? "" : JsonSerializer.Serialize(answer, answer.GetType(), WireJson.Options), Encoding.UTF8, "application/json"),
            });
        }
    }
}
