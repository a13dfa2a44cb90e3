using LiveHeat.Contracts.Language;

namespace LiveHeat.Server.Language;

/// <summary>The words of the choice of a language.</summary>
internal static class LanguageWords
{
    private static readonly Wording Words = new(typeof(LanguageWords));

    /// <summary>What the choice is, for those who do not see it.</summary>
    public static string Choice => Words[nameof(Choice)];

    /// <summary>What a language calls itself.</summary>
    public static string Own(string language) => Tongue.In(language, () => OwnName);

    private static string OwnName => Words[nameof(OwnName)];
}
