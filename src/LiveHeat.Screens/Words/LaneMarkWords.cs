namespace LiveHeat.Screens.Words;

/// <summary>What is said about a lane beside its work.</summary>
public static class LaneMarkWords
{
    public const string FinishUnknown = "finish time unknown";
    public const string TooClose = "too close to call";
    public const string AppealOpen = "appeal open";
    public const string Held = "held";
    public const string NoJudge = "no judge's phone";

    public static string Disputed(string name) => $"score disputed by {name}";

    public static string Owed(int reps) => $"{CommonWords.Reps(reps)} owed";

    public static string Penalty(int addMs, int reps) => $"penalty {RulingWords.Penalty(addMs, reps)}";

    public static string NoReps(int all, int open) => open > 0 ? $"{CommonWords.Count(all, "no-rep", "no-reps")}, {open} in this set" : CommonWords.Count(all, "no-rep", "no-reps");
}
