using System.Net;
using System.Text.Json;
using LiveHeat.Contracts.Setup;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Connection;

/// <summary>Reads what went wrong out of an HTTP answer: problem details (RFC 9457) where there are any.</summary>
public static class ProblemReading
{
    /// <summary>The problem an answer tells.</summary>
    public static async Task<Problem> Read(HttpResponseMessage answer, CancellationToken stopping)
    {
        var text = await answer.Content.ReadAsStringAsync(stopping);
        try
        {
            return Read(JsonDocument.Parse(text).RootElement) ?? Odd(answer.StatusCode);
        }
        catch (JsonException)
        {
            return Odd(answer.StatusCode);
        }
    }

    private static Problem? Read(JsonElement body)
    {
        if (body.ValueKind != JsonValueKind.Object || Text(body, "code") is not { } code)
        {
            return null;
        }

        return new Problem(
            code, Text(body, "detail") ?? Text(body, "title") ?? code, [.. Fields(body)],
            body.TryGetProperty("head", out var head) && head.ValueKind == JsonValueKind.Number && head.TryGetInt64(out var sequence) ? sequence : null);
    }

    private static IEnumerable<FieldProblem> Fields(JsonElement body) =>
        from error in Items(body, "errors")
        where error.ValueKind == JsonValueKind.Object
        select new FieldProblem(Text(error, "field") ?? "", Text(error, "message") ?? "");

    private static IEnumerable<JsonElement> Items(JsonElement body, string name) =>
        body.TryGetProperty(name, out var list) && list.ValueKind == JsonValueKind.Array ? list.EnumerateArray() : [];

    private static string? Text(JsonElement body, string name) =>
        body.TryGetProperty(name, out var text) && text.ValueKind == JsonValueKind.String ? text.GetString() : null;

    private static Problem Odd(HttpStatusCode status) => Problem.Of(Problem.OddAnswer, ProblemWords.OddAnswer((int)status));
}
