using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Programme;

/// <summary>The list of heats.</summary>
/// <param name="Competition">The competition's name.</param>
/// <param name="Epoch">The ledger's id.</param>
/// <param name="Current">The heat a board shows by itself: the live one, else the one called last; null when none was called.</param>
/// <param name="ServerNow">The server's instant.</param>
/// <param name="Heats">In order of their number.</param>
public sealed record ProgramList(string Competition, string Epoch, HeatId? Current, Instant ServerNow, Items<ProgramHeat> Heats)
{
    /// <summary>What boards show to the hall now instead of their pages; null for nothing. Absent when null.</summary>
    public BoardMessage? Message { get; init; }

    /// <summary>How large the board is and from how far it is read. Absent when nobody has measured it.</summary>
    public Setup.ScreenSize? Screen { get; init; }
}

/// <summary>What the organiser tells the hall: a pause, a change of plan.</summary>
/// <param name="Text">One line, up to 160 characters; empty takes the message away.</param>
/// <param name="Until">Until when boards show it; null: until it is taken away.</param>
public sealed record BoardMessage(string Text, Instant? Until = null);

/// <summary>One heat of the list.</summary>
public sealed record ProgramHeat(HeatId Heat, int Number, string Title, string Workout, Instant? PlannedAt, Phase Phase, Items<ProgramLane> Lanes);

/// <summary>Who stands where.</summary>
public sealed record ProgramLane(LaneNumber Lane, string Name, string Division);
