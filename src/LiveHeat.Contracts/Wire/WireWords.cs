using LiveHeat.Contracts.Language;

namespace LiveHeat.Contracts.Wire;

/// <summary>What was expected where JSON could not be read. Told while it is read: in the language of whoever sent it.</summary>
public static class WireWords
{
    private static readonly Wording Words = new(typeof(WireWords));

    public static string NoId => Words[nameof(NoId)];

    public static string Lane(int most) => Words.Say(nameof(Lane), most);

    public static string Instant => Words[nameof(Instant)];

    public static string ListMissing => Words[nameof(ListMissing)];

    public static string ListGap => Words[nameof(ListGap)];

    public static string Missing => Words[nameof(Missing)];

    public static string NoCase => Words[nameof(NoCase)];
}
