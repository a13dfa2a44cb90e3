namespace LiveHeat.Engine.Paper;

/// <summary>A time as it stands on a card: read off the floor's clock, so it is heat time.</summary>
/// <param name="HeatMs">Milliseconds after GO, halts left out.</param>
/// <param name="WithinMs">How far the true one may lie from it, either way.</param>
public readonly record struct PaperTime(long HeatMs, int WithinMs)
{
    /// <summary>Read off a clock and written down, to the tenth; from memory.</summary>
    public const int TenthsMs = 500;

    /// <summary>The same to the whole second: the clock had cut off up to one more half.</summary>
    public const int SecondsMs = 1000;
}

/// <summary>What a card says of one step.</summary>
/// <param name="Step">Its number in the lane's plan.</param>
/// <param name="Done">Marked as complete; all before it are complete too.</param>
public sealed record PaperLine(int Step, bool Done)
{
    /// <summary>When; null when no time is written.</summary>
    public PaperTime? Time { get; init; }

    /// <summary>The reading of a value step; null when none is written.</summary>
    public decimal? Value { get; init; }

    /// <summary>Strokes on the no-rep line; null when the person at the desk left it out: then nothing is compared.</summary>
    public int? NoReps { get; init; }
}

/// <summary>A paper scorecard as it was typed in.</summary>
/// <param name="Lines">By step; steps of which nothing is written may be left out.</param>
/// <param name="AtCap">Units of the first step that is not done; null when not written.</param>
public sealed record PaperCard(Items<PaperLine> Lines, int? AtCap)
{
    /// <summary>A card with nothing on it.</summary>
    public static readonly PaperCard Empty = new([], null);

    /// <summary>The last step done; 0 when none is.</summary>
    public int DoneSteps => Lines.Where(line => line.Done).Select(line => line.Step).DefaultIfEmpty(0).Max();

    /// <summary>Nothing is written on it.</summary>
    public bool IsEmpty => AtCap is null && Lines.All(line => !line.Done && line.Time is null && line.Value is null && line.NoReps is null);

    /// <summary>What it says of a step; null when nothing.</summary>
    public PaperLine? Find(int step) => Lines.FirstOrDefault(line => line.Step == step);
}
