using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Heats;

/// <summary>One version of a lane's plan.</summary>
/// <param name="Version">1 as called; each ruling that changes the plan takes the next number for ever, also one that is voided.</param>
/// <param name="Plan">What is to be done.</param>
/// <param name="FromStep">The first step that differs from the version before.</param>
/// <param name="From">The ruling's instant; the beginning of time for version 1.</param>
public sealed record PlanVersion(int Version, RelayPlan Plan, int FromStep, Instant From);

/// <summary>A lane's plan through its rulings.</summary>
public sealed record LanePlans(Items<PlanVersion> Versions)
{
    /// <summary>The plan in force.</summary>
    public PlanVersion Newest => Versions[^1];

    /// <summary>Compiles the lane as called, then applies each ruling that changes the plan. A ruling that cannot be changes nothing.</summary>
    /// <param name="workout">The heat's workout.</param>
    /// <param name="entry">Who stands on the lane.</param>
    /// <param name="rulings">The lane's rulings since the call in ledger order, voided ones too.</param>
    /// <param name="voided">What does not count.</param>
    public static LanePlans Read(Workout workout, LaneEntry entry, IEnumerable<HeatFact> rulings, IReadOnlySet<FactId> voided)
    {
        var team = entry.LineUp();
        var versions = new List<PlanVersion> { new(1, Compile(workout, team), 1, new Instant(long.MinValue)) };
        foreach (var (ruling, i) in rulings.Where(ruling => ruling is HeatFact.LineUpChanged or HeatFact.VariantTaken).Select((ruling, i) => (ruling, i)))
        {
            if (voided.Contains(ruling.Id))
            {
                continue;
            }

            var plan = versions[^1].Plan;
            var (step, next) = ruling switch
            {
                HeatFact.LineUpChanged changed => (changed.FromStep, PlanSplice.LineUp(plan, changed.FromStep, changed.Athletes, workout, team)),
                HeatFact.VariantTaken taken => (taken.FromStep, PlanSplice.Variant(plan, taken.FromStep, taken.Prescription, workout, team)),
                _ => (0, null),
            };
            if (next is Compiled.Plan(var changedPlan))
            {
                versions.Add(new PlanVersion(i + 2, changedPlan, step, ruling.Instant));
            }
        }

        return new LanePlans(versions.ToItems());
    }

    private static RelayPlan Compile(Workout workout, LineUp team) => PlanCompiler.Compile(workout, team) switch
    {
        Compiled.Plan(var plan) => plan,
        // A heat is only called when every lane compiles; a ledger that says otherwise still has to open.
        _ => new RelayPlan(team.Division, team.Division, team.Division, 1, team.Athletes, [new Track([])]),
    };

    /// <summary>Whether that version was the newest at the instant.</summary>
    public bool InForce(int version, Instant at) => Versions.Last(plan => plan.From <= at).Version == version;

    /// <summary>Whether a tap made on an older version still means the same step.</summary>
    public bool StillMeans(int version, int step, Instant at) =>
        Versions.Where(newer => newer.Version > version).All(newer => step < newer.FromStep || at < newer.From || SameStep(version, newer, step));

    private bool SameStep(int version, PlanVersion newer, int step)
    {
        var before = Versions.FirstOrDefault(older => older.Version == version)?.Plan.Find(step);
        var after = newer.Plan.Find(step);
        return before is not null && after is not null && before.Kind == after.Kind && before.Movement == after.Movement && before.Quantity == after.Quantity;
    }
}
