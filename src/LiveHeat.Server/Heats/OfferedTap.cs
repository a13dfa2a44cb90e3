using System.Text.Json;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Server.Heats;

/// <summary>One tap of a batch, read or not.</summary>
/// <param name="Id">As sent; empty when it had none.</param>
/// <param name="Fact">The tap; null when it is refused as it is.</param>
/// <param name="Body">The tap as the ledger keeps it.</param>
/// <param name="BodyHash">SHA-256 of what was sent, hex.</param>
/// <param name="Code">Why it is refused; empty when it was read.</param>
/// <param name="Why">The same for a person; null when it was read.</param>
internal sealed record OfferedTap(string Id, HeatFact.Floor? Fact, string Body, string BodyHash, string Code, Telling? Why)
{
    /// <summary>Most characters of a tap: what is in it goes into every frame, and the longest that a pad makes has a tenth of it.</summary>
    private const int MostCharacters = 4096;

    /// <summary>Never throws: whatever one tap is, those behind it are read.</summary>
    public static OfferedTap Read(JsonElement sent)
    {
        var id = IdOf(sent);
        if (sent.GetRawText().Length > MostCharacters)
        {
            return new OfferedTap(id, null, "", "", "too-large", HeatRefusals.TapTooLarge);
        }

        try
        {
            var tap = WireJson.ReadTap(sent);
            return tap.UncertaintyMs < 0
                ? Unreadable(id, HeatRefusals.TapFieldWrong("uncertaintyMs"))
                : new OfferedTap(id, tap, HeatSession.BodyOf(tap), HeatSession.HashOf(sent), "", null);
        }
        catch (Exception wrong) when (wrong is JsonException or ArgumentException)
        {
            return Unreadable(id, Place(wrong));
        }
    }

    private static OfferedTap Unreadable(string id, Telling why) => new(id, null, "", "", "unreadable", why);

    private static string IdOf(JsonElement sent)
    {
        try
        {
            return sent.ValueKind == JsonValueKind.Object && sent.TryGetProperty("id", out var text) && text.ValueKind == JsonValueKind.String ? text.GetString()! : "";
        }
        catch (InvalidOperationException)
        {
            // Half of a surrogate pair is no text.
            return "";
        }
    }

    private static Telling Place(Exception wrong) => wrong is JsonException { Path: { Length: > 2 } path } ? HeatRefusals.TapFieldWrong(path[2..]) : HeatRefusals.TapUnreadable;
}
