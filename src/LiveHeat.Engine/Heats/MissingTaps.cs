using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Heats;

/// <summary>Taps that a phone is known to hold and has not sent.</summary>
/// <param name="Lane">The phone's lane.</param>
/// <param name="Taps">How many, from 1.</param>
/// <param name="LastSeen">When the phone last said anything.</param>
public sealed record MissingTaps(LaneNumber Lane, int Taps, Instant LastSeen);
