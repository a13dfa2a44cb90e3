using System.Text.Json;
using System.Text.Json.Nodes;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Integrity;
using LiveHeat.Engine.Timing;
using LiveHeat.Ledger.Facts;
using LiveHeat.Server.Heats;
using LiveHeat.Testing;
using LiveHeat.Testing.Hosting;
using LiveHeat.Testing.Simulation;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;

namespace LiveHeat.Browser.Simulation;

/// <summary>Plays a plot with the pad's own modules in a page, against the real server on a clock that stands where the plot has it.</summary>
internal sealed class PadPerformance : IAsyncDisposable
{
    private static readonly string Harness = Text("Simulation/harness.js");
    private static readonly string TrueTime = Text("Simulation/true-time.js");
    private readonly Dictionary<string, Visitor> phones = [];
    private readonly TestFloor floor;
    private readonly IPage page;
    private Plot plot = null!;
    private string heat = "";
    private long goAt;
    private long pushed;

    private PadPerformance(TestFloor floor, IPage page) => (this.floor, this.page) = (floor, page);

    /// <summary>A floor with a page that has nothing on it.</summary>
    public static async Task<PadPerformance> Open(Chromium chromium)
    {
        var floor = await TestFloor.Open(onPort: true);
        var performance = new PadPerformance(floor, await chromium.NewPage());
        performance.page.SetDefaultTimeout(0);
        await performance.page.ExposeFunctionAsync<string, Task<string>>("askServer", performance.Answer);
        return performance;
    }

    /// <summary>Plays it.</summary>
    public async Task<Played> Play(Plot next)
    {
        plot = next;
        await SetUp();
        await page.GotoAsync(new Uri(floor.Organiser.Site, "health").ToString());
        var sheet = (await floor.Organiser.Get($"/api/heats/{heat}/sheet")).Text;
        var stage = new JsonObject
        {
            ["plot"] = JsonSerializer.SerializeToNode(plot, JsonSerializerOptions.Web),
            ["goAt"] = goAt,
            ["heat"] = heat,
            ["sheet"] = JsonNode.Parse(sheet),
        };
        var told = await page.EvaluateAsync<JsonElement>($"text => ({Harness})({TrueTime}, JSON.parse(text))", stage.ToJsonString());
        return await Look(told);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await page.Context.DisposeAsync();
        await floor.DisposeAsync();
    }

    private async Task SetUp()
    {
        (heat, pushed) = ($"s{plot.Seed}", 0);
        goAt = (floor.Now / 1_000 * 1_000) + 1_000 - (long)Plot.CallMs;
        Turn(Plot.CallMs);
        (await floor.Organiser.Put($"/api/setup/workouts/w-{heat}", Plotting.Workout(plot.CapMs) with { Id = $"w-{heat}" })).Fine();
        foreach (var lane in plot.Lanes)
        {
            var entry = Some.Entry(lane.Lane, athletes: 2);
            (await floor.Organiser.Put($"/api/setup/teams/{heat}-{lane.Lane}", new TeamSetup($"{heat}-{lane.Lane}", entry.Name, entry.Division, entry.Athletes))).Fine();
            foreach (var phone in new[] { lane.First, lane.Second }.OfType<PhonePlot>())
            {
                phones[phone.Name] = await floor.Join(Role.Judge, lane.Lane, phone.Name);
            }
        }

        (await floor.Organiser.Put($"/api/setup/heats/{heat}", new HeatSetup(
            heat, plot.Seed, $"Heat {plot.Seed}", $"w-{heat}", null, plot.Lanes.Select(lane => new HeatSetupLane(new LaneNumber(lane.Lane), $"{heat}-{lane.Lane}")).ToItems()))).Fine();
        await Heat.Do(floor.Organiser, "call");
    }

    private TestHeat Heat => new(floor, heat);

    private HeatSessions Sessions => floor.App.Services.GetRequiredService<HeatSessions>();

