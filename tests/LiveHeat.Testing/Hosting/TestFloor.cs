using LiveHeat.Contracts.Access;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Ledger.Registry;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;

namespace LiveHeat.Testing.Hosting;

/// <summary>
/// A server with a competition set up and organiser and head judge signed in, all through its addresses. Its timebase is a clock that stands still
/// until a test moves it; pushes and disks are real.
/// </summary>
/// <remarks>Two divisions (open, scaled), four teams (t1 to t3 open, t4 scaled), the workout of <see cref="Some.Workout"/>.</remarks>
internal sealed class TestFloor : IAsyncDisposable
{
    public const int Teams = 4;

    private readonly List<Visitor> visitors = [];
    private int heats;

    private TestFloor(LiveHeatApp app, FakeTimeProvider time) => (App, Time) = (app, time);

    public LiveHeatApp App { get; }

    public FakeTimeProvider Time { get; }

    public Visitor Organiser { get; private set; } = null!;

    public Visitor HeadJudge { get; private set; } = null!;

    /// <summary>The instant of the timebase, Unix milliseconds.</summary>
    public long Now => Time.GetUtcNow().ToUnixTimeMilliseconds();

    /// <param name="folder">A folder that outlives the server; null for a new one.</param>
    /// <param name="onPort">On a port instead of in memory.</param>
    public static async Task<TestFloor> Open(string? folder = null, bool onPort = false)
    {
        var floor = Start(folder, new FakeTimeProvider(new DateTimeOffset(2026, 11, 21, 9, 0, 0, TimeSpan.Zero)), onPort);
        var passphrase = await floor.App.Services.GetRequiredService<HeatRegistry>().Passphrase.Renew(CancellationToken.None);
        floor.Organiser = floor.Visitor();
        (await floor.Organiser.Post("/api/sign-in", new SignInRequest(passphrase, "Ona"))).Fine();
        floor.HeadJudge = await floor.Join(Role.HeadJudge, null, "Hedda");
        await floor.SetUp();
        return floor;
    }

    /// <summary>The server stops, and another starts on the same folder, clock and sign-ins.</summary>
    public async Task<TestFloor> Restart()
    {
        var cookies = (Organiser.Cookies, HeadJudge.Cookies);
        await DisposeAsync();
        var floor = Start(App.Data, Time, App.OnPort);
        floor.heats = heats;
        (floor.Organiser, floor.HeadJudge) = (floor.Visitor(cookies.Item1), floor.Visitor(cookies.Item2));
        return floor;
    }

    /// <summary>Somebody who has not signed in, or who has these cookies.</summary>
    public Visitor Visitor(System.Net.CookieContainer? cookies = null)
    {
        var visitor = new Visitor(App, cookies);
        visitors.Add(visitor);
        return visitor;
    }

    /// <summary>A new code from the desk.</summary>
    public async Task<string> Code(Role role, int? lane) =>
        (await Organiser.Post("/api/codes", new CodeRequest(role, lane is { } number ? new LaneNumber(number) : null))).Read<CodeMade>().Code;

    /// <summary>Somebody who joins with a new code of their own.</summary>
    public async Task<Visitor> Join(Role role, int? lane, string name) => await Join(await Code(role, lane), name);

    /// <summary>Somebody who joins with this code.</summary>
    public async Task<Visitor> Join(string code, string name)
    {
        var visitor = Visitor();
        (await visitor.Post("/api/join", new JoinRequest(code, name))).Fine();
        return visitor;
    }

    /// <summary>Sets one more heat up: team tn on lane n.</summary>
    /// <param name="lanes">How many.</param>
    /// <param name="workout">The id of one that is set up.</param>
    public async Task<TestHeat> Plan(int lanes = 2, string workout = "w1")
    {
        var number = Interlocked.Increment(ref heats);
        var heat = new HeatSetup(
            $"h{number}", number, $"Heat {number}", workout, null,
            Enumerable.Range(1, lanes).Select(lane => new HeatSetupLane(new LaneNumber(lane), $"t{lane}")).ToItems());
        (await Organiser.Put($"/api/setup/heats/{heat.Id}", heat)).Fine();
        return new TestHeat(this, heat.Id);
    }

    /// <summary>Sets one more heat up and calls it.</summary>
    public async Task<TestHeat> Call(int lanes = 2, string workout = "w1")
    {
        var heat = await Plan(lanes, workout);
        Time.Advance(TimeSpan.FromSeconds(1));   // the heat called last is the current one, and two calls take two moments
        await heat.Do(Organiser, "call");
        return heat;
    }

    /// <summary>A heat that runs since this moment, with a judge on every lane.</summary>
    public async Task<TestHeat> Run(int lanes = 2, string workout = "w1")
    {
        var heat = await Call(lanes, workout);
        for (var lane = 1; lane <= lanes; lane++)
        {
            await heat.Seat(lane, ready: true);
        }

        await heat.Go();
        return heat;
    }

    public async ValueTask DisposeAsync()
    {
        visitors.ForEach(visitor => visitor.Dispose());
        await App.DisposeAsync();
    }

    private static TestFloor Start(string? folder, FakeTimeProvider time, bool onPort)
    {
        var app = new LiveHeatApp(folder, time);
        if (onPort)
        {
            app.Open();
        }

        return new TestFloor(app, time);
    }

    private async Task SetUp()
    {
        (await Organiser.Put("/api/setup/competition", new CompetitionSetup("Breakwater Relays"))).Fine();
        foreach (var division in new[] { "open", "scaled" })
        {
            (await Organiser.Put($"/api/setup/divisions/{division}", new DivisionSetup(division, char.ToUpperInvariant(division[0]) + division[1..]))).Fine();
        }

        (await Organiser.Put("/api/setup/workouts/w1", Some.Workout())).Fine();
        for (var team = 1; team <= Teams; team++)
        {
            var line = Some.Entry(team, team == Teams ? "scaled" : "open");
            (await Organiser.Put($"/api/setup/teams/t{team}", new TeamSetup(line.Team, line.Name, line.Division, line.Athletes))).Fine();
        }
    }
}
