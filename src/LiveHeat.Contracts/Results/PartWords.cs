using LiveHeat.Contracts.Language;
using LiveHeat.Engine;

namespace LiveHeat.Contracts.Results;

/// <summary>In which part, of those that are scored apart, a ruling counts.</summary>
public static class PartWords
{
    private static readonly Wording Words = new(typeof(PartWords));

    /// <summary>"+10 s, counts in First buy-in"; the ruling alone where no part was named for it.</summary>
    /// <param name="ruling">What it costs, in words.</param>
    /// <param name="part">From 1; 0: only the whole; null where none was named.</param>
    /// <param name="parts">Their names, in order.</param>
    public static string Of(string ruling, int? part, Items<string> parts) => part switch
    {
        0 => Whole(ruling),
        { } number when number <= parts.Count => In(ruling, parts[number - 1]),
        _ => ruling,
    };

    private static string In(string ruling, string part) => Words.Say(nameof(In), ruling, part);

    private static string Whole(string ruling) => Words.Say(nameof(Whole), ruling);
}
