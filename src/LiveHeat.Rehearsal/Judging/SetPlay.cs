namespace LiveHeat.Rehearsal.Judging;

/// <summary>What a judge does with a finger.</summary>
public enum Deed
{
    /// <summary>The step is complete: done, tag made, value entered.</summary>
    Done,

    /// <summary>So many units are done.</summary>
    Count,

    /// <summary>A rep does not count.</summary>
    NoRep,

    /// <summary>The tag does not count.</summary>
    TagFault,

    /// <summary>The last deed was wrong.</summary>
    Undo,
}

/// <summary>One deed of the judge.</summary>
/// <param name="AtMs">From the step's beginning, milliseconds of work; later than what it tells by the judge's reaction.</param>
/// <param name="Deed">What.</param>
/// <param name="Count">With <see cref="Deed.Count"/>.</param>
/// <param name="Fault">With a fault; null when the judge names none.</param>
public readonly record struct Moment(double AtMs, Deed Deed, int Count = 0, string? Fault = null);

/// <summary>One step as it will go: what the team does and what its judge makes of it.</summary>
/// <param name="EndMs">When it is complete, milliseconds of work from its beginning.</param>
/// <param name="UnitAtMs">When each unit that counts is done; empty for a tag or finish.</param>
/// <param name="Moments">The judge's deeds in order; the last is <see cref="Deed.Done"/>.</param>
public sealed record SetPlay(double EndMs, IReadOnlyList<double> UnitAtMs, IReadOnlyList<Moment> Moments)
{
    /// <summary>Units done after so much work.</summary>
    public int UnitsAt(double workedMs) => UnitAtMs.Count(at => at <= workedMs);
}
