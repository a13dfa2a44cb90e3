using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Sheets;

namespace LiveHeat.Server.Briefing;

/// <summary>A movement's standard as labelled lines, the same on paper and on the screen.</summary>
internal static class StandardWords
{
    private static readonly Wording Words = new(typeof(StandardWords));

    public static IEnumerable<SlideLine> Lines(SheetMovement movement)
    {
        if (movement.FullStandard is not { } full)
        {
            return [new SlideLine("", string.IsNullOrWhiteSpace(movement.Standard) ? BriefingWords.NoStandard : movement.Standard)];
        }

        return
        [
            new(Start, full.Start), new(Finish, full.Finish),
            .. full.Between.Select(sentence => new SlideLine(OnTheWay, sentence)),
            .. full.Allowed.Select(sentence => new SlideLine(Allowed, sentence)),
            .. string.IsNullOrWhiteSpace(full.Caution) ? Array.Empty<SlideLine>() : [new(Caution, full.Caution)],
        ];
    }

    /// <summary>What a caution is labelled with.</summary>
    public static string Caution => Words[nameof(Caution)];

    private static string Start => Words[nameof(Start)];

    private static string Finish => Words[nameof(Finish)];

    private static string OnTheWay => Words[nameof(OnTheWay)];

    private static string Allowed => Words[nameof(Allowed)];
}
