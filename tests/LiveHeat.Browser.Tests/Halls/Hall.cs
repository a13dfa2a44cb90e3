using LiveHeat.Contracts.Access;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Ledger.Registry;
using LiveHeat.Testing.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;

namespace LiveHeat.Browser.Halls;

/// <summary>
/// What the tests of a class share: a Chromium, and the real server on a port with an empty competition, organiser and head judge signed in.
/// Its clock is the machine's, since browsers go by theirs.
/// </summary>
public class Hall : IAsyncLifetime, IDisposable
{
    public const string Competition = "Breakwater Relays";

    private readonly LiveHeatApp app = new();
    private readonly Dictionary<int, string> codes = [];
    private IPage? quiet;
    private readonly List<HallHeat> planned = [];
    private int heats;

    internal Chromium Chromium { get; } = new();

    /// <summary>The server's address, with a slash at the end.</summary>
    internal Uri Site { get; private set; } = null!;

    internal string Passphrase { get; private set; } = "";

    internal Visitor Organiser { get; private set; } = null!;

    internal Visitor HeadJudge { get; private set; } = null!;

    public async Task InitializeAsync()
    {
        await Chromium.InitializeAsync();
        Site = app.Open();
        Passphrase = await app.Services.GetRequiredService<HeatRegistry>().Passphrase.Renew(CancellationToken.None);
        Organiser = new Visitor(app);
        (await Organiser.Post("/api/sign-in", new SignInRequest(Passphrase, "Ona"))).Fine();
        HeadJudge = await Join(Role.HeadJudge, null, "Hedda");
        await SetUp();
    }

    /// <summary>The competition and its divisions.</summary>
    private protected virtual async Task SetUp()
    {
        (await Organiser.Put("/api/setup/competition", new CompetitionSetup(Competition))).Fine();
        foreach (var division in new[] { new DivisionSetup("open", "Open"), new DivisionSetup("masters", "Masters 45+") })
        {
            (await Organiser.Put($"/api/setup/divisions/{division.Id}", division)).Fine();
        }
    }

    public async Task DisposeAsync()
    {
        Organiser.Dispose();
        HeadJudge.Dispose();
        await Chromium.DisposeAsync();
        await app.DisposeAsync();
    }

    public void Dispose()
    {
        app.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>A page of the server with nothing on it, where tests of single modules run.</summary>
    internal async Task<IPage> QuietPage()
    {
        if (quiet is null)
        {
            quiet = await Chromium.NewPage();
            await quiet.GotoAsync(new Uri(Site, "health").ToString());
        }

        return quiet;
    }

    /// <summary>A new code from the desk.</summary>
    internal async Task<string> Code(Role role, int? lane = null) =>
        (await Organiser.Post("/api/codes", new CodeRequest(role, lane is { } number ? new LaneNumber(number) : null))).Read<CodeMade>().Code;

    /// <summary>The code of a lane, which all its phones use.</summary>
    internal async Task<string> CodeOf(int lane)
    {
        if (!codes.TryGetValue(lane, out var code))
        {
            codes[lane] = code = await Code(Role.Judge, lane);
        }

        return code;
    }

    /// <summary>Somebody who joins without a browser.</summary>
    internal async Task<Visitor> Join(Role role, int? lane, string name)
    {
        var visitor = new Visitor(app);
        (await visitor.Post("/api/join", new JoinRequest(lane is { } number ? await CodeOf(number) : await Code(role), name))).Fine();
        return visitor;
    }

    /// <summary>Sets up one more heat, with its workout and its teams.</summary>
    internal async Task<HallHeat> Plan(Workout workout, params Entrant[] entrants)
    {
        var number = Interlocked.Increment(ref heats);
        workout = workout with { Id = $"w{number}" };
        (await Organiser.Put($"/api/setup/workouts/{workout.Id}", workout)).Fine();
        foreach (var entrant in entrants)
        {
            var team = new TeamSetup($"t{number}-{entrant.Lane}", entrant.Team, entrant.Division, entrant.Athletes.ToItems());
            (await Organiser.Put($"/api/setup/teams/{team.Id}", team)).Fine();
        }

        var heat = new HeatSetup($"h{number}", number, $"Heat {number}", workout.Id, null,
            entrants.Select(entrant => new HeatSetupLane(new LaneNumber(entrant.Lane), $"t{number}-{entrant.Lane}")).ToItems());
        (await Organiser.Put($"/api/setup/heats/{heat.Id}", heat)).Fine();
        var made = new HallHeat(this, heat.Id, heat.Title);
        lock (planned)
        {
            planned.Add(made);
        }

        return made;
    }

    /// <summary>Ends what the tests before have left running: a screen that follows the floor stays with a heat that runs.</summary>
    internal async Task ClearFloor()
    {
        foreach (var heat in planned)
        {
            await heat.Leave();
        }

        planned.Clear();
    }

    /// <summary>Sets a heat up and calls it.</summary>
    internal async Task<HallHeat> Call(Workout workout, params Entrant[] entrants)
    {
        var heat = await Plan(workout, entrants);
        await heat.Do(Organiser, "call");
        return heat;
    }
}

/// <summary>The same with an empty database: nothing is set up.</summary>
public sealed class BareHall : Hall
{
    private protected override Task SetUp() => Task.CompletedTask;
}

/// <summary>A team on a lane.</summary>
internal sealed record Entrant(int Lane, string Team, params string[] Athletes)
{
    public string Division { get; init; } = "open";
}
