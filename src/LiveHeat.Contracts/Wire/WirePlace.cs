using System.Text.Json;

namespace LiveHeat.Contracts.Wire;

/// <summary>Where in a JSON text something could not be read.</summary>
public static class WirePlace
{
    private const string Within = "path within the list";

    /// <summary>The field, such as <c>lanes[1].team</c>; null when the text as a whole is no JSON.</summary>
    public static string? FieldOf(JsonException wrong) =>
        $"{wrong.Path}{wrong.Data[Within]}".TrimStart('$', '.') is { Length: > 0 } field ? field : null;

    /// <summary>The reader of a list counts from the list. What reads around it adds the list's own place, if the place within is put aside.</summary>
    internal static JsonException InList(JsonException wrong) =>
        new(wrong.Message, wrong) { Data = { [Within] = $"{wrong.Path?[1..]}{wrong.Data[Within]}" } };
}
