using System.Net;
using System.Text.RegularExpressions;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Result;

public sealed partial class ResultPagesTests(SharedFloor shared) : FloorTest(shared)
{
    [Fact]
    public async Task A_heat_that_was_not_called_has_no_result_yet()
    {
        var answer = await Floor.Visitor().Get("/result/nowhere");

        Assert.Equal((404, "text/html"), (answer.Status, answer.Message.Content.Headers.ContentType?.MediaType));
        Assert.Contains("No result yet", answer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_heat_that_was_called_and_has_no_start_has_no_strips_yet() =>
        Assert.DoesNotContain("strip", await Page(await Floor.Call()), StringComparison.Ordinal);

    [Fact]
    public async Task It_says_provisional_frozen_and_certified()
    {
        var heat = await Floor.Run(lanes: 1);
        Assert.Contains("Provisional: not official", await Page(heat), StringComparison.Ordinal);
        Assert.Contains("Nobody has signed this result yet.", await Page(heat), StringComparison.Ordinal);

        await heat.EndAndFreeze();
        Assert.Contains("Frozen: under review", await Page(heat), StringComparison.Ordinal);

        await heat.Certify();
        var certified = await Page(heat);
        Assert.Contains("<p class=\"status\">Certified</p>", certified, StringComparison.Ordinal);
        Assert.Contains("data-status=\"certified\"", certified, StringComparison.Ordinal);
        Assert.Contains("Signed: Ona, organiser", Plain(certified), StringComparison.Ordinal);
        Assert.Contains("Signed: Hedda, head judge", Plain(certified), StringComparison.Ordinal);

        await heat.Do(Floor.Organiser, "reopen", new { reason = "video" });
        Assert.Contains("Provisional: not official · revision 2", WebUtility.HtmlDecode(await Page(heat)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_has_places_results_rulings_read_back_splits_and_the_head_hash()
    {
        var heat = await Floor.Run(lanes: 3);
        for (var step = 1; step <= 9; step++)
        {
            await heat[2].Finish(step);
        }

        await heat[1].SendOne(heat[1].Done(1));
        await heat[1].SendOne(heat[1].Tap("no-rep", ("step", 2)));
        await heat.Do(Floor.HeadJudge, "penalise", new { lane = 2, addMs = 5000, reason = "left too early" });
        await heat[2].SendOne(heat[2].Tap("score-read-back", ("agreed", true), ("name", "Bo")));
        await heat.Do(Floor.Organiser, "end");

        var page = await Page(heat);

        Assert.Equal("1st|2|Team 2Ann, Bo, Cy|3:05.0|0|+0:05.0 (left too early)|agreed by Bo", Row(page, 2));
        Assert.Equal("2nd|1|Team 1Ann, Bo, Cy|10 of 66 reps time cap|1||", Row(page, 1));
        Assert.Equal("3rd|3|Team 3Ann, Bo, Cy|0 of 66 reps time cap|0||", Row(page, 3));
        Assert.Equal(9, Regex.Count(page, "class=\"when\">") - 2);
        Assert.Contains("tag Bo", page, StringComparison.Ordinal);
        Assert.Equal(["2", "1", "3"], Regex.Matches(page, "data-strip=\"(\\d+)\"").Select(strip => strip.Groups[1].Value));
        Assert.Contains("12 cal row · Ann", Plain(page), StringComparison.Ordinal);
        Assert.Contains("<script type=\"application/json\" id=\"strips\">{\"sheet\":{", page, StringComparison.Ordinal);
        var hash = (await Floor.Visitor().Get($"{heat.Path}/result")).Json.GetProperty("headHash").GetString();
        Assert.Contains($"Ledger: {(await heat.Frame()).SignedHead} entries, head <code>{hash}</code>", page, StringComparison.Ordinal);
    }

    private async Task<string> Page(TestHeat heat) => (await Floor.Visitor().Get($"/result/{heat.Id}")).Fine().Text;

    private static string Row(string page, int lane) => string.Join("|", Cell()
        .Matches(Regex.Match(page, $"<tr data-lane=\"{lane}\">.*?</tr>", RegexOptions.Singleline).Value).Select(cell => Plain(cell.Groups[1].Value)));

    private static string Plain(string html) => Spaces().Replace(WebUtility.HtmlDecode(Tag().Replace(html, "")), " ").Trim();

    [GeneratedRegex("<td[^>]*>(.*?)</td>", RegexOptions.Singleline)]
    private static partial Regex Cell();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex("\\s+")]
    private static partial Regex Spaces();
}
