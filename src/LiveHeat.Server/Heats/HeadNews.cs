using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;

namespace LiveHeat.Server.Heats;

/// <summary>What came in since somebody looked, in words: for whoever wanted to freeze or sign something else.</summary>
internal static class HeadNews
{
    private const int MostNamed = 12;
    private static readonly Dictionary<Type, string> Names = WireNames.Facts.ToDictionary(fact => fact.Type, fact => fact.Name.Replace('-', ' '));

    /// <summary>The sequence to name next time.</summary>
    public static long Head(HeatState heat, HeatCommand command) => command is HeatCommand.Certify ? heat.SignedHead : heat.Head;

    /// <summary>One line a fact after the sequence that the command names, oldest first.</summary>
    public static IReadOnlyList<string> Since(HeatState heat, HeatCommand command)
    {
        var seen = command switch
        {
            HeatCommand.Freeze freeze => freeze.Head,
            HeatCommand.Certify certify => certify.Head,
            _ => heat.Head,
        };
        var news = heat.Entries.Where(entry => entry.Sequence > seen && entry.Fact is not HeatFact.Certified).Select(entry => Words(heat, entry.Fact)).ToList();
        return news.Count <= MostNamed ? news : [.. news.Take(MostNamed - 1), $"and {news.Count - MostNamed + 1} more"];
    }

    private static string Words(HeatState heat, HeatFact fact)
    {
        var what = Names[fact.GetType()];
        var lane = fact is HeatFact.About about ? heat.Find(about.Target)?.Fact.AboutLane() : fact.AboutLane();
        var tap = fact is HeatFact.FactAdded added ? added.Tap : fact;
        var step = tap is HeatFact.AtStep at && lane is { } number ? heat.Find(number)?.Plan.Find(at.Step)?.Label : null;
        return (lane is { } on ? $"lane {on}: {what}" : what) + (step is null ? "" : $" ({step})");
    }
}
