using System.Text.RegularExpressions;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Live;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Testing;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Language;

/// <summary>The server's own pages, asked for in each language.</summary>
public sealed class PagesInLanguagesTests(SharedFloor shared) : FloorTest(shared)
{
    [Theory]
    [InlineData("es", "Provisional: no oficial", "3:05,0", "1.º", "10 de 66 reps. tiempo límite", "1 no-rep", "+0:05,0 (pasta)", "relevo: Bo", "aceptado por Bo")]
    [InlineData("fr", "Provisoire : non officiel", "3:05,0", "1er", "10 rép. sur 66 temps limite", "1 no-rep", "+0:05,0 (pasta)", "relais : Bo", "accepté par Bo")]
    [InlineData("de", "Vorläufig: nicht offiziell", "3:05,0", "1.", "10 von 66 Wdh. Zeitlimit", "1 No-Rep", "+0:05,0 (pasta)", "Wechsel: Bo", "anerkannt von Bo")]
    public async Task The_result_is_told_in_the_language(string language, params string[] told)
    {
        var heat = await Ended();

        var page = await Page($"/result/{heat.Id}", language);

        Assert.All(told, words => Assert.Contains(words, EnglishLeft.Plain(page), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("es", "Clasificación general", "1 p.", "3:05,0")]
    [InlineData("fr", "Classement général", "1 pt", "3:05,0")]
    [InlineData("de", "Gesamtwertung", "1 P.", "3:05,0")]
    public async Task The_standings_are_told_in_the_language(string language, params string[] told)
    {
        await Ended();

        var page = await Page("/standings", language);

        Assert.All(told, words => Assert.Contains(words, EnglishLeft.Plain(page), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("es", "El personal médico puede parar a cualquiera", "3 rondas de", "Orden de relevos", "Una raya en una casilla", "relevo: Bo")]
    [InlineData("fr", "Le personnel médical peut arrêter n’importe qui", "3 tours de", "Ordre des relais", "Un trait dans une case", "relais : Bo")]
    [InlineData("de", "Medizinisches Personal darf jederzeit jeden stoppen", "3 Runden", "Staffelfolge", "Ein Strich durch ein Kästchen", "Wechsel: Bo")]
    public async Task The_briefing_the_slides_and_the_cards_are_told_in_the_language(string language, string caution, string rounds, string order, string mark, string tag)
    {
        var heat = await Floor.Plan(2);
        var (briefing, slides, cards) = (await Page($"/briefing/{heat.Id}", language), await Page($"/briefing/{heat.Id}?slides", language), await Page($"/cards/{heat.Id}", language));

        Assert.All(
            [(briefing, caution), (briefing, rounds), (briefing, order), (slides, caution), (slides, rounds), (slides, order), (cards, caution), (cards, mark), (cards, tag)],
            one => Assert.Contains(one.Item2, EnglishLeft.Plain(one.Item1), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("/result/nowhere")]
    [InlineData("/briefing/nowhere")]
    [InlineData("/briefing/nowhere?slides")]
    [InlineData("/cards/nowhere")]
    public async Task A_page_about_nothing_is_told_in_the_language_too(string address)
    {
        foreach (var language in Tongue.All.Skip(1))
        {
            await Page(address, language, fine: false);
        }
    }

    [Fact]
    public async Task The_address_wins_over_the_browser_and_the_first_known_wish_of_the_browser_counts()
    {
        async Task<string> Spoken(string address, string wishes) => Regex.Match((await Floor.Visitor().Get(address, ("Accept-Language", wishes))).Text, "<html lang=\"(\\w+)\"").Groups[1].Value;

        Assert.Equal(["fr", "de", "es", "en", "en"], [
            await Spoken("/standings?lang=fr", "de"), await Spoken("/standings", "pt, de-CH;q=0.9, en;q=0.8"), await Spoken("/standings?lang=xx", "es-MX"), await Spoken("/standings", "pt"),
            await Spoken("/standings", "de;q=0, pt")]);
    }

    [Fact]
    public async Task Spectators_choose_a_language_and_the_rest_of_the_address_stays()
    {
        var heat = await Ended();

        foreach (var address in new[] { $"/result/{heat.Id}", "/standings" })
        {
            var page = (await Floor.Visitor().Get($"{address}?a=1&lang=fr&b=%26", ("Accept-Language", "de"))).Fine().Text;
            var choice = Regex.Matches(page, "<a href=\"([^\"]*)\" lang=\"(\\w+)\" hreflang=\"\\w+\"( aria-current=\"true\")?>([^<]*)</a>");
            Assert.Equal(["en:English", "es:Español", "fr:Français", "de:Deutsch"], choice.Select(one => $"{one.Groups[2].Value}:{System.Net.WebUtility.HtmlDecode(one.Groups[4].Value)}"));
            Assert.All(choice, one => Assert.Equal($"?a=1&b=%26&lang={one.Groups[2].Value}", System.Net.WebUtility.HtmlDecode(one.Groups[1].Value)));
            Assert.Equal("fr", Assert.Single(choice, one => one.Groups[3].Success).Groups[2].Value);
        }
    }

    [Fact]
    public async Task A_page_leads_on_in_the_language_that_its_address_asked_for()
    {
        var heat = await Floor.Plan(1);

        Assert.Contains($"href=\"/briefing/{heat.Id}?lang=es\"", (await Floor.Visitor().Get($"/result/{heat.Id}?lang=es")).Text, StringComparison.Ordinal);
        Assert.Contains($"href=\"/briefing/{heat.Id}\"", (await Floor.Visitor().Get($"/result/{heat.Id}", ("Accept-Language", "es"))).Text, StringComparison.Ordinal);
        Assert.Contains("href=\"?slides&amp;lang=es\"", (await Floor.Visitor().Get($"/briefing/{heat.Id}?lang=es")).Text, StringComparison.Ordinal);
    }

    /// <summary>A shared cache must not give one viewer's language to another; files that are the same for all stay apart from languages.</summary>
    [Fact]
    public async Task What_depends_on_the_language_says_so_to_caches()
    {
        var heat = await Floor.Run(lanes: 1);
        async Task<bool> Varies(string address) => (await Floor.Visitor().Get(address)).Message.Headers.Vary.Contains("Accept-Language");

        Assert.All(new[] { $"/result/{heat.Id}", "/standings", $"{heat.Path}/sheet", $"{heat.Path}/result", $"/api/live/{heat.Id}", $"/board/{heat.Id}" }, address => Assert.True(Varies(address).Result, address));
        Assert.All(new[] { "/floor/board/board.css", "/floor/hub.js", "/pad/", "/screens/" }, address => Assert.False(Varies(address).Result, address));
    }

    [Fact]
    public async Task Labels_of_sheets_and_of_the_open_address_are_told_in_the_language_asked_for()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat[1].Finish(1);
        await heat[1].Finish(2);
        async Task<string> Tag(string language) => (await Floor.Visitor().Get($"{heat.Path}/sheet", ("Accept-Language", language))).Read<Sheet>().Lanes[0].Steps[2].Label;
        async Task<Reply> Live(string language) => (await Floor.Visitor().Get($"/api/live/{heat.Id}", ("Accept-Language", language))).Fine();
        var (german, english) = (await Live("de"), await Live("en"));

        Assert.Equal(["Wechsel: Bo", "tag Bo", "relais : Bo"], [await Tag("de"), await Tag("en"), await Tag("fr")]);
        Assert.Equal(("Abklatschen", "tag"), (german.Read<LiveHeatFrame>().Lanes[0].Doing, english.Read<LiveHeatFrame>().Lanes[0].Doing));
        Assert.NotEqual(german.Message.Headers.ETag, english.Message.Headers.ETag);
        Assert.Equal("3 Runden, reihum je eine", (await Floor.Visitor().Get($"{heat.Path}/sheet?lang=de")).Read<Sheet>().Workout.Summary);
    }

    /// <summary>Programs read them: their words do not change with whoever runs the program.</summary>
    [Fact]
    public async Task Files_for_spreadsheets_are_in_English_whoever_asks()
    {
        var heat = await Ended();

        foreach (var address in new[] { $"{heat.Path}/result.csv", $"{heat.Path}/splits.csv", "/api/standings.csv" })
        {
            var (german, english) = ((await Floor.Visitor().Get(address, ("Accept-Language", "de"))).Fine().Text, (await Floor.Visitor().Get(address)).Fine().Text);
            Assert.Equal(english, german);
            Assert.Contains(address.Contains("splits", StringComparison.Ordinal) ? "tag Bo" : "3:05.0", german, StringComparison.Ordinal);
        }
    }

    /// <summary>Lane 2 finished in 3:00 with 5 s to add, lane 1 did ten reps, lane 3 nothing.</summary>
    private async Task<TestHeat> Ended()
    {
        var heat = await Floor.Run(lanes: 3);
        for (var step = 1; step <= 9; step++)
        {
            await heat[2].Finish(step);
        }

        await heat[1].SendOne(heat[1].Done(1));
        await heat[1].SendOne(heat[1].Tap("no-rep", ("step", 2)));
        await heat.Do(Floor.HeadJudge, "penalise", new { lane = 2, addMs = 5000, reason = "pasta" });
        await heat[2].SendOne(heat[2].Tap("score-read-back", ("agreed", true), ("name", "Bo")));
        await heat.Do(Floor.Organiser, "end");
        return heat;
    }

    private async Task<string> Page(string address, string language, bool fine = true)
    {
        var answer = await Floor.Visitor().Get(address, ("Accept-Language", language));
        Assert.Equal(fine ? 200 : 404, answer.Status);
        Assert.Contains($"<html lang=\"{language}\">", answer.Text, StringComparison.Ordinal);
        Assert.Empty(EnglishLeft.On(answer.Text, language, typeof(RequestLanguage).Assembly, typeof(Wording).Assembly));
        return answer.Text;
    }
}
