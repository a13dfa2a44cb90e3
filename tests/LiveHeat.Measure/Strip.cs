using System.Globalization;
using LiveHeat.Testing.Hosting;
using Microsoft.Playwright;

namespace LiveHeat.Measure;

/// <summary>How smoothly the board's strips move: pictures drawn and dropped, by the browser's own trace, beside a page with nothing on it in the same run.</summary>
internal static class Strip
{
    private const string EmptyPage = """
        async ms => {
          const begun = performance.now(), pictures = [];
          while (performance.now() - begun < ms) pictures.push(await new Promise(drawn => requestAnimationFrame(drawn)));
          return pictures;
        }
        """;

    /// <summary>What a picture costs, by the names of the browser's trace. A thread's own processor time: what else the machine does is not in it.</summary>
    private static readonly (string Named, string Told)[] Work =
    [
        ("FireAnimationFrame", "script"), ("UpdateLayoutTree", "style"), ("Layout", "layout"), ("Paint", "paint"), ("Layerize", "layers"), ("RasterTask", "raster"), ("DirectRenderer::DrawFrame", "drawing the layers together"),
    ];

    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome", "/usr/bin/google-chrome-stable"];

    public static async Task<int> Run(string[] args)
    {
        var lanes = Number(args, "--lanes", 20);
        var seconds = Number(args, "--seconds", 20);
        await using var app = new LiveHeatApp();
        var site = app.Open();
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Environment.GetEnvironmentVariable("LIVEHEAT_CHROMIUM") ?? Array.Find(Places, File.Exists),
            Args = ["--no-sandbox"],
        });
        var page = await browser.NewPageAsync(new BrowserNewPageOptions { ViewportSize = new ViewportSize { Width = 1920, Height = 1080 } });
        await page.GotoAsync(new Uri(site, "health").ToString());
        await page.EvaluateAsync<double[]>(EmptyPage, 1000);
        var empty = await Look(browser, page, () => page.EvaluateAsync<double[]>(EmptyPage, seconds * 1000));
        await page.EvaluateAsync($"what => ({Stage()})(what)", new { lanes, names = new[] { "Harbour Anvils", "Tin Whistle Four", "Quarry Lights" }, athletes = new[] { "Joss", "Ilka", "Bram", "Edda" }, mixed = false, options = "" });
        var board = await Look(browser, page, () => page.EvaluateAsync<double[]>("ms => stage.play(ms)", seconds * 1000));
        Tell("empty page", empty);
        Tell($"board, {lanes} lanes", board);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"ratio={(double)board.Pictures / empty.Pictures:F3} of an empty page's pictures, 1920x1080, in this run"));
        return 0;
    }

    /// <summary>Runs it under the browser's tracing.</summary>
    private static async Task<Seen> Look(IBrowser browser, IPage page, Func<Task<double[]>> run)
    {
        var session = await browser.NewBrowserCDPSessionAsync();
        var ended = new TaskCompletionSource();
        var dropped = 0;
        var drawn = 0;
        var work = Work.ToDictionary(part => part.Named, _ => 0.0);
        session.Event("Tracing.dataCollected").OnEvent += (_, told) =>
        {
            foreach (var one in told!.Value.GetProperty("value").EnumerateArray())
            {
                var name = one.TryGetProperty("name", out var found) ? found.GetString() : null;
                dropped += name == "DroppedFrame" ? 1 : 0;
                drawn += name == "DrawFrame" ? 1 : 0;
                if (name is not null && work.ContainsKey(name) && one.TryGetProperty("tdur", out var spent))
                {
                    work[name] += spent.GetDouble() / 1000;
                }
            }
        };
        session.Event("Tracing.tracingComplete").OnEvent += (_, _) => ended.TrySetResult();
        await session.SendAsync("Tracing.start", new Dictionary<string, object> { ["categories"] = "disabled-by-default-devtools.timeline.frame,devtools.timeline.frame,devtools.timeline,cc,viz", ["transferMode"] = "ReportEvents" });
        var pictures = await run();
        await session.SendAsync("Tracing.end");
        await ended.Task;
        var gaps = pictures.Zip(pictures.Skip(1), (one, next) => next - one).Order().ToArray();
        return new Seen(pictures.Length, gaps[gaps.Length / 2], gaps[(int)(gaps.Length * 0.99)], gaps.Count(gap => gap > 25), drawn, dropped, work);
    }

    private static void Tell(string what, Seen seen)
    {
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{what}: pictures={seen.Pictures} median={seen.MedianMs:F1}ms p99={seen.P99Ms:F1}ms late={seen.Late} (over 25 ms) trace: drawn={seen.Drawn} dropped={seen.Dropped}"));
        Console.WriteLine($"  processor time a picture: {string.Join(", ", Work.Select(part => string.Create(CultureInfo.InvariantCulture, $"{part.Told} {seen.Work[part.Named] / seen.Pictures:F2} ms")))}");
    }

    private static string Stage()
    {
        using var file = new StreamReader(typeof(Strip).Assembly.GetManifestResourceStream("stage.js")!);
        return file.ReadToEnd().TrimEnd().TrimEnd(';');
    }

    private static int Number(string[] args, string name, int usual) =>
        Array.IndexOf(args, name) is var at and >= 0 && at + 1 < args.Length && int.TryParse(args[at + 1], NumberStyles.Integer, CultureInfo.InvariantCulture, out var number) && number > 0 ? number : usual;

    private sealed record Seen(int Pictures, double MedianMs, double P99Ms, int Late, int Drawn, int Dropped, IReadOnlyDictionary<string, double> Work);
}
