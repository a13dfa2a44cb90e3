using System.Globalization;
using System.Text.Json;
using LiveHeat.Contracts.Wire;

namespace LiveHeat.Testing.Hosting;

/// <summary>What the server answered.</summary>
internal sealed record Reply(int Status, string Text, HttpResponseMessage Message)
{
    /// <summary>The body as JSON.</summary>
    public JsonElement Json => JsonSerializer.Deserialize<JsonElement>(Text);

    /// <summary>A problem's stable code; empty when it is no problem.</summary>
    public string Code => Message.Content.Headers.ContentType?.MediaType == "application/problem+json" ? Json.GetProperty("code").GetString()! : "";

    /// <summary>A problem's sentence.</summary>
    public string Detail => Json.GetProperty("detail").GetString()!;

    /// <summary>The body as what the wire says it is.</summary>
    public T Read<T>() => Status == 200 ? JsonSerializer.Deserialize<T>(Text, WireJson.Options)! : throw new InvalidOperationException(ToString());

    /// <summary>Itself when all went well; otherwise an exception that says what the server said.</summary>
    public Reply Fine() => Status is >= 200 and < 300 ? this : throw new InvalidOperationException(ToString());

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Message.RequestMessage?.RequestUri} answers {Status} {Text}");
}
