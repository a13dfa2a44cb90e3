using System.Text.Json;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Server.Heats;

/// <summary>One tap of a batch, read or not.</summary>
/// <param name="Id">As sent; empty when it had none.</param>
/// <param name="Fact">The tap; null when it cannot be read.</param>
/// <param name="BodyHash">SHA-256 of what was sent, hex.</param>
/// <param name="Unreadable">What is wrong, in a sentence; null when it was read.</param>
internal sealed record OfferedTap(string Id, HeatFact.Floor? Fact, string BodyHash, string? Unreadable)
{
    public static OfferedTap Read(JsonElement sent)
    {
        var id = sent.ValueKind == JsonValueKind.Object && sent.TryGetProperty("id", out var text) && text.ValueKind == JsonValueKind.String
            ? text.GetString()!
            : "";
        try
        {
            return sent.Deserialize<HeatFact.Floor>(WireJson.Options) is { } tap
                ? new OfferedTap(id, tap, HeatSession.HashOf(sent), null)
                : new OfferedTap(id, null, "", "This tap is empty.");
        }
        catch (Exception wrong) when (wrong is JsonException or NotSupportedException)
        {
            return new OfferedTap(id, null, "", $"This tap cannot be read: {Place(wrong)}. Show it to the head judge; it is kept on the phone.");
        }
    }

    private static string Place(Exception wrong) => wrong is JsonException { Path: { Length: > 2 } path } ? $"its field {path[2..]} is not as it should be" : "a field is missing or not as it should be";
}