    /// <summary>A request arrives at the server, at a true time.</summary>
    private async Task<string> Answer(string text)
    {
        var asked = JsonNode.Parse(text)!;
        Turn(asked["atMs"]!.GetValue<double>());
        var (method, path) = (asked["method"]!.GetValue<string>(), asked["path"]!.GetValue<string>());
        var reply = method switch
        {
            "GO" => await Go(),
            "GET" => await phones[asked["phone"]!.GetValue<string>()].Get(path),
            _ => await phones[asked["phone"]!.GetValue<string>()].PostText(path, asked["body"]!.GetValue<string>()),
        };
        var frame = (await Sessions.Of(new HeatId(heat))).Frame();
        var isNew = frame.Sequence > pushed;
        pushed = frame.Sequence;
        return new JsonObject
        {
            ["status"] = reply.Status,
            ["type"] = reply.Message.Content.Headers.ContentType?.MediaType,
            ["text"] = reply.Text,
            ["frame"] = isNew ? JsonSerializer.SerializeToNode(frame, WireJson.Options) : null,
        }.ToJsonString();
    }

    private async Task<Reply> Go()
    {
        await Heat.Do(floor.Organiser, "override-ready", new { lanes = plot.Lanes.Select(lane => lane.Lane).ToArray(), reason = "all stand ready" });
        return (await Heat.Command(floor.Organiser, "schedule-start", new { inMs = -Plot.StartMs })).Fine();
    }

    /// <summary>The heat ends, what is held counts, and the ledger is read.</summary>
    private async Task<Played> Look(JsonElement told)
    {
        Turn(told.GetProperty("endMs").GetDouble());
        await Heat.Do(floor.Organiser, "end");
        var session = await Sessions.Of(new HeatId(heat));
        var held = session.State.Lanes.SelectMany(lane => lane.Flagged).Where(flagged => flagged.Flags.HasFlag(FactFlags.Quarantined)).ToList();
        foreach (var flagged in held)
        {
            await Heat.Do(floor.HeadJudge, "admit", new { target = flagged.Fact.ToString(), reason = "the judge confirms it" });
        }

        var moments = told.GetProperty("made").EnumerateArray().ToDictionary(
            one => one.GetProperty("id").GetString()!, one => (Lane: one.GetProperty("lane").GetInt32(), Number: one.GetProperty("moment").GetInt32()));
        var taps = told.GetProperty("taps").EnumerateArray().Select(one => (Phone: one.GetProperty("phone").GetString()!, Fact: WireJson.ReadFact(one.GetProperty("fact").GetString()!))).ToLookup(tap => moments.ContainsKey(tap.Fact.Id.ToString()));
        return new Played(
            plot, new Instant(goAt), [.. taps[true].Select(tap => Made(tap.Phone, tap.Fact, moments[tap.Fact.Id.ToString()]))],
            await floor.App.Services.GetRequiredService<HeatLedger>().Read(session.Heat, 0, CancellationToken.None), session.State,
            ResultMaking.Of(session.State, session.HeadHash, new Instant(floor.Now))!, held.Count,
            [.. told.GetProperty("errors").EnumerateArray().Select(error => error.GetString()!), .. taps[false].Select(tap => $"{tap.Phone}: {tap.Fact.Id} is no id that a tap was stored under.")]);
    }

    private MadeTap Made(string phone, HeatFact fact, (int Lane, int Number) moment)
    {
        using var body = JsonDocument.Parse(WireJson.Write(fact));
        return new MadeTap(phone, moment.Lane, plot.Lanes.Single(lane => lane.Lane == moment.Lane).Story[moment.Number], fact.Id, CanonicalJson.Text(body.RootElement));
    }

    private void Turn(double atMs)
    {
        var now = DateTimeOffset.FromUnixTimeMilliseconds(goAt).AddTicks((long)Math.Round(atMs * TimeSpan.TicksPerMillisecond));
        if (now > floor.Time.GetUtcNow())
        {
            floor.Time.SetUtcNow(now);
        }
    }

    private static string Text(string name)
    {
        using var reader = new StreamReader(typeof(PadPerformance).Assembly.GetManifestResourceStream(name)!);
        // An expression: the lines of comment before it stay behind.
        return string.Join('\n', reader.ReadToEnd().TrimEnd().Split('\n').SkipWhile(line => line.StartsWith("//", StringComparison.Ordinal)));
    }
}
