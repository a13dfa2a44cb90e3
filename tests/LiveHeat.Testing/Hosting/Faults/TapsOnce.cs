using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Testing.Hosting.Faults;

/// <summary>The promise of the ledger: every tap that a phone stored stands there once, in the order in which the phone made them, and nothing else does.</summary>
internal static class TapsOnce
{
    /// <summary>What is wrong, in words; empty when the promise was kept.</summary>
    /// <param name="facts">All facts of the heat.</param>
    /// <param name="phones">What each phone has on its disk, oldest first.</param>
    /// <param name="inOrder">False after a restored backup: what a phone had never sent goes first, and what it had sent before follows. The fold puts it where it happened.</param>
    public static IReadOnlyList<string> Broken(IReadOnlyList<FactLine> facts, IReadOnlyDictionary<string, IReadOnlyList<FactId>> phones, bool inOrder = true)
    {
        var wrong = new List<string>();
        var ledger = facts.Where(line => line.Fact is HeatFact.Floor).ToList();
        var places = ledger.ToLookup(line => line.Fact.Id, line => line.Sequence);
        foreach (var (phone, taps) in phones)
        {
            wrong.AddRange(taps.Where(id => !places[id].Any()).Select(id => $"{phone}: {id} is lost"));
            wrong.AddRange(taps.Where(id => places[id].Count() > 1).Select(id => $"{phone}: {id} stands {places[id].Count()} times"));
            var order = taps.Where(id => places[id].Any()).Select(id => (Id: id, At: places[id].First())).ToList();
            wrong.AddRange(order.Zip(order.Skip(1)).Where(pair => inOrder && pair.First.At > pair.Second.At).Select(pair => $"{phone}: {pair.Second.Id} stands before {pair.First.Id}"));
        }

        var known = phones.Values.SelectMany(taps => taps).ToHashSet();
        wrong.AddRange(ledger.Where(line => !known.Contains(line.Fact.Id)).Select(line => $"{line.Fact.Id} of lane {line.Fact.AboutLane()} is on no phone"));
        return wrong;
    }
}
