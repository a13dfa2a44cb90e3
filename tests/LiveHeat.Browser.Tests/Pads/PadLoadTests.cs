using System.Collections.Concurrent;
using System.Text.Json;
using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Pages;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pads;

/// <summary>What a judge's phone has to fetch before it can record, over the slowest network of a hall.</summary>
public sealed class PadLoadTests(DemoHall hall) : HallTest<DemoHall>(hall)
{
    /// <summary>Of the demo's programme as it is; less would not be what a phone has to fetch in a hall.</summary>
    private const int LeastOfProgram = 1_500;

    private const int MostBytes = 40 * 1024;

    /// <summary>With the own lane's sheet, the heat's frame and the answers to joining.</summary>
    private const int MostToConfirm = 43 * 1024;

    /// <summary>With the sounds of the count-down and the answers to the seat.</summary>
    private const int MostToTap = 46 * 1024;

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    [InlineData("fr")]
    [InlineData("de")]
    public async Task The_pad_from_cold_is_at_most_40_kB_of_compressed_responses_and_one_page(string language)
    {
        var page = await Page(390, 844, phone: true, locale: language);
        var load = await Load.Listen(page);

        await page.GotoAsync(new Uri(Hall.Site, "pad/").ToString());
        await Expect(page.Locator("#pad")).ToHaveAttributeAsync("data-view", "join");
        await page.WaitForLoadStateAsync(LoadState.NetworkIdle);

        var files = load.Files();
        Assert.Contains("/pad/pad.js", files.Keys);
        Assert.Contains("/pad/", files.Keys);
        Assert.Contains("/api/program", files.Keys);
        Assert.Contains($"/floor/words/pad.{language}.json", files.Keys);
        Assert.InRange((await Hall.Organiser.Get("/api/program")).Text.Length, LeastOfProgram, int.MaxValue);
        load.IsAtMost(MostBytes, "join");
    }

    /// <summary>Of a lane among eight, as the demo's first heat has them: to the question whether this is the lane, and to the first tap on the ledger.</summary>
    [Fact]
    public async Task What_the_lanes_judge_needs_to_the_first_tap_is_the_own_lane_s_and_nothing_of_later_views()
    {
        var heat = new HallHeat(Hall, "h1", "");
        await heat.Do("call");
        var sheet = (await heat.Sheet()).Lanes;
        Assert.Equal(8, sheet.Count);
        var lane = sheet[4].Lane.Value;
        var page = await Page(390, 844, phone: true);
        var load = await Load.Listen(page);
        var phone = new JudgePhone(page, Hall.Site);
        await phone.Join(await Hall.CodeOf(lane), "Mara");
        await phone.IsAt("confirm");
        await page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        load.IsAtMost(MostToConfirm, "confirm");
        Assert.DoesNotContain(load.Files().Keys, path => path.StartsWith("/floor/sounds/", StringComparison.Ordinal));

        await phone.GetReady();
        await heat.RunsSince(60_000);
        await phone.IsAt("heat");
        Assert.DoesNotContain(load.Files().Keys, path => path is "/pad/views/finish.js" or "/pad/views/timer.js" or "/pad/views/standard.js");
        load.IsAtMost(MostToTap, "first tap");
        await phone.Record("step-done", 1);
        await phone.IsAllSafe();
        await heat.LedgerHas(lane, "step-done 1");
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

    /// <summary>The compressed answers that a page fetched, headers and all.</summary>
    private sealed class Load
    {
        private readonly ConcurrentDictionary<string, string> names = [];
        private readonly ConcurrentDictionary<string, double> sizes = [];

        public static async Task<Load> Listen(IPage page)
        {
            var load = new Load();
            var cdp = await page.Context.NewCDPSessionAsync(page);
            cdp.Event("Network.requestWillBeSent").OnEvent += (_, sent) => load.Sent(sent!.Value);
            cdp.Event("Network.loadingFinished").OnEvent += (_, done) => load.sizes[done!.Value.GetProperty("requestId").GetString()!] = done.Value.GetProperty("encodedDataLength").GetDouble();
            await cdp.SendAsync("Network.enable");
            return load;
        }

        /// <summary>What phone.js lays by for a reload without network is on nobody's way to a tap.</summary>
        private void Sent(JsonElement sent)
        {
            if (!sent.GetProperty("initiator").TryGetProperty("stack", out var stack) || !stack.ToString().Contains("/pad/phone.js", StringComparison.Ordinal))
            {
                names[sent.GetProperty("requestId").GetString()!] = sent.GetProperty("request").GetProperty("url").GetString()!;
            }
        }

        /// <summary>The page's own, once each.</summary>
        public Dictionary<string, double> Files() =>
            sizes.Where(one => names.ContainsKey(one.Key)).GroupBy(one => new Uri(names[one.Key]).AbsolutePath).ToDictionary(group => group.Key, group => group.Max(one => one.Value));

        public void IsAtMost(int bytes, string until)
        {
            var files = Files();
            var told = string.Join(Environment.NewLine, files.OrderByDescending(file => file.Value).Select(file => $"{file.Value,8:0} {file.Key}"));
            Assert.True(files.Values.Sum() <= bytes, $"{files.Values.Sum():0} bytes to {until}, {bytes} are allowed:{Environment.NewLine}{told}");
        }
    }
}
