using System.Globalization;
using System.Text.Json;
using LiveHeat.Contracts.Wire;

namespace LiveHeat.Server.Access;

/// <summary>Turns a request that could not be read into an answer that says where.</summary>
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
    }

    private static Problem Answer(BadHttpRequestException wrong) => wrong switch
    {
        { StatusCode: StatusCodes.Status413PayloadTooLarge } => OwnOrigin.TooLarge(),
        { InnerException: JsonException json } => Unreadable(StatusCodes.Status400BadRequest, Where(json)),
        _ => Unreadable(wrong.StatusCode, "something in it or in its address is missing or broke off"),
    };

    private static Problem Unreadable(int status, string why) => new(status, "unreadable", $"What was sent cannot be read: {why}. Nothing was done.");

    private static string Where(JsonException json)
    {
        var place = string.Create(CultureInfo.InvariantCulture, $"line {(json.LineNumber ?? 0) + 1}, character {(json.BytePositionInLine ?? 0) + 1}");
        var field = WirePlace.FieldOf(json) is { } path ? $"the field {path} ({place})" : place;
        return $"it goes wrong at {field}{Wanted(json)}";
    }

    /// <summary>Our own converters say what they want; the library's words are for programmers.</summary>
    private static string Wanted(JsonException json)
    {
        Exception first = json;
        while (first.InnerException is { } cause)
        {
            first = cause;
        }

        return first is JsonException && first.GetType() == typeof(JsonException) && !first.Message.Contains(" Path: ", StringComparison.Ordinal)
            ? $": {first.Message.TrimEnd('.')}" : "";
    }
}
