namespace LiveHeat.Engine.Heats;

/// <summary>Where a heat is on its way from the list to the signed result.</summary>
public enum Phase
{
    /// <summary>On the list only.</summary>
    Planned,

    /// <summary>Called: teams to their lanes, judges to their phones.</summary>
    Called,

    /// <summary>All lanes are ready, overridden or withdrawn.</summary>
    Armed,

    /// <summary>GO is set to an instant ahead.</summary>
    CountingDown,

    /// <summary>The clock runs.</summary>
    Running,

    /// <summary>Everybody stands; so does the clock.</summary>
    Halted,

    /// <summary>Over; facts still come in.</summary>
    Ended,

    /// <summary>Closed for review.</summary>
    Frozen,

    /// <summary>Signed by organiser and head judge.</summary>
    Certified,
}
