using System.Net;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Files;

public sealed class FloorScriptsTests(SharedApp shared) : IClassFixture<SharedApp>
{
    [Fact]
    public void Comments_and_indents_go_and_all_else_stays() => Assert.Equal(
        "const a = 1;\nconst url = 'http://x', two = 'a // b'; // it's kept\nexport function b() {\nreturn a;\n}\n/** @type {any} */ let c;\nlet d;\n",
        FloorScripts.WithoutComments("// What it is for.\nconst a = 1;   // gone\nconst url = 'http://x', two = 'a // b'; // it's kept\n/** Says\n *  more. */\nexport function b() {\n  // why\n  return a;\n}\n/** @type {any} */ let c;\n/** Last. */\nlet d;\n"));

    [Fact]
    public async Task A_phone_gets_the_script_small_and_asks_again_by_its_tag()
    {
        using var client = shared.App.CreateClient();
        using var ask = new HttpRequestMessage(HttpMethod.Get, "/pad/steps.js");
        ask.Headers.AcceptEncoding.ParseAdd("gzip, br");
        using var small = await client.SendAsync(ask);
        using var plain = await client.GetAsync("/pad/steps.js");
        using var again = new HttpRequestMessage(HttpMethod.Get, "/pad/steps.js");
        again.Headers.IfNoneMatch.Add(plain.Headers.ETag!);

        Assert.Equal(["br"], small.Content.Headers.ContentEncoding);
        using var unpacked = new System.IO.Compression.BrotliStream(await small.Content.ReadAsStreamAsync(), System.IO.Compression.CompressionMode.Decompress);
        using var reader = new StreamReader(unpacked);
        var text = await reader.ReadToEndAsync();
        Assert.Equal(await plain.Content.ReadAsStringAsync(), text);
        Assert.Contains("export function laneNow", text, StringComparison.Ordinal);
        Assert.DoesNotContain("\n//", text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotModified, (await client.SendAsync(again)).StatusCode);
    }

    [Fact]
    public async Task The_words_of_a_language_come_small_and_as_they_are_written()
    {
        using var client = shared.App.CreateClient();
        using var ask = new HttpRequestMessage(HttpMethod.Get, "/floor/words/pad.de.json");
        ask.Headers.AcceptEncoding.ParseAdd("br");
        using var small = await client.SendAsync(ask);

        Assert.Equal(["br"], small.Content.Headers.ContentEncoding);
        Assert.Equal("application/json", small.Content.Headers.ContentType?.MediaType);
        using var unpacked = new System.IO.Compression.BrotliStream(await small.Content.ReadAsStreamAsync(), System.IO.Compression.CompressionMode.Decompress);
        Assert.True((await System.Text.Json.JsonSerializer.DeserializeAsync<Dictionary<string, string>>(unpacked))!.Count > 200);
        Assert.True(small.Content.Headers.ContentLength < 5_000);
    }
}
