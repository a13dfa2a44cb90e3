namespace LiveHeat.Contracts.Language;

/// <summary>Several things in one sentence.</summary>
public static class Lists
{
    private static readonly Wording Words = new(typeof(Lists));

    /// <summary>"a, b and c".</summary>
    public static string And(IEnumerable<string> items) => Join(items, nameof(And));

    /// <summary>"a, b or c".</summary>
    public static string Or(IEnumerable<string> items) => Join(items, nameof(Or));

    private static string Join(IEnumerable<string> items, string last) => items.ToList() switch
    {
        [] => "",
        [var one] => one,
        var all => Words.Say(last, string.Join(", ", all[..^1]), all[^1]),
    };
}
