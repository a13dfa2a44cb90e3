namespace LiveHeat.Engine.Workouts;

/// <summary>A named reason for a no-rep, and what was seen when it is given.</summary>
/// <param name="Name">The words of the button, short.</param>
/// <param name="How">What was wrong, in one sentence.</param>
public sealed record NamedFault(string Name, string How);

/// <summary>What a good rep is, part by part: what judges are held to.</summary>
/// <param name="Start">The position from which it begins.</param>
/// <param name="Finish">The position in which it counts.</param>
/// <param name="Between">What must hold on the way, one sentence each.</param>
/// <param name="Allowed">What looks doubtful and is expressly allowed, one sentence each.</param>
/// <param name="Faults">What the names of the faults mean; a fault without a line here needs none.</param>
/// <param name="Caution">Said at the briefing; null when there is nothing to say.</param>
/// <param name="Picture">The address of a picture on this server; null when there is none.</param>
public sealed record Standard(
    string Start, string Finish, Items<string> Between, Items<string> Allowed, Items<NamedFault> Faults, string? Caution = null, string? Picture = null)
{
    /// <summary>From where to where, in a line, for where there is room for no more.</summary>
    public string InShort() => $"{Start} → {Finish}";
}
