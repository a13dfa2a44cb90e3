using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Programme;

/// <summary>The list of heats.</summary>
/// <param name="Competition">The competition's name.</param>
/// <param name="Epoch">The ledger's id.</param>
/// <param name="Current">The heat a board shows by itself: the one called last; null when none was.</param>
/// <param name="ServerNow">The server's instant.</param>
/// <param name="Heats">In order of their number.</param>
public sealed record ProgramList(string Competition, string Epoch, HeatId? Current, Instant ServerNow, Items<ProgramHeat> Heats);

/// <summary>One heat of the list.</summary>
public sealed record ProgramHeat(HeatId Heat, int Number, string Title, string Workout, Instant? PlannedAt, Phase Phase, Items<ProgramLane> Lanes);

/// <summary>Who stands where.</summary>
public sealed record ProgramLane(LaneNumber Lane, string Name, string Division);
