using System.Text.Json;
using LiveHeat.Engine;
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
                : (default, Unreadable(HeatRefusals.NoObject));
        }
        catch (JsonException wrong)
        {
            return (default, Unreadable(HeatRefusals.BreaksOff((wrong.LineNumber ?? 0) + 1, (wrong.BytePositionInLine ?? 0) + 1)));
        }
        catch (BadHttpRequestException wrong) when (wrong.StatusCode == StatusCodes.Status413PayloadTooLarge)
        {
            return (default, Problems.Of(StatusCodes.Status413PayloadTooLarge, "too-large", HeatRefusals.BodyTooLarge));
        }
    }

    /// <summary>400 with the reason.</summary>
    public static IResult Unreadable(Telling why) =>
        Problems.Of(StatusCodes.Status400BadRequest, "unreadable", HeatRefusals.Unreadable(why));
}
