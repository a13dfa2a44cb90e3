using System.Security.Cryptography;
using System.Text;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Ledger.Facts;

namespace LiveHeat.Ledger;

/// <summary>Lines to offer, as a server would make them.</summary>
public static class Some
{
    public static readonly HeatId Heat1 = new("h1");

    public static readonly HeatId Heat2 = new("h2");

    /// <summary>A valid outbox id that is the same for the same seed.</summary>
    public static string Outbox(string seed) => Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(seed)))[..FactId.OutboxLength]
        .Replace('+', '-').Replace('/', '_');

    public static NewLine Line(long counter, string outbox = "phone", string body = """{"fact":"step-done"}""") => new(
        new FactId(Outbox(outbox), counter),
        "sign-in-1",
        new Instant(1_795_600_000_000 + counter),
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(body))),
        body);

    public static NewLine[] Lines(int first, int count, string outbox = "phone") =>
        [.. Enumerable.Range(first, count).Select(counter => Line(counter, outbox))];

    /// <summary>A line that no table takes: it has no sender.</summary>
    public static NewLine BadLine(long counter) => Line(counter, "bad") with { Sender = null! };
}
