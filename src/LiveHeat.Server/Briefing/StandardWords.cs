using LiveHeat.Contracts.Sheets;

namespace LiveHeat.Server.Briefing;

/// <summary>A movement's standard as labelled lines, the same on paper and on the screen.</summary>
internal static class StandardWords
{
    public static IEnumerable<SlideLine> Lines(SheetMovement movement)
    {
        if (movement.FullStandard is not { } full)
        {
            return [new SlideLine("", string.IsNullOrWhiteSpace(movement.Standard) ? BriefingWords.NoStandard : movement.Standard)];
        }

        return
        [
            new("Start", full.Start), new("Finish", full.Finish),
            .. full.Between.Select(sentence => new SlideLine("On the way", sentence)),
            .. full.Allowed.Select(sentence => new SlideLine("Allowed", sentence)),
            .. string.IsNullOrWhiteSpace(full.Caution) ? Array.Empty<SlideLine>() : [new("Caution", full.Caution)],
        ];
    }
}
