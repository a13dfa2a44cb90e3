using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace LiveHeat.Browser.Look;

/// <summary>What axe-core (Deque, MPL 2.0) finds on a page.</summary>
internal static class AxeFaults
{
    /// <summary>What it calls serious or critical, in sentences that begin with what was looked at.</summary>
    public static async Task<IEnumerable<string>> SeriousFaults(this IPage page, string what)
    {
        var found = await page.RunAxe();
        Assert.True(found.Passes.Length > 3, $"axe-core looked at nothing on {what}");
        return found.Violations.Where(fault => fault.Impact is "serious" or "critical").Select(fault => $"{what}: {fault.Id}: {fault.Help} {string.Join(" | ", fault.Nodes.Take(4).Select(Where))}");
    }

    private static string Where(AxeResultNode node) => $"{node.Html[..Math.Min(100, node.Html.Length)]} {string.Join("; ", node.Any.Select(check => check.Message))}";
}
