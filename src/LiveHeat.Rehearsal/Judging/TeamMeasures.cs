using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Rehearsal.Judging;

/// <summary>What a simulated team shows on machines and lifts, where that makes the score. From memory: nothing published stands behind its figures.</summary>
public sealed class TeamMeasures(Random random)
{
    private const decimal PlateKg = 2.5m;
    private const decimal PlateLb = 5;
    private const double OpenerKg = 70;
    private const double Spread = 0.2;

    private readonly Dictionary<int, decimal> openers = [];

    /// <summary>A reading: about what is expected where it is the score, else just that.</summary>
    public decimal Reading(SheetLane lane, SheetStep step) =>
        lane.Score is null ? step.Quantity : Math.Max(1, (decimal)Math.Round(step.Quantity * Math.Exp(Spread / 2 * random.NextNormal())));

    /// <summary>The next load of whoever lifts: two plates more each time, and each time less surely good.</summary>
    public (decimal Load, bool Good) Lift(SheetLane lane, SheetStep step)
    {
        var (plate, opener) = step.Unit == Unit.Lb ? (PlateLb, OpenerKg * 2.2) : (PlateKg, OpenerKg);
        if (!openers.TryGetValue(step.Athlete, out var first))
        {
            openers[step.Athlete] = first = Math.Max(plate, Math.Round((decimal)(opener * Math.Exp(Spread * random.NextNormal())) / plate) * plate);
        }

        var before = lane.Steps.Count(other => other.Kind == StepKind.Attempt && other.Athlete == step.Athlete && other.Step < step.Step);
        return (first + (2 * plate * before), random.Chance(Math.Max(0.2, 0.95 - (0.2 * before))));
    }
}
