namespace LiveHeat.Screens.Announcer;

/// <summary>Names the resources beside it: what the announcer is told, in every language.</summary>
public sealed class Callouts;
