using LiveHeat.Engine.Heats;

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

    /// <summary>The load of an attempt, in the step's unit; null when none is written.</summary>
    public decimal? Load { get; init; }

    /// <summary>The attempt was a good lift, or no lift; null when neither is marked.</summary>
    public bool? Good { get; init; }

    /// <summary>Who did how much of a set that the team shares; empty when nobody wrote it, and then nothing is compared.</summary>
    public Items<Share> Shares { get; init; }

    /// <summary>It has a reading or an attempt: what no later step implies.</summary>
    internal bool Enters => Value is not null || (Load is not null && Good is not null);

    /// <summary>Strokes on the no-rep line; null when the person at the desk left it out: then nothing is compared.</summary>
    public int? NoReps { get; init; }
}

/// <summary>How much was done of the set that was open when a round by the clock was over.</summary>
/// <param name="Round">The round, from 1.</param>
/// <param name="Units">Units of the first step of the round that is not done.</param>
public readonly record struct LeftOpen(int Round, int Units);

/// <summary>A paper scorecard as it was typed in.</summary>
/// <param name="Lines">By step; steps of which nothing is written may be left out.</param>
/// <param name="AtCap">Units of the first step that is not done; null when not written, and where every round ends by the clock.</param>
public sealed record PaperCard(Items<PaperLine> Lines, int? AtCap)
{
    /// <summary>A card with nothing on it.</summary>
    public static readonly PaperCard Empty = new([], null);

    /// <summary>What was open at the end of rounds by the clock; rounds of which nothing is written are left out.</summary>
    public Items<LeftOpen> AtEnds { get; init; }

    /// <summary>The last step done; 0 when none is.</summary>
    public int DoneSteps => Lines.Where(line => line.Done).Select(line => line.Step).DefaultIfEmpty(0).Max();

    /// <summary>Nothing is written on it.</summary>
    public bool IsEmpty => AtCap is null && AtEnds.Count == 0 && Lines.All(line => !line.Done && line.Time is null && line.NoReps is null && line.Value is null && line.Load is null && line.Good is null && line.Shares.Count == 0);

    /// <summary>What it says of a step; null when nothing.</summary>
    public PaperLine? Find(int step) => Lines.FirstOrDefault(line => line.Step == step);
}
