using LiveHeat.Contracts.Language;

namespace LiveHeat.Screens.Words;

/// <summary>An address that leads nowhere.</summary>
public static class WelcomeWords
{
    private static readonly Wording Words = new(typeof(WelcomeWords));

    public static string NoSuchPage => Words[nameof(NoSuchPage)];
    public static string MaybeMistyped => Words[nameof(MaybeMistyped)];
    public static string Back => Words[nameof(Back)];
}
