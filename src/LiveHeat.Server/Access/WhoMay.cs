using LiveHeat.Engine;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Server.Access;

/// <summary>States who may call an endpoint or a hub method. Without a role: anybody, signed in or not. What states nothing is refused to all.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class WhoMayAttribute(params Role[] roles) : Attribute
{
    /// <summary>Those who may; empty when anybody may.</summary>
    public IReadOnlyList<Role> Roles => roles;

    /// <summary>Null when the sender may; otherwise the answer to give.</summary>
    public Problem? Refuse(SignedIn sender)
    {
        if (roles.Length == 0 || roles.Contains(Role.Viewer) || roles.Contains(sender.Role))
        {
            return null;
        }

        return sender.Id.Length == 0
            ? new Problem(StatusCodes.Status401Unauthorized, "not-signed-in", AccessRefusals.NotSignedIn(Those))
            : new Problem(StatusCodes.Status403Forbidden, "not-yours", AccessRefusals.NotYours(Those, sender.Role));
    }

    private Items<Telling> Those => roles.Select(AccessRefusals.Somebody).ToItems();
}

/// <summary>Says it where endpoints are mapped.</summary>
internal static class WhoMayStatements
{
    public static TBuilder WhoMay<TBuilder>(this TBuilder endpoint, params Role[] roles) where TBuilder : IEndpointConventionBuilder =>
        roles.Length == 0 ? throw new ArgumentException("Name the roles, or say that anyone may.", nameof(roles)) : endpoint.WithMetadata(new WhoMayAttribute(roles));

    public static TBuilder AnyoneMay<TBuilder>(this TBuilder endpoint) where TBuilder : IEndpointConventionBuilder =>
        endpoint.WithMetadata(new WhoMayAttribute());
}
