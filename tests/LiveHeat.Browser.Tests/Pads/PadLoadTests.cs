using LiveHeat.Browser.Halls;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pads;

/// <summary>What a judge's phone has to fetch before it can record, over the slowest network of a hall.</summary>
public sealed class PadLoadTests(DemoHall hall) : HallTest<DemoHall>(hall)
{
    /// <summary>Of the demo's programme as it is; less would not be what a phone has to fetch in a hall.</summary>
    private const int LeastOfProgram = 1_500;

    private const int MostBytes = 40 * 1024;

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    [InlineData("fr")]
    [InlineData("de")]
    public async Task The_pad_from_cold_is_at_most_40_kB_of_compressed_responses_and_one_page(string language)
    {
        var page = await Page(390, 844, phone: true, locale: language);
        var cdp = await page.Context.NewCDPSessionAsync(page);
        var names = new Dictionary<string, string>();
        var sizes = new Dictionary<string, double>();
        cdp.Event("Network.requestWillBeSent").OnEvent += (_, sent) => names[sent!.Value.GetProperty("requestId").GetString()!] = sent.Value.GetProperty("request").GetProperty("url").GetString()!;
        cdp.Event("Network.loadingFinished").OnEvent += (_, done) => sizes[done!.Value.GetProperty("requestId").GetString()!] = done.Value.GetProperty("encodedDataLength").GetDouble();
        await cdp.SendAsync("Network.enable");

        await page.GotoAsync(new Uri(Hall.Site, "pad/").ToString());
        await Expect(page.Locator("#pad")).ToHaveAttributeAsync("data-view", "join");
        await page.WaitForLoadStateAsync(Microsoft.Playwright.LoadState.NetworkIdle);

        // The page's own files, headers and all, once each: what its service worker keeps of them for later comes from the same responses.
        var files = sizes.Where(one => names.ContainsKey(one.Key)).GroupBy(one => new Uri(names[one.Key]).AbsolutePath).ToDictionary(group => group.Key, group => group.Max(one => one.Value));
        var told = string.Join(Environment.NewLine, files.OrderByDescending(file => file.Value).Select(file => $"{file.Value,8:0} {file.Key}"));
        Assert.Contains("/pad/pad.js", files.Keys);
        Assert.Contains("/pad/", files.Keys);
        Assert.Contains("/api/program", files.Keys);
        Assert.Contains($"/floor/words/pad.{language}.json", files.Keys);
        Assert.InRange((await Hall.Organiser.Get("/api/program")).Text.Length, LeastOfProgram, int.MaxValue);
        Assert.True(files.Values.Sum() <= MostBytes, $"{files.Values.Sum():0} bytes, {MostBytes} are allowed:{Environment.NewLine}{told}");
    }

    [Fact]
    public async Task Every_file_of_the_pad_comes_compressed_and_is_asked_for_again_only_when_it_changed()
    {
        var page = await Page(390, 844, phone: true);
        var plain = new List<string>();
        page.Response += (_, response) =>
        {
            if (new Uri(response.Url).AbsolutePath is var path && Path.GetExtension(path) is ".js" or ".css" or ".json" && !response.Headers.ContainsKey("content-encoding"))
            {
                plain.Add(path);
            }
        };
        await page.GotoAsync(new Uri(Hall.Site, "pad/").ToString());
        await Expect(page.Locator("#pad")).ToHaveAttributeAsync("data-view", "join");
        Assert.Empty(plain);

        using var client = new HttpClient();
        var first = await client.GetAsync(new Uri(Hall.Site, "pad/pad.js"));
        using var again = new HttpRequestMessage(HttpMethod.Get, new Uri(Hall.Site, "pad/pad.js"));
        again.Headers.IfNoneMatch.Add(first.Headers.ETag!);
        Assert.Equal(System.Net.HttpStatusCode.NotModified, (await client.SendAsync(again)).StatusCode);
    }
}
