using LiveHeat.Contracts.Language;

namespace LiveHeat.Screens.Words;

/// <summary>Beside the clock.</summary>
public static class ClockWords
{
    private static readonly Wording Words = new(typeof(ClockWords));

    public const string NoStart = "–:––";
    public static string CapReached => Words[nameof(CapReached)];

    public static string Cap(long ms) => Words.Say(nameof(Cap), TimeWords.Clock(ms));

    public static string Left(long ms) => Words.Say(nameof(Left), TimeWords.Left(ms));
}
