using LiveHeat.Contracts.Results;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Scoring;
using LiveHeat.Engine.Timing;
using LiveHeat.Rehearsal;

namespace LiveHeat.Server.Rehearsal;

public class ResultTextTests
{
    private static ResultLane Lane(int lane, string name, int? place, Outcome outcome, long? ms = null, int worth = 192, int noReps = 0, bool tied = false, ReadBack? readBack = null) => new(
        new LaneNumber(lane), name, "open", "Open", ["A"], place, tied, outcome, ms, worth, 192, [], noReps, 0, [], 0, 0, readBack);

    private static ResultTable Table(params Items<ResultLane> lanes) => new(
        new HeatId("h1"), "Copper Kettle Relays", "Heat 1", "Kettle Run", "certified", 1, 412, "ab12", Rounding.UpTenth,
        [new("Ada", Role.Organiser), new("Bo", Role.HeadJudge)], lanes);

    [Fact]
    public void Aligns_a_certified_table()
    {
        var text = ResultText.Of(Table(
            Lane(3, "Tin Weather", 1, Outcome.Finished, 547_300, noReps: 4),
            Lane(1, "Wet Matches", 2, Outcome.Finished, 600_000, noReps: 11, tied: true),
            Lane(12, "Nine Buckets", 3, Outcome.Capped, worth: 170, readBack: new ReadBack(false, "Ayşe")),
            Lane(4, "Gravel Choir", null, Outcome.DidNotStart, worth: 0)));
        Assert.Equal(
            """
            Copper Kettle Relays · Heat 1 · Kettle Run

            Open
              place  lane  team              result  no-reps  status
                  1     3  Tin Weather       9:07.3        4  finished
                 2=     1  Wet Matches      10:00.0       11  finished
                  3    12  Nine Buckets  170 of 192        0  time cap, disputed by Ayşe
                  –     4  Gravel Choir    0 of 192        0  did not start

            certified, revision 1, number 412, signed by Ada and Bo
            ledger ab12

            """.ReplaceLineEndings(),
            text);
    }
}
