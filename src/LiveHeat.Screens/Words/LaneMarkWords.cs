using LiveHeat.Contracts.Language;

namespace LiveHeat.Screens.Words;

/// <summary>What is said about a lane beside its work.</summary>
public static class LaneMarkWords
{
    private static readonly Wording Words = new(typeof(LaneMarkWords));

    public static string FinishUnknown => Words[nameof(FinishUnknown)];
    public static string TooClose => Words[nameof(TooClose)];
    public static string AppealOpen => Words[nameof(AppealOpen)];
    public static string Held => Words[nameof(Held)];
    public static string NoJudge => Words[nameof(NoJudge)];

    public static string Disputed(string name) => Words.Say(nameof(Disputed), name);

    public static string Owed(int reps) => Words.Count(nameof(Owed), reps);

    public static string Penalty(int addMs, int reps, Engine.Workouts.ScoreUnit? score) => Words.Say(nameof(Penalty), RulingWords.Penalty(addMs, reps, score));

    public static string NoReps(int all) => Words.Count(nameof(NoReps), all);

    public static string NoReps(int all, int open) => open > 0 ? NoRepsOpen(all, open) : NoReps(all);

    private static string NoRepsOpen(int all, int open) => Words.Count(nameof(NoRepsOpen), all, open);
}
