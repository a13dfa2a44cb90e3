using System.Text.Json;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Ledger.Registry;
using LiveHeat.Server.Heats;

namespace LiveHeat.Server.Access;

/// <summary>Turns a request that could not be read into an answer that says where, and one whose change the disk refused into one that says so.</summary>
internal sealed class BadRequests(RequestDelegate next)
{
    public async Task Invoke(HttpContext context)
    {
        try
        {
            await next(context);
        }
        catch (BadHttpRequestException wrong) when (!context.Response.HasStarted)
        {
            await Answer(wrong).ExecuteAsync(context);
        }
        catch (RegistryUnavailable full) when (!context.Response.HasStarted)
        {
            await new Problem(StatusCodes.Status503ServiceUnavailable, "setup-unavailable", HeatRefusals.SetupUnavailable((full.InnerException!.InnerException ?? full.InnerException).Message)).ExecuteAsync(context);
        }
    }

    private static Problem Answer(BadHttpRequestException wrong) => wrong switch
    {
        { StatusCode: StatusCodes.Status413PayloadTooLarge } => OwnOrigin.TooLarge(),
        { InnerException: JsonException json } => Unreadable(StatusCodes.Status400BadRequest, Where(json)),
        _ => Unreadable(wrong.StatusCode, AccessRefusals.BrokeOff),
    };

    private static Problem Unreadable(int status, Telling why) => new(status, "unreadable", AccessRefusals.Unreadable(why));

    private static Telling Where(JsonException json)
    {
        var (line, character) = ((json.LineNumber ?? 0) + 1, (json.BytePositionInLine ?? 0) + 1);
        var at = WirePlace.FieldOf(json) is { } path ? AccessRefusals.WrongAtField(path, line, character) : AccessRefusals.WrongAt(line, character);
        return Wanted(json) is { } wanted ? AccessRefusals.WrongBecause(at, wanted) : at;
    }

    /// <summary>Our own converters say what they want; the library's words are for programmers.</summary>
    private static string? Wanted(JsonException json)
    {
        Exception first = json;
        while (first.InnerException is { } cause)
        {
            first = cause;
        }

        return first is JsonException && first.GetType() == typeof(JsonException) && !first.Message.Contains(" Path: ", StringComparison.Ordinal)
            ? first.Message.TrimEnd('.') : null;
    }
}
