namespace LiveHeat.Screens.Words;

/// <summary>The form of a heat.</summary>
public static class HeatWords
{
    public const string NumberWrong = "Write the heat's number, from 1.";
    public const string RerunOf = "Does again";
    public const string NoRerun = "no other heat";
    public const string PlannedAtWrong = "Choose day and time, or leave it empty.";
}
