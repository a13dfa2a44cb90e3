[assembly: CollectionBehavior(MaxParallelThreads = 2)]

namespace LiveHeat.Browser;

/// <summary>
/// Tests of which the point is when something happens, or what a machine is put through: a second browser at work would only be in the way. The others do without it; they go two at a time, before these.
/// </summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class OneAtATime
{
    public const string Name = "one at a time";
}
