namespace LiveHeat.Server.Access;

/// <summary>
/// Marks an endpoint whose PUT takes bytes instead of JSON. A foreign page cannot send a PUT unasked either: the browser asks us first, and we never allow it.
/// Such an endpoint checks the bytes itself.
/// </summary>
internal sealed class TakesBytes;
