using LiveHeat.Contracts.Forecasts;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Screens.Look;

namespace LiveHeat.Screens.Forecasts;

/// <summary>What was said of each heat. The browser keeps it for this tab: a page that is loaded anew says nothing twice.</summary>
public sealed class SaidStore(PageScript page)
{
    private readonly Dictionary<(string Epoch, HeatId Heat), HashSet<string>> said = [];
    private readonly HashSet<(string, HeatId)> asked = [];

    /// <summary>Something was said, or what was said before the page was loaded is known now.</summary>
    public event Action? Changed;

    /// <summary>Worth saying, not said yet and not too old, the next thing first; nothing while it is not known what was said.</summary>
    public IReadOnlyList<Callout> ToSay(ForecastFrame frame, Instant now) =>
        said.TryGetValue((frame.Epoch, frame.Heat), out var known) ? [.. frame.Callouts.Where(callout => !known.Contains(callout.Id) && !callout.IsStale(now))] : [];

    /// <summary>Reads what the tab has kept of this heat, once.</summary>
    public async Task ReadFor(ForecastFrame frame)
    {
        if (asked.Add((frame.Epoch, frame.Heat)))
        {
            said[(frame.Epoch, frame.Heat)] = [.. await page.Kept(Key(frame))];
            Changed?.Invoke();
        }
    }

    /// <summary>It was said: it does not come back.</summary>
    public async Task Said(ForecastFrame frame, string id)
    {
        if (said.TryGetValue((frame.Epoch, frame.Heat), out var known) && known.Add(id))
        {
            Changed?.Invoke();
            await page.Keep(Key(frame), [.. known]);
        }
    }

    /// <summary>A ledger that was restored counts its facts anew, and ids with them.</summary>
    private static string Key(ForecastFrame frame) => $"said.{frame.Epoch}.{frame.Heat}";
}
