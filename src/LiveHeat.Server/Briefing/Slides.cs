namespace LiveHeat.Server.Briefing;

/// <summary>Lays a briefing out as slides: the workout for each division, the relay order, each movement and its faults, the cautions.</summary>
internal static class Slides
{
    public static Slide NoHeat => new("none", BriefingWords.NoHeat, "", [new("", BriefingWords.NoHeatNext)]);

    public static IReadOnlyList<Slide> Of(HeatBriefing briefing) =>
    [
        .. briefing.Divisions.Select(division => new Slide("workout", briefing.Workout, $"{division.Name} · {BriefingWords.Cap(division.Cap)}", [.. division.Parts.SelectMany(Part)])),
        new("relay", BriefingWords.RelayOrder, briefing.Workout, [.. briefing.Relay.Select(sentence => new SlideLine("", sentence))]),
        .. briefing.Tag is { } tag ? Movement(new BriefedMovement(tag, null)) : [],
        .. briefing.Movements.SelectMany(Movement),
        new("cautions", BriefingWords.TakeCare, "", [.. BriefingWords.Cautions.Select(caution => new SlideLine("", caution))]),
    ];

    private static IEnumerable<SlideLine> Part(BriefedPart part) =>
        [new SlideLine(part.Heading, "", IsHead: true), .. part.Sets.Select(set => new SlideLine(set.What, set.Notes))];

    private static IEnumerable<Slide> Movement(BriefedMovement briefed)
    {
        var (movement, onlyIn) = briefed;
        yield return new Slide("movement", movement.Name, onlyIn ?? "", [.. StandardWords.Lines(movement)], movement.FullStandard?.Picture);
        yield return new Slide("faults", movement.Name, string.Join(" · ", new[] { BriefingWords.FaultsOf(movement), onlyIn }.OfType<string>()), movement.Faults.Count == 0
            ? [new SlideLine("", BriefingWords.NoFaults)]
            : [.. movement.Faults.Select(fault => new SlideLine(fault.Name, fault.How ?? ""))]);
    }
}
