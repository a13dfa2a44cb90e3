using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;
using LiveHeat.Contracts.Wire;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Board;

public sealed partial class BoardPagesTests(SharedFloor shared) : FloorTest(shared)
{
    private const string Hostile = "</script><b>&\"'<!--";

    [Fact]
    public async Task The_page_shows_lane_team_athletes_and_place_before_any_script_runs()
    {
        var heat = await Floor.Run(lanes: 2);
        await heat[2].Finish(1);

        var answer = (await Floor.Visitor().Get($"/board/{heat.Id}")).Fine();

        Assert.Equal("text/html", answer.Message.Content.Headers.ContentType?.MediaType);
        var rows = Row().Matches(answer.Text).Select(row => string.Join("|", Cell().Matches(row.Value).Select(cell => Plain(cell.Groups[1].Value)))).ToList();
        Assert.Equal(["1|Team 1|Open|Ann, Bo, Cy|2", "2|Team 2|Open|Ann, Bo, Cy|1"], rows);
        Assert.Contains("<title>Heat ", answer.Text, StringComparison.Ordinal);
        Assert.Contains("Breakwater Relays</title>", answer.Text, StringComparison.Ordinal);
        Assert.Contains($"data-follow=\"{heat.Id}\"", answer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_carries_programme_sheet_and_frame_as_they_can_be_asked_for()
    {
        var heat = await Floor.Run(lanes: 2);
        var viewer = Floor.Visitor();

        var state = State((await viewer.Get("/board")).Fine().Text);

        Assert.Equal((await viewer.Get($"{heat.Path}/frame")).Text, state.GetProperty("frame").GetRawText());
        Assert.Equal((await viewer.Get($"{heat.Path}/sheet")).Text, state.GetProperty("sheet").GetRawText());
        Assert.Equal((await viewer.Get("/api/program")).Text, state.GetProperty("program").GetRawText());
    }

    [Fact]
    public async Task The_first_address_and_the_board_without_a_name_follow_the_heat_called_last()
    {
        await Floor.Call();
        var last = await Floor.Call();

        var first = await Floor.Visitor().Get("/");
        var answer = (await Floor.Visitor().Get("/board")).Fine();

        Assert.Equal((302, "/board"), (first.Status, first.Message.Headers.Location?.ToString()));
        Assert.Contains("data-follow=\"current\"", answer.Text, StringComparison.Ordinal);
        Assert.Equal(last.Id, State(answer.Text).GetProperty("frame").GetProperty("heat").GetString());
    }

    [Theory]
    [InlineData("", null, "en", "Lane")]
    [InlineData("?lang=de", null, "de", "Bahn")]
    [InlineData("", "fr-CH, fr;q=0.9, en;q=0.8", "fr", "Couloir")]
    [InlineData("", "tlh, en;q=0.2, es;q=0.7", "es", "Calle")]
    [InlineData("?lang=tlh", "de;q=0", "en", "Lane")]
    public async Task It_speaks_the_language_of_its_address_or_else_of_the_browser_and_carries_the_words(string query, string? accept, string language, string lane)
    {
        var heat = await Floor.Run(lanes: 1);
        foreach (var page in new[] { "board", "overlay" })
        {
            var text = (await Floor.Visitor().Get($"/{page}/{heat.Id}{query}", accept is null ? [] : [("Accept-Language", accept)])).Fine().Text;

            Assert.Contains($"<html lang=\"{language}\">", text, StringComparison.Ordinal);
            var words = JsonSerializer.Deserialize<Dictionary<string, string>>(WordsScript().Match(text).Groups[1].Value)!;
            Assert.Equal(lane, words["plain.lane"]);
        }
    }

    [Fact]
    public async Task Two_heats_stand_side_by_side_with_the_options_of_the_address()
    {
        var text = (await Floor.Visitor().Get("/board/h1+h2?width=4&seat=25")).Fine().Text;

        Assert.Contains("src=\"/board/h1?width=4&amp;seat=25&amp;side=left\"", text, StringComparison.Ordinal);
        Assert.Contains("src=\"/board/h2?width=4&amp;seat=25&amp;side=right\"", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nowhere")]
    [InlineData("%3Cscript%3E%22onload=alert(1)")]
    public async Task A_heat_that_was_not_called_is_waited_for(string heat)
    {
        var answer = (await Floor.Visitor().Get($"/board/{heat}")).Fine();

        Assert.Contains("No heat has been called yet.", answer.Text, StringComparison.Ordinal);
        Assert.Equal((JsonValueKind.Null, JsonValueKind.Null), (State(answer.Text).GetProperty("frame").ValueKind, State(answer.Text).GetProperty("sheet").ValueKind));
        Assert.DoesNotContain("<script>", answer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_hostile_name_stays_a_name()
    {
        (await Floor.Organiser.Put("/api/setup/teams/evil", new { id = "evil", name = Hostile, division = "open", athletes = new[] { Hostile, "Bo", "Cy" } })).Fine();
        (await Floor.Organiser.Put("/api/setup/heats/evil", new { id = "evil", number = 900, title = Hostile, workout = "w1", lanes = new[] { new { lane = 1, team = "evil" } } })).Fine();
        await new TestHeat(Floor, "evil").Do(Floor.Organiser, "call");

        var text = (await Floor.Visitor().Get("/board/evil")).Fine().Text;

        Assert.Equal(Hostile, State(text).GetProperty("sheet").GetProperty("lanes")[0].GetProperty("name").GetString());
        Assert.Equal(3, Regex.Count(text, "</script>", RegexOptions.IgnoreCase));
        Assert.DoesNotContain("<b>", text, StringComparison.Ordinal);
        Assert.DoesNotContain("<!--", text, StringComparison.Ordinal);
        Assert.Contains($"<bdi>{WebUtility.HtmlEncode(Hostile).Replace("&#39;", "&#x27;", StringComparison.Ordinal)}</bdi>", text, StringComparison.Ordinal);
        var result = (await Floor.Visitor().Get("/result/evil")).Fine().Text;
        Assert.DoesNotContain("<b>", result, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", result, StringComparison.Ordinal);
    }

    private static JsonElement State(string page) => JsonSerializer.Deserialize<JsonElement>(StateScript().Match(page).Groups[1].Value, WireJson.Options);

    private static string Plain(string html) => WebUtility.HtmlDecode(Tag().Replace(html, "")).Trim();

    [GeneratedRegex("<script type=\"application/json\" id=\"state\">(.*?)</script>", RegexOptions.Singleline)]
    private static partial Regex StateScript();

    [GeneratedRegex("<script type=\"application/json\" id=\"words\"[^>]*>(.*?)</script>", RegexOptions.Singleline)]
    private static partial Regex WordsScript();

    [GeneratedRegex("<tr>\\s*<td>.*?</tr>", RegexOptions.Singleline)]
    private static partial Regex Row();

    [GeneratedRegex("<td>(.*?)</td>", RegexOptions.Singleline)]
    private static partial Regex Cell();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();
}
