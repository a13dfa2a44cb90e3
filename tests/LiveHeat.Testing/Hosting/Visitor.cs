using System.Buffers.Text;
using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using LiveHeat.Contracts.Wire;
using Microsoft.AspNetCore.Mvc.Testing.Handlers;

namespace LiveHeat.Testing.Hosting;

/// <summary>A browser on one of our pages: cookies of its own, our Origin, JSON. A test may spoil any of it.</summary>
internal sealed class Visitor : IDisposable
{
    private readonly HttpClient client;
    private readonly string outbox = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(16));
    private int made;

    public Visitor(LiveHeatApp app, CookieContainer? cookies = null)
    {
        App = app;
        Cookies = cookies ?? new CookieContainer();
        client = app.CreateDefaultClient(new CookieContainerHandler(Cookies));
        Site = client.BaseAddress!;
        Origin = Site.GetLeftPart(UriPartial.Authority);
    }

    public LiveHeatApp App { get; }

    public CookieContainer Cookies { get; }

    public Uri Site { get; }

    /// <summary>The page that sends; null for none.</summary>
    public string? Origin { get; set; }

    /// <summary>What its browser asks for, as in Accept-Language; null for nothing.</summary>
    public string? Language { get; set; }

    /// <summary>A new fact id, as a browser makes them.</summary>
    public string NewId() => $"{outbox}.{++made}";

    public Task<Reply> Get(string path, params (string Name, string Value)[] headers) => Send(HttpMethod.Get, path, null, headers);

    public Task<Reply> Post(string path, object body) => Send(HttpMethod.Post, path, Json(JsonSerializer.Serialize(body, WireJson.Options)));

    public Task<Reply> Put(string path, object body) => Send(HttpMethod.Put, path, Json(JsonSerializer.Serialize(body, WireJson.Options)));

    /// <summary>Posts text as it is.</summary>
    public Task<Reply> PostText(string path, string text, string type = "application/json") => Send(HttpMethod.Post, path, new StringContent(text, Encoding.UTF8, type));

    public async Task<Reply> Send(HttpMethod method, string path, HttpContent? content, params (string Name, string Value)[] headers)
    {
        using var request = new HttpRequestMessage(method, path) { Content = content };
        if (Origin is not null && method != HttpMethod.Get)
        {
            request.Headers.Add("Origin", Origin);
        }

        if (Language is not null)
        {
            request.Headers.AcceptLanguage.ParseAdd(Language);
        }

        foreach (var (name, value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        var message = await client.SendAsync(request);
        return new Reply((int)message.StatusCode, await message.Content.ReadAsStringAsync(), message);
    }

    public void Dispose() => client.Dispose();

    private static StringContent Json(string text) => new(text, Encoding.UTF8, "application/json");
}
