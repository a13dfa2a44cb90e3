using System.Globalization;
using Microsoft.Playwright;

namespace LiveHeat.Browser.Look;

/// <summary>Looks at a page as a person would, for what is cut off, covered, off the screen, or too small to hit.</summary>
internal static class Looks
{
    /// <summary>Least size of a control, CSS pixels: 44 is the size that WCAG 2.2 names for targets at its level AAA (success criterion 2.5.5, from memory).</summary>
    public const int LeastControl = 44;

    /// <summary>Least size of a control of the pad, which is hit by wet thumbs without looking.</summary>
    public const int LeastPadControl = 64;

    private static readonly string Script = Read("faults");
    private static readonly string Contrast = Read("contrast");
    private static readonly string Capitals = Read("capitals");

    /// <summary>All faults of a page as it is now, in sentences.</summary>
    /// <param name="root">What to look at.</param>
    /// <param name="least">Least size of a control, CSS pixels.</param>
    /// <param name="scrolls">Whether the page may be longer than the screen.</param>
    public static async Task<IReadOnlyList<string>> Faults(this IPage page, string root, int least = LeastControl, bool scrolls = false) =>
        await page.EvaluateAsync<string[]>($"async what => {{ await document.fonts.ready; await new Promise(drawn => requestAnimationFrame(() => requestAnimationFrame(drawn))); return ({Script})(what); }}", new { root, least, scrolls });

    /// <summary>Looks at the page in each of these sizes, and tells faults with the size and what was on the screen.</summary>
    public static async Task<IEnumerable<string>> FaultsAt(this IPage page, string what, IEnumerable<(int Width, int Height)> sizes, string root, int least)
    {
        var faults = new List<string>();
        foreach (var (width, height) in sizes)
        {
            await page.SetViewportSizeAsync(width, height);
            faults.AddRange((await page.Faults(root, least)).Select(fault => string.Create(CultureInfo.InvariantCulture, $"{what}, {width}x{height}: {fault}")));
        }

        return faults;
    }

    /// <summary>Text that stands out less than a ratio from what is behind it, in sentences.</summary>
    public static async Task<IReadOnlyList<string>> Contrasts(this IPage page, string root, double least) =>
        await page.EvaluateAsync<string[]>($"what => ({Contrast})(what)", new { root, least });

    /// <summary>Text whose capitals are lower than so many CSS pixels, in sentences.</summary>
    public static async Task<IReadOnlyList<string>> LowCapitals(this IPage page, string root, double least) =>
        await page.EvaluateAsync<string[]>($"what => ({Capitals})(what)", new { root, least });

    private static string Read(string name)
    {
        using var file = new StreamReader(typeof(Looks).Assembly.GetManifestResourceStream($"Look/{name}.js")!);
        return file.ReadToEnd();
    }
}
