using System.Text.Json;
using LiveHeat.Server.Access;

namespace LiveHeat.Server.Heats;

/// <summary>Reads a request's body as JSON, with an answer for whoever sent something else.</summary>
internal static class Bodies
{
    /// <summary>Most bytes of a batch of taps.</summary>
    public const int MostBytes = 4 * 1024 * 1024;

    /// <summary>Most bytes of a command: a line-up or a reason is far smaller, and stays on the ledger and on every result for ever.</summary>
    public const int MostCommandBytes = 64 * 1024;

    /// <summary>The body, or the problem to answer with.</summary>
    public static async Task<(JsonElement Body, IResult? Problem)> Read(HttpRequest request, CancellationToken cancellation)
    {
        try
        {
            using var document = await JsonDocument.ParseAsync(request.Body, cancellationToken: cancellation);
            return document.RootElement.ValueKind == JsonValueKind.Object
                ? (document.RootElement.Clone(), null)
                : (default, Unreadable("it is not a JSON object"));
        }
        catch (JsonException wrong)
        {
            return (default, Unreadable($"it breaks off or goes wrong at line {wrong.LineNumber + 1}, byte {wrong.BytePositionInLine + 1}"));
        }
        catch (BadHttpRequestException wrong) when (wrong.StatusCode == StatusCodes.Status413PayloadTooLarge)
        {
            return (default, Problems.Of(StatusCodes.Status413PayloadTooLarge, "too-large", "This is larger than anything a phone sends. Send less at a time."));
        }
    }

    /// <summary>400 with the reason.</summary>
    public static IResult Unreadable(string why) =>
        Problems.Of(StatusCodes.Status400BadRequest, "unreadable", $"What was sent cannot be read: {why}. Nothing was recorded; it is kept where it was made.");
}
