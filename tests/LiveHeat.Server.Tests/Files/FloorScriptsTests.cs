using System.Net;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Files;

public sealed class FloorScriptsTests(SharedApp shared) : IClassFixture<SharedApp>
{
    [Fact]
    public void Comments_with_lines_of_their_own_go_and_all_else_stays() => Assert.Equal(
        "const a = 1; // kept\nconst url = 'http://x';\nexport function b() {\n  return a;\n}\n/** @type {any} */ let c;\nlet d;\n",
        FloorScripts.WithoutComments("// What it is for.\nconst a = 1; // kept\nconst url = 'http://x';\n/** Says\n *  more. */\nexport function b() {\n  // why\n  return a;\n}\n/** @type {any} */ let c;\n/** Last. */\nlet d;\n"));

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
}
