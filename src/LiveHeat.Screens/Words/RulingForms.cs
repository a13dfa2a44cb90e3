namespace LiveHeat.Screens.Words;

/// <summary>What is said to somebody who fills in a ruling.</summary>
public static class RulingForms
{
    public static string WrongNumber(int written, int needed) => $"{CommonWords.Count(written, "name", "names")} written; this team has {needed}.";
}
