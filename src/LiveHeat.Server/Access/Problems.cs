using System.Globalization;
using System.Text.Json.Nodes;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using Microsoft.AspNetCore.WebUtilities;

namespace LiveHeat.Server.Access;

/// <summary>Answers that say what went wrong (RFC 9457): a stable code for programs and a sentence for people, in the language of the request.</summary>
internal static class Problems
{
    public static IResult Of(int status, string code, Telling why) => new Problem(status, code, why);

    /// <summary>A form with fields that cannot be.</summary>
    public static IResult BadSetup(IReadOnlyList<FieldError> errors) => new Problem(
        StatusCodes.Status400BadRequest, "bad-setup", Telling.Several(errors.Select(error => error.Why).Distinct().Take(3)))
    { Errors = errors };
}

/// <summary>One such answer.</summary>
internal sealed record Problem(int Status, string Code, Telling Why) : IResult
{
    /// <summary>The sentence, in the language now.</summary>
    public string Detail => Why.Sentence();

    /// <summary>After what time to try again, told in whole seconds.</summary>
    public TimeSpan? RetryAfter { get; init; }

    /// <summary>What is wrong field by field.</summary>
    public IReadOnlyList<FieldError> Errors { get; init; } = [];

    public Task ExecuteAsync(HttpContext httpContext)
    {
        var body = new JsonObject
        {
            ["title"] = ReasonPhrases.GetReasonPhrase(Status),
            ["status"] = Status,
            ["code"] = Code,
            ["detail"] = Detail,
        };
        if (Errors.Count > 0)
        {
            body["errors"] = new JsonArray([.. Errors.Select(FieldProblem.Of).Select(error => new JsonObject { ["field"] = error.Field, ["message"] = error.Message })]);
        }

        var response = httpContext.Response;
        response.StatusCode = Status;
        response.ContentType = "application/problem+json";
        response.Headers.CacheControl = "no-store";
        if (RetryAfter is { } wait)
        {
            response.Headers.RetryAfter = Math.Max(1, (long)Math.Ceiling(wait.TotalSeconds)).ToString(CultureInfo.InvariantCulture);
        }

        if (Status == StatusCodes.Status401Unauthorized)
        {
            // RFC 9110, 15.5.2: a 401 names a scheme. Ours is a cookie, so no browser asks for a password by itself.
            response.Headers.WWWAuthenticate = "Cookie";
        }

        return response.WriteAsync(body.ToJsonString(), httpContext.RequestAborted);
    }
}
