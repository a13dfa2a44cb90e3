namespace LiveHeat.Screens.Words;

/// <summary>The announcer's screen.</summary>
public static class AnnouncerWords
{
    public const string Title = "Announcer";
    public const string JustNow = "Just now";
    public const string Nothing = "Nothing yet.";
    public const string NoHeat = "No heat on the floor";
    public const string NextHeats = "Next heats";
    public const string NoNextHeats = "No more heats on the program.";
    public const string Official = "official";
    public const string Athletes = "Athletes";
    public const string Ready = "ready";
    public const string NotReady = "not ready yet";
    public const string Home = "Screens";

    public static string ThenNext(string name) => $"then {name}";

    public static string Ago(TimeSpan age) => $"{TimeWords.Age(age)} ago";

    public static string Lanes(int count) => CommonWords.Count(count, "team", "teams");
}
