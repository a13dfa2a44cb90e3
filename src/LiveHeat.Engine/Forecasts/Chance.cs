namespace LiveHeat.Engine.Forecasts;

/// <summary>Numbers that look drawn by chance and follow from a seed alone, on every machine alike.</summary>
/// <remarks>SplitMix64 (Steele, Lea, Flood, OOPSLA 2014; constants from memory).</remarks>
public sealed class Chance(long seed)
{
    private ulong state = unchecked((ulong)seed);

    /// <summary>From 0 to below 1, in steps of 2^-53.</summary>
    public double Share()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var mixed = state;
            mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
            return ((mixed ^ (mixed >> 31)) >> 11) * (1.0 / (1UL << 53));
        }
    }

    /// <summary>Standard normal, by Box and Muller's way.</summary>
    public double Normal() => Math.Sqrt(-2 * Math.Log(1 - Share())) * Math.Cos(2 * Math.PI * Share());
}
