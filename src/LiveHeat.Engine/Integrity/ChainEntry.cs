using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Integrity;

/// <summary>What a line of the ledger says, apart from the chain.</summary>
/// <param name="Heat">The heat it belongs to.</param>
/// <param name="Sequence">Its number within the heat, from 1 without gaps.</param>
/// <param name="Id">The fact's own id.</param>
/// <param name="Sender">The sign-in that sent it.</param>
/// <param name="ReceivedAt">When the server had it.</param>
/// <param name="BodyHash">SHA-256 of what the sender sent, in hex.</param>
/// <param name="Body">The fact as stored, to the byte: a text here and not a value, so that a blank put into it is found too.</param>
public readonly record struct ChainEntry(
    HeatId Heat, long Sequence, FactId Id, string Sender, Instant ReceivedAt, string BodyHash, string Body);

/// <summary>An entry with its place in the chain.</summary>
/// <param name="Entry">What the line says.</param>
/// <param name="PreviousHash">The hash of the line before, <see cref="HashChain.Start"/> for the first.</param>
/// <param name="Hash">The hash of this line, which covers <paramref name="PreviousHash"/>.</param>
public readonly record struct ChainLink(ChainEntry Entry, string PreviousHash, string Hash);
