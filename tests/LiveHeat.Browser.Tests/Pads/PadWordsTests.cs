using System.Text.Json;
using System.Text.RegularExpressions;
using LiveHeat.Browser.Floor;
using LiveHeat.Browser.Halls;

namespace LiveHeat.Browser.Pads;

/// <summary>The pad's words are files that a translator edits: all of them the same, and none left in the code.</summary>
public sealed partial class PadWordsTests(Hall hall) : ModuleTest(hall)
{
    private static readonly string[] Languages = ["en", "es", "fr", "de"];

    /// <summary>Words that a floor in Spain, France or Germany says as an English one does.</summary>
    private static readonly string[] Same = ["OK", "GO", "No-rep", "no-rep {fault}", "standard", "score {n}", "{seconds} s"];

    [Fact]
    public async Task All_languages_have_the_same_keys_and_places_and_nothing_English_is_left()
    {
        var english = await Table("en");
        var faults = new List<string>();
        foreach (var language in Languages.Skip(1))
        {
            var table = await Table(language);
            faults.AddRange(english.Keys.Except(table.Keys).Select(key => $"{language}: {key} is missing"));
            faults.AddRange(table.Keys.Except(english.Keys).Select(key => $"{language}: {key} is not in en"));
            faults.AddRange(table.Where(entry => english.TryGetValue(entry.Key, out var sentence) && Places(sentence) != Places(entry.Value)).Select(entry => $"{language}: {entry.Key} has other places"));
            faults.AddRange(table.Where(entry => Letters().IsMatch(Place().Replace(entry.Value, "")) && english.GetValueOrDefault(entry.Key) == entry.Value && !Same.Contains(entry.Value)).Select(entry => $"{language}: {entry.Key} is English: {entry.Value}"));
        }

        Assert.Empty(faults);
        Assert.True(english.Count > 200);
    }

    /// <summary>Counts from 0 to 999, which are all that a lane has; the forms are those of CLDR as the browser has them.</summary>
    [Fact]
    public async Task Whatever_counts_has_all_forms_of_its_language_and_says_its_number()
    {
        foreach (var language in Languages)
        {
            var table = await Table(language);
            var forms = await Run<string[]>([], "([], language) => [...new Set(Array.from({ length: 1_000 }, (_, n) => new Intl.PluralRules(language).select(n)))]", language);
            var counted = table.Keys.Where(key => key.EndsWith(".other", StringComparison.Ordinal)).Select(key => key[..^".other".Length]).ToList();
            Assert.True(counted.Count > 5);
            Assert.Empty(counted.SelectMany(key => forms.Select(form => $"{key}.{form}")).Except(table.Keys).Select(key => $"{language}: {key}"));
            Assert.Empty(table.Keys.Where(key => key.EndsWith(".one", StringComparison.Ordinal)).Select(key => key[..^".one".Length]).Except(counted));
            Assert.Empty(counted.SelectMany(key => new[] { $"{key}.one", $"{key}.other" }).Where(key => !table[key].Contains("{n}", StringComparison.Ordinal)).Select(key => $"{language}: {key}"));
        }
    }

    /// <summary>With every sentence of the file in brackets, nothing on the pad stands outside brackets but names, numbers and signs.</summary>
    [Fact]
    public async Task Every_word_on_the_pad_comes_from_the_file()
    {
        var bracketed = (await Table("en")).ToDictionary(entry => entry.Key, entry => $"⟦{entry.Value}⟧");
        var page = await Page(390, 844, phone: true, inReach: true);
        await page.RouteAsync("**/floor/words/pad.en.json", route => route.FulfillAsync(new() { Body = JsonSerializer.Serialize(bracketed), ContentType = "application/json" }));
        var stage = new PadStage(page);
        await stage.Begin(Hall.Site);
        string[] data =
        [
            "synchronised dumbbell snatches over the box", "heaviest single clean and jerk", "row", "lift", "the line", "attempt", "tag:", " to ", "Heat", "Breakwater Relays", "Open", "Mara", "Wilhelmina-Charlotte", "Hedda",
            "Head did not touch the floor", "Not synchronised with the partner", "Box stepped on", "A head of the dumbbell stayed above the floor.", "A foot stood on the box.", "Handle to the chain guard.",
            "Both dumbbells on the floor, the athletes face each other over the box.", "Locked out overhead, hips and knees open, both at the same moment.", "One unbroken pull from the floor to the lock-out.",
            "The free hand touches neither the body nor the dumbbell.", "Either arm; changing hands below the hips.", "Stop on pain or dizziness; put the dumbbell down, do not drop it on the box.", PadStage.Team, .. PadStage.Athletes,
        ];
        var faults = new List<string>();
        var bracketsSeen = 0;
        foreach (var scene in await stage.Scenes())
        {
            await stage.Show(scene);
            foreach (var text in await page.EvaluateAsync<string[]>(Texts))
            {
                bracketsSeen += text.Contains('⟦', StringComparison.Ordinal) ? 1 : 0;
                if (Letters().IsMatch(Units().Replace(Outside(text, data), " ")))
                {
                    faults.Add($"{scene}: {text}");
                }
            }
        }

        Assert.Empty(faults.Distinct());
        Assert.True(bracketsSeen > 300);
    }

    private const string Texts = """
        () => {
          const all = [document.title], walker = document.createTreeWalker(document.getElementById('pad'), NodeFilter.SHOW_TEXT, node => node.parentElement.tagName === 'STYLE' ? 2 : 1);
          for (let node = walker.nextNode(); node; node = walker.nextNode()) all.push(node.textContent);
          for (const one of document.querySelectorAll('[aria-label], [placeholder], [title], [alt]')) all.push(...['aria-label', 'placeholder', 'title', 'alt'].map(name => one.getAttribute(name) ?? ''));
          return all;
        }
        """;

    private async Task<Dictionary<string, string>> Table(string language) =>
        JsonSerializer.Deserialize<Dictionary<string, string>>((await Hall.Organiser.Get($"/floor/words/pad.{language}.json")).Text)!;

    private static string Places(string sentence) => string.Join(' ', Place().Matches(sentence).Select(place => place.Value).Distinct().Order(StringComparer.Ordinal));

    private static string Outside(string text, string[] data)
    {
        for (var before = ""; before != text;)
        {
            before = text;
            text = Bracketed().Replace(text, " ");
        }

        return data.OrderByDescending(name => name.Length).Aggregate(text, (rest, name) => rest.Replace(name, " ", StringComparison.Ordinal));
    }

    [GeneratedRegex(@"\{\w+\}")]
    private static partial Regex Place();

    [GeneratedRegex("⟦[^⟦⟧]*⟧")]
    private static partial Regex Bracketed();

    [GeneratedRegex(@"\p{L}")]
    private static partial Regex Letters();

    [GeneratedRegex(@"\b(kg|cal|m)\b")]
    private static partial Regex Units();
}
