[assembly: CollectionBehavior(MaxParallelThreads = 2)]

namespace LiveHeat.Browser;

/// <summary>
/// Tests that look at when something happens, in which a second browser at work would only be in the way. Those that look at how something lies on a page do without it: they go two at a time, before these.
/// </summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class OneAtATime
{
    public const string Name = "one at a time";
}
