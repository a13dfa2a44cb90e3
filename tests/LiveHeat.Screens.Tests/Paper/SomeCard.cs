using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Screens.Paper;

/// <summary>A lane's form and its record, from a score sheet. Steps: 1 set, 2 set, 3 tag, 4 set, 5 set, 6 tag, 7 set, 8 set, 9 finish.</summary>
internal static class SomeCard
{
    public static FactBook Book(string score, HeatSnapshot? snapshot = null)
    {
        var heat = HeatScript.Play(score, snapshot);
        return new FactBook(heat.Head, heat.Entries.Select(entry => new FactLine(entry.Sequence, entry.ReceivedAt, entry.Sender, FactFlags.None, entry.Fact)));
    }

    public static PaperDraft Draft(string score = "start", int lane = 1, HeatSnapshot? heat = null) => new(SomeHeat.Lane(score, lane, heat).Sheet);

    public static PaperComparison Compared(string score, PaperDraft draft, HeatSnapshot? heat = null)
    {
        var comparison = new PaperComparison();
        comparison.Fold(Some.Heat, Book(score, heat), draft.Lane.Lane);
        comparison.Compare(draft.Lane.Lane, draft.Read(comparison.Lane));
        return comparison;
    }

    /// <summary>Two attempts of each of three: Ann steps 1 and 2, a tag, Bo 4 and 5, a tag, Cy 7 and 8.</summary>
    public static readonly HeatSnapshot Lifting = Some.Snapshot(1, Some.Lifting(attempts: 2));

    /// <summary>60 cal row as a pool, each at least 15; then 10 wall balls.</summary>
    public static readonly HeatSnapshot Pool = Some.Snapshot(1, Some.Workout(finish: FinishKind.None, prescriptions:
        Some.Prescription(rounds: 1, round: [new PrescribedSet("row", 60) { MinimumEach = 15 }, new("wall-ball", 10)])));

    /// <summary>Three rounds of 1:00 with 0:30 rest.</summary>
    public static HeatSnapshot ByClock(ScoringRule scoring, bool repeat, params PrescribedSet[] round) => Some.Snapshot(1, Some.Workout(finish: FinishKind.None, prescriptions:
        Some.Prescription(rounds: 3, capMs: 240_000, round: round) with { Clock = new WorkClock(60_000, 30_000, repeat) }) with
    { Scoring = scoring });

    public static PaperEntry At(this PaperDraft draft, int step) => draft.Entries[step - 1];
}
