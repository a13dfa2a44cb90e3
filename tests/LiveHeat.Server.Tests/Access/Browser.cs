using System.Globalization;
using System.Text;
using System.Text.Json;

namespace LiveHeat.Server.Access;

/// <summary>What came back.</summary>
internal sealed record Answer(int Status, string Text, HttpResponseMessage Response)
{
    public JsonElement Json => JsonDocument.Parse(Text).RootElement;

    /// <summary>The code of a problem.</summary>
    public string Code => Field("code");

    public string Detail => Field("detail");

    public int? RetryAfter => Response.Headers.RetryAfter is { Delta: { } wait } ? (int)wait.TotalSeconds : null;

    /// <summary>The lines that set cookies.</summary>
    public IReadOnlyList<string> SetCookies => Response.Headers.TryGetValues("Set-Cookie", out var lines) ? [.. lines] : [];

    public string Field(string name) => Json.GetProperty(name).ToString();

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Status} {Text}");
}

/// <summary>Sends what a browser on one of our pages sends, and keeps cookies. A test may spoil any of it.</summary>
internal sealed class Browser(HttpClient client, string address)
{
    public Dictionary<string, string> Cookies { get; } = [];

    /// <summary>The page's origin; null sends none.</summary>
    public string? Origin { get; set; } = address;

    public Task<Answer> Get(string path) => Send(HttpMethod.Get, path, null);

    public Task<Answer> Post(string path, object body) => Send(HttpMethod.Post, path, Json(JsonSerializer.Serialize(body)));

    public Task<Answer> Put(string path, object body) => Send(HttpMethod.Put, path, Json(JsonSerializer.Serialize(body)));

    public Task<Answer> Delete(string path) => Send(HttpMethod.Delete, path, null);

    public Task<Answer> PostText(string path, string body) => Send(HttpMethod.Post, path, Json(body));

    public Task<Answer> PutText(string path, string body) => Send(HttpMethod.Put, path, Json(body));

    public static StringContent Json(string text) => new(text, Encoding.UTF8, "application/json");

    public async Task<Answer> Send(HttpMethod method, string path, HttpContent? content)
    {
        using var request = new HttpRequestMessage(method, path) { Content = content };
        if (Origin is not null && method != HttpMethod.Get)
        {
            request.Headers.Add("Origin", Origin);
        }

        if (Cookies.Count > 0)
        {
            request.Headers.Add("Cookie", string.Join("; ", Cookies.Select(cookie => $"{cookie.Key}={cookie.Value}")));
        }

        var response = await client.SendAsync(request);
        var answer = new Answer((int)response.StatusCode, await response.Content.ReadAsStringAsync(), response);
        foreach (var line in answer.SetCookies)
        {
            Keep(line);
        }

        return answer;
    }

    private void Keep(string line)
    {
        var (name, value) = line.Split(';')[0].Split('=') is [var left, var right] ? (left, right) : throw new FormatException(line);
        if (value.Length == 0)
        {
            Cookies.Remove(name);
        }
        else
        {
            Cookies[name] = value;
        }
    }
}
