using System.Text.Json;
using System.Text.RegularExpressions;
using LiveHeat.Browser.Floor;
using LiveHeat.Browser.Halls;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Boards;

/// <summary>The board's words are files that a translator edits: all of them the same, and none left in the code.</summary>
public sealed partial class BoardWordsTests(Hall hall) : ModuleTest(hall)
{
    private static readonly string[] Languages = ["en", "es", "fr", "de"];

    [Fact]
    public async Task All_languages_have_the_same_keys_and_the_same_places()
    {
        var tables = new Dictionary<string, Dictionary<string, string>>();
        foreach (var language in Languages)
        {
            tables[language] = await Table(language);
        }

        var faults = new List<string>();
        foreach (var (language, table) in tables)
        {
            faults.AddRange(tables["en"].Keys.Except(table.Keys).Select(key => $"{language}: {key} is missing"));
            faults.AddRange(table.Keys.Except(tables["en"].Keys).Select(key => $"{language}: {key} is not in en"));
            faults.AddRange(table.Where(entry => string.IsNullOrWhiteSpace(entry.Value)).Select(entry => $"{language}: {entry.Key} is empty"));
            faults.AddRange(table.Where(entry => tables["en"].TryGetValue(entry.Key, out var english) && Places(english) != Places(entry.Value)).Select(entry => $"{language}: {entry.Key} has other places"));
        }

        Assert.Empty(faults);
        Assert.True(tables["en"].Count > 80);
        Assert.All(Languages.Skip(1), language => Assert.True(tables["en"].Count(entry => tables[language][entry.Key] == entry.Value) < 20, $"{language} is hardly translated"));
    }

    /// <summary>With every sentence of the file in brackets, nothing on the board stands outside brackets but names, numbers and signs.</summary>
    [Fact]
    public async Task Every_word_on_the_board_comes_from_the_file()
    {
        var bracketed = (await Table("en")).ToDictionary(entry => entry.Key, entry => $"⟦{entry.Value}⟧");
        var page = await Page(1920, 1080, inReach: true);
        await page.RouteAsync("**/floor/words/board.en.json", route => route.FulfillAsync(new() { Body = JsonSerializer.Serialize(bracketed), ContentType = "application/json" }));
        var stage = new BoardStage(page);
        await stage.Begin(Hall.Site, 10, mixed: true);
        string[] data = [.. BoardStage.ShortNames, .. BoardStage.ShortAthletes, "Breakwater Relays", "Heat", "Low Tide", "8 rounds, one each in turn", "wall balls", "row", "finish line", "Open", "Masters 45+"];
        var faults = new List<string>();
        var bracketsSeen = 0;
        foreach (var scene in await stage.Scenes())
        {
            await stage.Show(scene);
            foreach (var text in await page.EvaluateAsync<string[]>("() => { const all = []; const walker = document.createTreeWalker(document.getElementById('board'), NodeFilter.SHOW_TEXT); for (let node = walker.nextNode(); node; node = walker.nextNode()) all.push(node.textContent); return all; }"))
            {
                bracketsSeen += text.Contains('⟦', StringComparison.Ordinal) ? 1 : 0;
                if (scene != "message" && Letters().IsMatch(Outside(text, data)))
                {
                    faults.Add($"{scene}: {text}");
                }
            }
        }

        Assert.Empty(faults.Distinct());
        Assert.True(bracketsSeen > 100);
    }

    [Theory]
    [InlineData("de", "noch 11:20", "1.")]
    [InlineData("fr", "reste 11:20", "1er")]
    [InlineData("es", "quedan 11:20", "1.º")]
    public async Task The_board_speaks_the_language_of_its_address(string language, string left, string first)
    {
        var heat = await Hall.Call(QuickWork.Long(), new Entrant(1, "Harbour Anvils", "Joss", "Ilka"), new Entrant(2, "Tin Whistle Four", "Ravi", "Ansel"));
        await heat.RunsSince(30_000);
        await heat.Add(1, 1, 20_000);
        var page = await Page(1920, 1080);
        var asked = new List<string>();
        page.Request += (_, request) => asked.Add(request.Url);
        await page.GotoAsync($"{Hall.Site}board/{heat.Id}?lang={language}");
        await Expect(page.Locator("html")).ToHaveAttributeAsync("lang", language);
        await Expect(page.Locator(".place").First).ToHaveTextAsync(first);
        await Expect(page.Locator(".time-left")).ToHaveTextAsync(new Regex($"^{left[..left.IndexOf(' ', StringComparison.Ordinal)]} 1[01]:\\d\\d$"));
        await Expect(page.Locator(".clock")).ToHaveTextAsync(new Regex(",\\d$"));
        Assert.DoesNotContain(asked, url => url.Contains("/floor/words/board", StringComparison.Ordinal));        // the page carried them
    }

    [Theory]
    [InlineData("de-AT", "en", "de")]
    [InlineData(null, "fr", "fr")]
    [InlineData("tlh", "es-MX", "es")]
    [InlineData(null, "", "en")]
    public async Task A_language_is_the_address_s_then_the_page_s_then_English(string? asked, string page, string language) =>
        Assert.Equal(language, await Run<string>(["/floor/words/words.js"], "([words], [asked, page]) => words.languageOf(asked, page)", new[] { asked, page }));

    [Fact]
    public async Task A_language_without_a_form_for_a_count_uses_the_other_and_a_missing_sentence_is_told()
    {
        var told = await Run<string[]>(["/floor/words/words.js"], """
            ([{ Words }]) => {
              const words = new Words({ 'reps.one': '{count} rep', 'reps.other': '{count} reps', 'place.other': '.' }, 'fr');
              let missing = '';
              try { words.say('nothing'); } catch (error) { missing = error.message; }
              return [words.count('reps', 1), words.count('reps', 2_000_000), words.ordinal(1), missing];
            }
            """);

        Assert.Equal(["1 rep", "2 000 000 reps", ".", "There are no words for nothing."], told.Select(text => Spaces().Replace(text, " ")));
    }

    private async Task<Dictionary<string, string>> Table(string language) =>
        JsonSerializer.Deserialize<Dictionary<string, string>>((await Hall.Organiser.Get($"/floor/words/board.{language}.json")).Text)!;

    private static string Places(string sentence) => string.Join(' ', Place().Matches(sentence).Select(place => place.Value).Distinct().Order(StringComparer.Ordinal));

    private static string Outside(string text, string[] data)
    {
        for (var before = ""; before != text;)
        {
            before = text;
            text = Bracketed().Replace(text, " ");
        }

        var cut = text.IndexOf('⟦', StringComparison.Ordinal);                // a text that was made shorter lost its end
        text = cut < 0 ? text : text[..cut];
        return data.Aggregate(text, (rest, name) => rest.Replace(name, " ", StringComparison.Ordinal));
    }

    [GeneratedRegex(@"\{\w+\}")]
    private static partial Regex Place();

    [GeneratedRegex("⟦[^⟦⟧]*⟧")]
    private static partial Regex Bracketed();

    [GeneratedRegex(@"\p{L}")]
    private static partial Regex Letters();

    [GeneratedRegex(@"\s")]
    private static partial Regex Spaces();
}
