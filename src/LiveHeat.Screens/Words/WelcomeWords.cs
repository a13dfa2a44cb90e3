namespace LiveHeat.Screens.Words;

/// <summary>An address that leads nowhere.</summary>
public static class WelcomeWords
{
    public const string NoSuchPage = "There is no such page";
    public const string MaybeMistyped = "The address may be mistyped.";
    public const string Back = "Back to the screens";
}
