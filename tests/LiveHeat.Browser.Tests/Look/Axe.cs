using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace LiveHeat.Browser.Look;

/// <summary>Faults that axe-core (Deque, MPL 2.0) finds on a page.</summary>
internal static class Axe
{
    /// <summary>A colour on its way to another, as of a button that was just set free, is no colour of the page. What goes on for ever is not waited for.</summary>
    private const string Settled = """
        () => Promise.all(document.getAnimations()
          .filter(one => one.playState === 'running' && one.effect?.getComputedTiming().endTime !== Infinity)
          .map(one => one.finished.catch(() => {})))
        """;

    /// <summary>Those it calls serious or critical, with where they are.</summary>
    /// <param name="page">As it stands.</param>
    /// <param name="what">The words for it in what is told.</param>
    /// <param name="within">A selector of what alone is looked at; null: the whole page with its title and its language.</param>
    public static async Task<IEnumerable<string>> SeriousFaults(this IPage page, string what, string? within = null)
    {
        await page.EvaluateAsync(Settled);
        var found = within is null ? await page.RunAxe() : await page.RunAxe(new AxeRunContext { Include = [new AxeSelector(within)] });
        Assert.True(found.Passes.Length > 3, $"axe-core looked at nothing on {what}");
        return found.Violations.Where(fault => fault.Impact is "serious" or "critical").Select(fault => $"{what}: {fault.Id}: {fault.Help} {string.Join(" | ", fault.Nodes.Take(4).Select(Where))}");
    }

    private static string Where(AxeResultNode node) => $"{node.Html[..Math.Min(160, node.Html.Length)]} {string.Join("; ", node.Any.Select(check => check.Message))}";
}
