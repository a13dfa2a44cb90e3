using CsCheck;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats.Laws;

/// <summary>A tap folds its own lane on the plans known; that must be what folding every lane from its facts gives.</summary>
public class RefoldLaw
{
    [Fact]
    public void Folding_every_lane_anew_changes_nothing() =>
        GeneratedHeat.InOrder.Sample(
            heat =>
            {
                var state = GeneratedHeat.Fold(heat.Facts);
                // A void of nothing known says nothing, and folds all lanes.
                var again = state.Apply(new Entry(state.Head + 1, Some.Go, "in-head", new HeatFact.Voided { Id = Some.Id("again", 1), Instant = Some.Go, By = Some.HeadJudge, Target = Some.Id("nothing", 1) }));

                Assert.Equal(state.Lanes, again.Lanes);
            },
            iter: 300);
}
