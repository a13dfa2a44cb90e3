using LiveHeat.Contracts.Judging;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Screens.Judging;

/// <summary>A heat of six lanes in which lane 1 has nine no-reps in thirty wall balls and the others have none.</summary>
internal static class SomeJudging
{
    public static readonly HeatState Strict = Heat(noReps: 9);

    public static readonly HeatState Alike = Heat(noReps: 0);

    public static JudgingTable Table => JudgingMaking.Of(Strict)!;

    public static JudgingLane Lane(int lane) => Table.Lanes.Single(one => one.Lane == new LaneNumber(lane));

    private static HeatState Heat(int noReps) => HeatScript.Play("start\n"
        + string.Concat(Enumerable.Repeat("lane 1 no-rep step 1 at 0:20\n", noReps))
        + string.Concat(Enumerable.Range(1, 6).Select(lane => $"lane {lane} step 1 done at 0:30\nlane {lane} step 4 done at 1:30\nlane {lane} step 7 done at 2:30\n")), Some.Snapshot(6));
}
