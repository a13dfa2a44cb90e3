using System.Text.Json;
using System.Text.Json.Nodes;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Contracts.Taps;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Browser.Halls;

/// <summary>One heat of a <see cref="Hall"/>, worked through its addresses where a test does not do it on a screen.</summary>
internal sealed class HallHeat(Hall hall, string id, string title)
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(15);
    private static readonly TimeSpan AskAgain = TimeSpan.FromMilliseconds(50);

    public string Id => id;

    public string Title => title;

    public string Path => $"/api/heats/{id}";

    public async Task<Frame> Frame() => (await hall.Organiser.Get($"{Path}/frame")).Read<Frame>();

    public async Task<LaneFrame> Lane(int lane) => (await Frame()).Lanes.Single(one => one.Lane.Value == lane);

    public async Task<Sheet> Sheet() => (await hall.Organiser.Get($"{Path}/sheet")).Read<Sheet>();

    public async Task<ResultTable> Result() => (await hall.Organiser.Get($"{Path}/result")).Read<ResultTable>();

    public async Task<IReadOnlyList<FactLine>> Facts() => (await hall.Organiser.Get($"{Path}/facts")).Read<FactLines>().Facts;

    /// <summary>A lane's taps as the ledger has them, in its order.</summary>
    public async Task<IReadOnlyList<HeatFact.Floor>> Taps(int lane) =>
        [.. (await Facts()).Select(line => line.Fact).OfType<HeatFact.Floor>().Where(tap => tap.Lane.Value == lane)];

    /// <summary>The same in words: "step-done 1", "count-reached 2 5", "undone".</summary>
    public async Task<IReadOnlyList<string>> Told(int lane) => [.. (await Taps(lane)).Select(Words)];

    /// <summary>Waits until the ledger has exactly these taps of a lane, in words.</summary>
    public async Task LedgerHas(int lane, params string[] facts)
    {
        using var late = new CancellationTokenSource(Patience);
        while (!facts.SequenceEqual(await Told(lane)) && !late.IsCancellationRequested)
        {
            await Task.Delay(AskAgain);
        }

        Assert.Equal(facts, await Told(lane));
    }

    /// <summary>A command that must be accepted.</summary>
    public async Task Do(Visitor who, string command, object? fields = null)
    {
        var body = JsonSerializer.SerializeToNode(fields ?? new { }, WireJson.Options)!.AsObject();
        body["id"] = who.NewId();
        body["command"] = command;
        (await who.Post($"{Path}/commands", body)).Fine();
    }

    /// <summary>The same by the organiser.</summary>
    public Task Do(string command, object? fields = null) => Do(hall.Organiser, command, fields);

    /// <summary>All lanes count as ready, and GO was a moment ago.</summary>
    public async Task RunsSince(int ms)
    {
        await Ready();
        await Do("observe-start", new { agoMs = ms, uncertaintyMs = 50, reason = "the horn went without us" });
    }

    /// <summary>Ends the heat if it is live.</summary>
    public async Task Leave()
    {
        var frame = await hall.Organiser.Get($"{Path}/frame");
        if (frame.Status == 200 && frame.Read<Frame>().Phase is Phase.CountingDown or Phase.Running or Phase.Halted)
        {
            await Do(frame.Read<Frame>().Phase == Phase.CountingDown ? "recall-start" : "end", new { reason = "the test is over" });
        }
    }

    /// <summary>Whoever is not ready counts as ready.</summary>
    public async Task Ready()
    {
        var missing = (await Frame()).Lanes.Where(lane => !lane.Ready).Select(lane => lane.Lane.Value).ToArray();
        if (missing.Length > 0)
        {
            await Do("override-ready", new { lanes = missing, reason = "judged from paper" });
        }
    }

    /// <summary>A step of a lane that nobody's phone saw, as the organiser adds it: done so long after GO.</summary>
    public async Task Add(int lane, int step, int atMs)
    {
        var start = (await Frame()).Start!;
        var line = (await Sheet()).Lanes.Single(one => one.Lane.Value == lane);
        await Do("add", new
        {
            source = "video",
            reason = "seen on the recording",
            tap = new JsonObject
            {
                ["fact"] = line.Steps[step - 1].Kind == StepKind.Tag ? "tag-made" : "step-done",
                ["id"] = hall.Organiser.NewId(),
                ["lane"] = lane,
                ["step"] = step,
                ["instant"] = start.GoAt.UnixMs + atMs,
                ["uncertaintyMs"] = 40,
                ["start"] = start.Id,
                ["plan"] = 1,
            },
        });
    }

    private static string Words(HeatFact.Floor tap)
    {
        var json = JsonNode.Parse(WireJson.Write(tap))!.AsObject();
        var parts = new[] { json["fact"], json["step"], json["count"] }.Where(part => part is not null);
        return string.Join(' ', parts);
    }
}
