using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.RegularExpressions;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Heats;

/// <summary>The OpenAPI document against docs/wire.md.</summary>
public sealed partial class OpenApiTests(SharedApp shared) : IClassFixture<SharedApp>
{
    private static JsonElement? document;

    [Theory]
    [InlineData("post", "/api/heats/{heat}/taps")]
    [InlineData("post", "/api/heats/{heat}/commands")]
    [InlineData("get", "/api/heats/{heat}/sheet")]
    [InlineData("get", "/api/heats/{heat}/frame")]
    [InlineData("get", "/api/heats/{heat}/facts")]
    [InlineData("get", "/api/heats/{heat}/lanes/{lane}/facts")]
    [InlineData("get", "/api/heats/{heat}/result")]
    [InlineData("get", "/api/heats/{heat}/replay")]
    [InlineData("get", "/api/heats/{heat}/export")]
    [InlineData("get", "/api/live/{heat}")]
    [InlineData("get", "/api/program")]
    [InlineData("get", "/api/pad")]
    [InlineData("get", "/api/library")]
    [InlineData("get", "/api/me")]
    [InlineData("get", "/health")]
    [InlineData("post", "/api/sign-in")]
    [InlineData("post", "/api/join")]
    [InlineData("post", "/api/sign-out")]
    [InlineData("post", "/api/codes")]
    [InlineData("get", "/api/setup")]
    [InlineData("put", "/api/setup/competition")]
    [InlineData("put", "/api/setup/divisions/{id}")]
    [InlineData("delete", "/api/setup/divisions/{id}")]
    [InlineData("put", "/api/setup/workouts/{id}")]
    [InlineData("delete", "/api/setup/workouts/{id}")]
    [InlineData("put", "/api/setup/teams/{id}")]
    [InlineData("delete", "/api/setup/teams/{id}")]
    [InlineData("get", "/api/setup/movements/{id}")]
    [InlineData("put", "/api/setup/movements/{id}")]
    [InlineData("delete", "/api/setup/movements/{id}")]
    [InlineData("put", "/api/setup/movements/{id}/picture")]
    [InlineData("get", "/api/setup/movements/{id}/picture")]
    [InlineData("put", "/api/setup/heats/{id}")]
    [InlineData("delete", "/api/setup/heats/{id}")]
    public async Task An_endpoint_is_described(string method, string path)
    {
        Assert.True((await Paths()).TryGetProperty(path, out var address) && address.TryGetProperty(method, out _), $"{method} {path} is missing.");
    }

    [Fact]
    public async Task Every_address_that_the_contract_names_is_described()
    {
        var described = (await Paths()).EnumerateObject().Select(path => path.Name).ToHashSet();
        var named = Address().Matches(await File.ReadAllTextAsync(Contract())).Select(match => match.Value).ToHashSet();

        Assert.True(named.Count > 12, "The contract was to name addresses.");
        Assert.Subset(described, named);
    }

    [Fact]
    public async Task Nothing_else_is_offered_that_the_contract_does_not_name()
    {
        var described = (await Paths()).EnumerateObject().Select(path => path.Name);
        var contract = await File.ReadAllTextAsync(Contract());

        Assert.All(described, path => Assert.Contains(path.Replace("/api/setup/", "/", StringComparison.Ordinal), contract, StringComparison.Ordinal));
    }

    /// <summary>Made once: it takes the server a while.</summary>
    private async Task<JsonElement> Paths()
    {
        using var visitor = new Visitor(shared.App);
        document ??= (await visitor.Get("/openapi/v1.json")).Fine().Json;
        return document.Value.GetProperty("paths");
    }

    private static string Contract([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "docs", "wire.md"));

    [GeneratedRegex("/api/[a-z{}/.-]*[a-z}]")]
    private static partial Regex Address();
}
