using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Access;

/// <summary>POST /api/sign-in.</summary>
public sealed record SignInRequest(string Passphrase, string Name);

/// <summary>POST /api/join.</summary>
public sealed record JoinRequest(string Code, string Name);

/// <summary>Who is signed in.</summary>
public sealed record Me(Role Role, string Name, LaneNumber? Lane, string SignIn);

/// <summary>POST /api/codes.</summary>
/// <param name="Role">Judge, head judge or announcer.</param>
/// <param name="Lane">For a judge.</param>
/// <param name="Minutes">How long it works, 1 to 2880.</param>
public sealed record CodeRequest(Role Role, LaneNumber? Lane, int Minutes = 720);

/// <summary>A new join code, told once.</summary>
public sealed record CodeMade(string Code, string Url, Role Role, LaneNumber? Lane, Instant ExpiresAt);

/// <summary>GET /api/pad: where the judge's lane is now. The duty is the seat's.</summary>
public sealed record PadState(
    string Epoch, string Competition, LaneNumber Lane, string Judge, PadHeat? Heat, SeatId? Seat, Duty? Duty, Items<HeatId> Certified, string Build);

/// <summary>The heat a lane is in.</summary>
public sealed record PadHeat(HeatId Id, string Title, Phase Phase);
