using System.Net;
using System.Net.Http.Headers;
using System.Text.Json;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;

namespace LiveHeat.Rehearsal.Phones;

/// <summary>One browser's HTTP: its own cookies, its own Origin, JSON both ways.</summary>
public sealed class SiteClient : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    private readonly HttpClient http;
    private readonly PhoneNetwork network;

    public SiteClient(Uri server, PhoneNetwork network)
    {
        Server = server;
        this.network = network;
        http = new HttpClient(new SocketsHttpHandler { CookieContainer = Cookies, UseCookies = true, AllowAutoRedirect = false }) { BaseAddress = server, Timeout = Patience };
        http.DefaultRequestHeaders.Add("Origin", Origin);
    }

    public Uri Server { get; }

    /// <summary>What writes and the hub's upgrade must say.</summary>
    public string Origin => Server.GetLeftPart(UriPartial.Authority);

    public CookieContainer Cookies { get; } = new();

    /// <exception cref="SiteRefusedException">The server refused.</exception>
    /// <exception cref="SiteSilentException">No answer came.</exception>
    public Task<T> Get<T>(string path, CancellationToken stopping) => Ask<T>(new HttpRequestMessage(HttpMethod.Get, path), stopping);

    /// <inheritdoc cref="Get"/>
    public Task<T> Post<TBody, T>(string path, TBody body, CancellationToken stopping) => Ask<T>(With(HttpMethod.Post, path, body), stopping);

    /// <inheritdoc cref="Get"/>
    public Task Put<TBody>(string path, TBody body, CancellationToken stopping) => Ask<JsonElement?>(With(HttpMethod.Put, path, body), stopping);

    /// <summary>A command to a heat, once.</summary>
    /// <inheritdoc cref="Get"/>
    public Task<Contracts.Taps.CommandAnswer> Command(HeatId heat, HeatCommand command, CancellationToken stopping) =>
        Post<HeatCommand, Contracts.Taps.CommandAnswer>($"/api/heats/{heat}/commands", command, stopping);

    public void Dispose() => http.Dispose();

    private static HttpRequestMessage With<TBody>(HttpMethod method, string path, TBody body)
    {
        var content = new ByteArrayContent(JsonSerializer.SerializeToUtf8Bytes(body, WireJson.Options));
        content.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        return new HttpRequestMessage(method, path) { Content = content };
    }

    private async Task<T> Ask<T>(HttpRequestMessage request, CancellationToken stopping)
    {
        using (request)
        {
            try
            {
                network.Pass(written: false);
                using var answer = await http.SendAsync(request, stopping).ConfigureAwait(false);
                var bytes = await answer.Content.ReadAsByteArrayAsync(stopping).ConfigureAwait(false);
                network.Pass(request.Method != HttpMethod.Get);
                return answer.IsSuccessStatusCode ? Read<T>(bytes) : throw Problem(answer, bytes);
            }
            catch (Exception trouble) when (trouble is HttpRequestException or IOException or System.Net.Sockets.SocketException || (trouble is OperationCanceledException && !stopping.IsCancellationRequested))
            {
                throw new SiteSilentException(trouble);
            }
        }
    }

    private static T Read<T>(byte[] bytes) => bytes.Length == 0 ? default! : JsonSerializer.Deserialize<T>(bytes, WireJson.Options)!;

    private static SiteRefusedException Problem(HttpResponseMessage answer, byte[] bytes)
    {
        var (code, detail) = ("", "");
        if (answer.Content.Headers.ContentType?.MediaType is "application/problem+json" or "application/json")
        {
            using var problem = JsonDocument.Parse(bytes);
            code = Text(problem.RootElement, "code");
            detail = Text(problem.RootElement, "detail");
            if (problem.RootElement.TryGetProperty("errors", out var errors))
            {
                detail = $"{detail} {errors}";
            }
        }

        var path = answer.RequestMessage?.RequestUri?.AbsolutePath;
        return new SiteRefusedException((int)answer.StatusCode, code, detail.Length > 0 ? detail : $"{(int)answer.StatusCode} from {path}", answer.Headers.RetryAfter?.Delta);
    }

    private static string Text(JsonElement problem, string field) =>
        problem.ValueKind == JsonValueKind.Object && problem.TryGetProperty(field, out var text) && text.ValueKind == JsonValueKind.String ? text.GetString()! : "";
}
