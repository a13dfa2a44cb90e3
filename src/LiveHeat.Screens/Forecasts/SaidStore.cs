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
        [.. frame.Callouts.Where(callout => said.TryGetValue((frame.Epoch, HeatOf(frame, callout)), out var known) && !known.Contains(callout.Id) && !callout.IsStale(now))];

    /// <summary>Reads what the tab has kept of this heat and of those whose results came in, once each.</summary>
    public async Task ReadFor(ForecastFrame frame)
    {
        foreach (var heat in frame.Callouts.Select(callout => HeatOf(frame, callout)).Prepend(frame.Heat).Where(heat => asked.Add((frame.Epoch, heat))).ToList())
        {
            said[(frame.Epoch, heat)] = [.. await page.Kept(Key(frame, heat))];
            Changed?.Invoke();
        }
    }

    /// <summary>It was said: it does not come back.</summary>
    public async Task Said(ForecastFrame frame, string id)
    {
        var heat = frame.Callouts.FirstOrDefault(callout => callout.Id == id) is { } callout ? HeatOf(frame, callout) : frame.Heat;
        if (said.TryGetValue((frame.Epoch, heat), out var known) && known.Add(id))
        {
            Changed?.Invoke();
            await page.Keep(Key(frame, heat), [.. known]);
        }
    }

    /// <summary>A ledger that was restored counts its facts anew, and ids with them.</summary>
    private static string Key(ForecastFrame frame, HeatId heat) => $"said.{frame.Epoch}.{heat}";

    /// <summary>A result, or what it made of the standings, that was said in one heat is not said again in the next.</summary>
    private static HeatId HeatOf(ForecastFrame frame, Callout callout) => callout.Earlier?.Heat ?? callout.Overall?.Heat ?? frame.Heat;
}
