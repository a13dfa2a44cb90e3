using LiveHeat.Contracts.Sheets;

namespace LiveHeat.Rehearsal.Judging;

/// <summary>What all teams of a day share: a movement takes longer in this hall, or less long, than was expected of it.</summary>
/// <remarks>The spread is a guess from the floor: common practice, no source.</remarks>
/// <param name="seed">Another day.</param>
public sealed class FloorDay(int seed)
{
    private const double Spread = 0.12;

    /// <summary>How much longer a step takes than expected, of an expected team: about 1; of a tag or a finish it is 1.</summary>
    public double Factor(SheetStep step) => step.MovementId is { } movement ? Math.Exp(Spread * Seeds.For(seed, "day", movement).NextNormal()) : 1;
}
