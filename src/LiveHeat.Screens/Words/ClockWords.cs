namespace LiveHeat.Screens.Words;

/// <summary>Beside the clock.</summary>
public static class ClockWords
{
    public const string NoStart = "–:––";
    public const string CapReached = "time cap reached";

    public static string Cap(long ms) => $"time cap {TimeWords.Clock(ms)}";

    public static string Left(long ms) => $"{TimeWords.Left(ms)} left";
}
