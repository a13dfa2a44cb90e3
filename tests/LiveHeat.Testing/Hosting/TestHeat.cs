using System.Text.Json;
using System.Text.Json.Nodes;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Taps;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Testing.Hosting;

/// <summary>One heat of a <see cref="TestFloor"/>, worked through its addresses.</summary>
internal sealed class TestHeat(TestFloor floor, string id)
{
    private readonly SortedDictionary<int, LaneJudge> judges = [];

    public TestFloor Floor => floor;

    public string Id => id;

    public string Path => $"/api/heats/{id}";

    /// <summary>The start in force as the phones know it; null before GO.</summary>
    public string? Start { get; set; }

    /// <summary>The judge who holds the lane's primary seat.</summary>
    public LaneJudge this[int lane] => judges[lane];

    /// <summary>Sends a command; the answer may be a refusal.</summary>
    /// <param name="fields">Its own fields, as an anonymous object.</param>
    /// <param name="factId">Its id; null for a new one.</param>
    public Task<Reply> Command(Visitor who, string command, object? fields = null, string? factId = null)
    {
        var body = JsonSerializer.SerializeToNode(fields ?? new { }, WireJson.Options)!.AsObject();
        body["id"] = factId ?? who.NewId();
        body["command"] = command;
        return who.Post($"{Path}/commands", body);
    }

    /// <summary>Sends a command that must be accepted.</summary>
    public async Task<CommandAnswer> Do(Visitor who, string command, object? fields = null) =>
        (await Command(who, command, fields)).Read<CommandAnswer>();

    public async Task<Frame> Frame() => (await floor.Organiser.Get($"{Path}/frame")).Read<Frame>();

    /// <summary>All facts on the ledger.</summary>
    public async Task<IReadOnlyList<FactLine>> Facts() => (await floor.Organiser.Get($"{Path}/facts")).Read<FactLines>().Facts;

    /// <summary>All taps on the ledger.</summary>
    public async Task<IReadOnlyList<FactLine>> Taps() => [.. (await Facts()).Where(line => line.Fact is HeatFact.Floor)];

    /// <summary>A judge joins with a code of the lane and takes a seat.</summary>
    public async Task<LaneJudge> Seat(int lane, bool ready = false, string duty = "primary", Visitor? phone = null)
    {
        phone ??= await floor.Join(Role.Judge, lane, $"Judge {lane}");
        var answer = await Do(phone, "take-seat", new { lane, duty });
        var seat = ((HeatFact.SeatTaken)(await Facts()).Single(line => line.Sequence == answer.Sequence).Fact).Seat.Value;
        var judge = new LaneJudge(this, phone, lane, seat);
        if (duty == "primary")
        {
            judges[lane] = judge;
        }

        if (ready)
        {
            await Do(phone, "ready", new { lane, seat });
        }

        return judge;
    }

    /// <summary>GO in three seconds, which pass.</summary>
    public async Task Go()
    {
        await Do(floor.Organiser, "schedule-start", new { inMs = 3000 });
        Start = (await Frame()).Start!.Id;
        floor.Time.Advance(TimeSpan.FromSeconds(3));
    }

    /// <summary>Ends the heat and freezes it.</summary>
    public async Task EndAndFreeze()
    {
        await Do(floor.Organiser, "end");
        await Do(floor.Organiser, "freeze", new { head = (await Frame()).Sequence });
    }

    /// <summary>Signs the frozen heat twice.</summary>
    public async Task Certify()
    {
        var head = (await Frame()).SignedHead;
        await Do(floor.Organiser, "certify", new { head });
        await Do(floor.HeadJudge, "certify", new { head });
    }

    /// <summary>The same heat and judges on a server that was started again.</summary>
    public TestHeat On(TestFloor next)
    {
        var heat = new TestHeat(next, id) { Start = Start };
        foreach (var (lane, judge) in judges)
        {
            heat.judges[lane] = judge.On(heat);
        }

        return heat;
    }

    /// <summary>Taps as one batch.</summary>
    public static JsonObject Batch(params IEnumerable<JsonNode?> taps) => new() { ["taps"] = new JsonArray([.. taps.Select(tap => tap?.DeepClone())]) };
}
