using LiveHeat.Engine.Heats;

namespace LiveHeat.Rehearsal.Phones;

/// <summary>Where a phone has its lane.</summary>
/// <param name="Open">The open step; number of steps + 1 when all is done.</param>
/// <param name="Count">Units counted within the open set.</param>
/// <param name="Owed">Reps to be made up before the open set may count.</param>
/// <param name="Standing">The facts that stand.</param>
public sealed record LaneNow(int Open, int Count, int Owed, IReadOnlyList<HeatFact> Standing);

/// <summary>The pad's one law: the open step follows the highest step with a standing done-fact, its own or received; undo takes one fact back.</summary>
/// <remarks>Held to the engine and to the pad in the browser by one table of cases.</remarks>
public static class LaneLaw
{
    /// <param name="facts">In any order, any of them twice.</param>
    /// <param name="lane">The phone's lane.</param>
    /// <param name="steps">How many steps the lane has.</param>
    /// <param name="start">The start in force; null when nobody said: then the facts themselves tell.</param>
    public static LaneNow Read(IEnumerable<KnownFact> facts, LaneNumber lane, int steps, StartInForce? start)
    {
        var standing = new KnownFacts(facts).Standing(lane, start).Select(known => known.Fact).ToList();
        var backs = standing.OfType<HeatFact.SentBack>().ToList();
        var dones = standing.OfType<HeatFact.Done>().Where(done => done.Step >= 1 && done.Step <= steps).ToList();

        // Sent back, a tap still says that all before the ruling's step is done.
        int Reach(HeatFact.AtStep tap, long untilMs) => backs
            .Where(back => tap.Step >= back.Step && tap.Instant <= back.Instant && back.Instant.UnixMs <= untilMs)
            .Select(back => back.Step - 1).Append(tap.Step).Min();
        int OpenAt(long untilMs) => 1 + dones.Where(done => done.Instant.UnixMs <= untilMs).Select(done => Reach(done, untilMs)).DefaultIfEmpty(0).Max();

        var open = OpenAt(long.MaxValue);
        var counts = standing.OfType<HeatFact.CountReached>().Where(count => count.Step == open && open <= steps && Reach(count, long.MaxValue) == count.Step);
        var debts = standing.OfType<HeatFact.RepsOwed>().Where(owed => OpenAt(owed.Instant.UnixMs) == open);
        return new LaneNow(
            open,
            counts.Aggregate((HeatFact.CountReached?)null, (last, next) => last is null || Later(next, last) ? next : last)?.Count ?? 0,
            debts.Sum(owed => owed.Reps),
            standing);
    }

    /// <summary>One phone's taps keep their counter order, whatever its clock did.</summary>
    private static bool Later(HeatFact next, HeatFact last) =>
        next.Id.Outbox == last.Id.Outbox ? next.Id.Counter > last.Id.Counter : next.Instant >= last.Instant;
}
