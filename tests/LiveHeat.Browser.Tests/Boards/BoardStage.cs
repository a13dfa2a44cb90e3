using Microsoft.Playwright;

namespace LiveHeat.Browser.Boards;

/// <summary>A board that shows any phase of a made-up heat at once, on a clock that stands (stage.js).</summary>
internal sealed class BoardStage(IPage page)
{
    /// <summary>Long, accented, from right to left, and as wide as letters get.</summary>
    public static readonly string[] LongNames =
    [
        "Die Unermüdlichen von der Hafenstraße 27", "Les Équipières de la Côte d’Émeraude", "אגרופי הנמל הצפוני", "فريق ميناء الشمال الأزرق",
        "Żółte Łódki znad Wielkiej Rzeki Północnej", "WWWWW MMMMM WWWWW MMMMM WWWWW MMMMM", "Þórðarbúð Æskulýðsfélag Norðurlands", "Ærlige Måger fra Sønderøen og omegn",
    ];

    public static readonly string[] ShortNames = ["Harbour Anvils", "Tin Whistle Four", "Quarry Lights", "Moss & Iron", "The Late Ferries", "Copper Kettles", "Kiln Street"];
    public static readonly string[] LongAthletes = ["Maximiliane-Sophie", "עבד אל־רחמן", "Þorgerður", "عبد الرحمن", "Guðbjörg", "François-Xavier"];
    public static readonly string[] ShortAthletes = ["Joss", "Ilka", "Bram", "Edda"];

    private static readonly string Script = Read();

    public IPage Page => page;

    /// <summary>Begins on a page with nothing on it.</summary>
    /// <param name="options">Of the board's address, without the question mark.</param>
    /// <param name="kind">most: as much as can be done until the cap; clock: rounds by the clock; else for time.</param>
    /// <param name="overlay">third or full: what a video mix lays over its picture; null: a board.</param>
    public async Task Begin(Uri site, int lanes, bool longNames = false, bool mixed = false, string options = "", string language = "en", string kind = "time", string? overlay = null)
    {
        await page.GotoAsync($"{site}health?lang={language}");
        var (names, athletes) = longNames ? (LongNames, LongAthletes) : (ShortNames, ShortAthletes);
        await page.EvaluateAsync($"what => ({Script})(what)", new { lanes, names, athletes, mixed, options, kind, overlay });
    }

    /// <summary>The names of all scenes.</summary>
    public Task<string[]> Scenes() => page.EvaluateAsync<string[]>("stage.names");

    /// <summary>Shows a scene.</summary>
    /// <returns>What the board shows: lanes, message, programme or standings.</returns>
    public Task<string> Show(string scene) => page.EvaluateAsync<string>("scene => stage.show(scene)", scene);

    private static string Read()
    {
        using var file = new StreamReader(typeof(BoardStage).Assembly.GetManifestResourceStream("Boards/stage.js")!);
        return file.ReadToEnd().TrimEnd().TrimEnd(';');
    }
}
