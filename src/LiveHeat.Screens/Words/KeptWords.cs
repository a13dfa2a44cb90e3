using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>Who recorded a fact, and what became of it.</summary>
public static class KeptWords
{
    /// <summary>Later than this is said: before it a tap is on its way.</summary>
    private const int SoonMs = 5_000;

    /// <summary>Who recorded it: a name, and in what duty. "Mara, witness".</summary>
    public static string Who(FactLine line, FactBook book) =>
        line.Fact is HeatFact.Desk ? FactWords.By(line.Fact)
        : book.SeatOf(line.Fact) is { } seat ? $"{seat.By.Name}, {ReplayWords.Duty(seat.Duty)}"
        : book.NameOf(line.Sender) ?? FactWords.By(line.Fact);

    /// <summary>The athlete of the step a fact is about; empty when it is about none, or the team works as one.</summary>
    public static string Athlete(HeatFact fact, LaneView? lane) =>
        (fact is HeatFact.FactAdded added ? added.Tap : fact) is HeatFact.AtStep at && lane?.Find(at.Step) is { } step ? lane.NameOf(step.Athlete) : "";

    /// <summary>How far its time is to be trusted: "±12 ms"; empty for what has no phone's clock.</summary>
    public static string Within(HeatFact fact) => (fact is HeatFact.FactAdded added ? added.Tap : fact) is HeatFact.Floor floor ? ReplayWords.Within(floor.UncertaintyMs) : "";

    /// <summary>All that is to be said about how it is kept, gravest first; empty when it counts as it is.</summary>
    public static IEnumerable<string> Of(FactLine line, FactBook book)
    {
        var id = line.Fact.Id;
        if (book.VoidOf(id) is { } voided)
        {
            yield return ReplayWords.VoidedBy(voided.By.Name, voided.By.Role) + Because(voided, book);
        }

        if (book.IsUndone(id))
        {
            yield return RulingWords.Undone;
        }

        if (book.AdmitOf(id) is { } admitted)
        {
            yield return ReplayWords.AdmittedBy(admitted.By.Name, admitted.By.Role) + Because(admitted, book);
        }

        foreach (var flag in FlagWords.Of(book.IsAdmitted(id) ? line.Flags & ~FactFlags.Quarantined : line.Flags))
        {
            yield return flag;
        }

        if (line.Fact is HeatFact.Floor && line.ReceivedAt - line.Fact.Instant is > SoonMs and var laterMs)
        {
            yield return ReplayWords.CameLater(laterMs);
        }
    }

    private static string Because(HeatFact ruling, FactBook book) => book.ReasonOf(ruling) is { Length: > 0 } reason ? ReplayWords.Because(reason) : "";
}
