using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Rehearsal.Judging;

/// <summary>What befalls a lane in one heat.</summary>
/// <param name="Strength">The team's pace: 1 is as expected, more is slower.</param>
/// <param name="Tiring">What its last set takes longer than its first, as a share.</param>
/// <param name="NetworkLostAt">The step in which the phone loses its network; null: never.</param>
/// <param name="CallsAt">The step in which the judge calls the head judge; null: never.</param>
public sealed record LaneStory(double Strength, double Tiring, int? NetworkLostAt = null, int? CallsAt = null)
{
    /// <summary>How long a phone is without network.</summary>
    public static readonly TimeSpan NetworkLostFor = TimeSpan.FromSeconds(40);

    // Guesses from the floor: common practice, no source. The cap lies where about eight teams of ten make it.
    private const double StrengthSpread = 0.11;
    private const double ShareOfCap = 0.86;
    private const double MeanTiring = 0.12;
    private const double TiringSpread = 0.06;

    /// <summary>The stories of a heat's lanes: one team fights the cap and hardly makes it, one phone loses its network, one judge calls the head judge.</summary>
    /// <param name="sheet">The heat.</param>
    /// <param name="day">How movements go there.</param>
    /// <param name="seed">The same seed tells the same stories.</param>
    /// <param name="spared">A lane that is to have no trouble of its own; null: none.</param>
    public static IReadOnlyDictionary<LaneNumber, LaneStory> Of(Sheet sheet, FloorDay day, int seed, LaneNumber? spared)
    {
        var random = Seeds.For(seed, sheet.Heat.Value, "stories");
        var troubled = sheet.Lanes.Where(lane => lane.Lane != spared).ToArray();
        random.Shuffle(troubled);
        return sheet.Lanes.ToDictionary(lane => lane.Lane, lane =>
        {
            var tiring = Math.Max(0, MeanTiring + (TiringSpread * random.NextNormal()));
            var onTheCap = lane.CapMs / ((1 + (tiring / 3)) * lane.Steps.Sum(step => step.ExpectedMs * day.Factor(step)));
            var usual = onTheCap * ShareOfCap * Math.Exp(StrengthSpread * random.NextNormal());
            var late = onTheCap * random.Between(1.02, 1.12);
            return Array.IndexOf(troubled, lane) switch
            {
                0 => new LaneStory(late, tiring),
                1 => new LaneStory(usual, tiring, NetworkLostAt: (lane.Steps.Count / 3) + 1),
                2 => new LaneStory(usual, tiring, CallsAt: (lane.Steps.Count / 2) + 1),
                _ => new LaneStory(usual, tiring),
            };
        });
    }
}

/// <summary>Chance from a seed and what it is for, the same on every machine.</summary>
internal static class Seeds
{
    public static Random For(int seed, params ReadOnlySpan<string> purpose)
    {
        // FNV-1a, 32 bits: string.GetHashCode differs from run to run.
        var hash = 2166136261u ^ (uint)seed;
        foreach (var c in string.Join('/', purpose!))
        {
            hash = (hash ^ c) * 16777619u;
        }

        return new Random((int)hash);
    }
}
