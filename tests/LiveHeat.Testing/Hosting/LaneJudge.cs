using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text.Json.Nodes;
using LiveHeat.Contracts.Taps;

namespace LiveHeat.Testing.Hosting;

/// <summary>A judge's phone in a seat: makes taps as a pad would, and sends what a test tells it to.</summary>
internal sealed class LaneJudge(TestHeat heat, Visitor phone, int lane, string seat, string? outbox = null, int made = 0)
{
    private readonly string outbox = outbox ?? Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(16));
    private int counter = made;

    public TestHeat Heat => heat;

    public Visitor Phone => phone;

    public int Lane => lane;

    public string Seat => seat;

    /// <summary>A tap of this moment, on the start and plan that are in force.</summary>
    /// <param name="fact">Its name on the wire.</param>
    public JsonObject Tap(string fact, params (string Name, JsonNode? Value)[] fields)
    {
        var now = heat.Floor.Now;
        var tap = new JsonObject
        {
            ["fact"] = fact,
            ["id"] = $"{outbox}.{++counter}",
            ["lane"] = lane,
            ["instant"] = now,
            ["uncertaintyMs"] = 5,
            ["start"] = heat.Start,
            ["plan"] = 1,
            ["seat"] = seat,
            ["phone"] = new JsonObject { ["monoMs"] = 1234.5, ["wallMs"] = now - 250, ["offsetMs"] = 250 },
        };
        foreach (var (name, value) in fields)
        {
            tap[name] = value;
        }

        return tap;
    }

    /// <summary>"This step is done", now.</summary>
    public JsonObject Done(int step, params (string Name, JsonNode? Value)[] fields) => Tap("step-done", [("step", step), .. fields]);

    /// <summary>Posts taps; the answer may be a refusal of the whole batch.</summary>
    public Task<Reply> Post(params IEnumerable<JsonNode?> taps) => phone.Post($"{heat.Path}/taps", TestHeat.Batch(taps));

    /// <summary>Sends taps and gives their receipts.</summary>
    public async Task<TapReceipts> Send(params IEnumerable<JsonNode?> taps) => (await Post(taps)).Read<TapReceipts>();

    /// <summary>Sends one tap and gives its receipt.</summary>
    public async Task<TapReceipt> SendOne(JsonNode tap) => (await Send(tap)).Receipts.Single();

    /// <summary>After so many seconds, "this step is done".</summary>
    public async Task<TapReceipt> Finish(int step, double afterSeconds = 20)
    {
        heat.Floor.Time.Advance(TimeSpan.FromSeconds(afterSeconds));
        return await SendOne(Done(step));
    }

    /// <summary>The same phone on a server that was started again.</summary>
    public LaneJudge On(TestHeat next) => new(next, next.Floor.Visitor(phone.Cookies), lane, seat, outbox, counter);
}
