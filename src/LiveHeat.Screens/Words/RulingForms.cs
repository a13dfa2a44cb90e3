using LiveHeat.Contracts.Language;

namespace LiveHeat.Screens.Words;

/// <summary>What is said to somebody who fills in a ruling.</summary>
public static class RulingForms
{
    private static readonly Wording Words = new(typeof(RulingForms));

    public static string WrongNumber(int written, int needed) => Words.Count(nameof(WrongNumber), written, needed);
}
