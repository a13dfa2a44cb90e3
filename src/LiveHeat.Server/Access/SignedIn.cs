using LiveHeat.Engine.Heats;

namespace LiveHeat.Server.Access;

/// <summary>Who sent a request.</summary>
/// <param name="Id">The sign-in; empty for somebody who only looks.</param>
/// <param name="Name">The name they gave; empty for somebody who only looks.</param>
/// <param name="Role">What they may do.</param>
/// <param name="Lane">A judge's lane; null for others.</param>
public sealed record SignedIn(string Id, string Name, Role Role, LaneNumber? Lane)
{
    /// <summary>Somebody without a sign-in.</summary>
    public static readonly SignedIn Nobody = new("", "", Role.Viewer, null);

    /// <summary>As facts name them.</summary>
    public By By() => new(Id, Name, Role);
}

/// <summary>Where a request keeps its sender.</summary>
internal static class RequestSender
{
    private static readonly object Key = new();

    /// <summary>Who sent it. On a hub: whoever opened the connection.</summary>
    public static SignedIn SignedIn(this HttpContext context) =>
        context.Items.TryGetValue(Key, out var sender) && sender is SignedIn known ? known : Access.SignedIn.Nobody;

    internal static void SetSignedIn(this HttpContext context, SignedIn sender) => context.Items[Key] = sender;
}
