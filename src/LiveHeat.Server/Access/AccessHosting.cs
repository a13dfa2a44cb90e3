using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace LiveHeat.Server.Access;

/// <summary>Puts access into a host that has a <see cref="Ledger.Registry.HeatRegistry"/>.</summary>
internal static class AccessHosting
{
    public static IServiceCollection AddAccess(this IServiceCollection services)
    {
        services.TryAddSingleton(TimeProvider.System);
        services.TryAddSingleton<OpenConnections>();
        services.TryAddSingleton<OrganiserPassphrase>();
        services.TryAddSingleton<WhoMayFilter>();
        services.TryAddSingleton<WrongTries>();
        services.TryAddSingleton<Entrance>();
        // A body that the framework cannot bind comes to BadRequests, which says where it goes wrong.
        services.Configure<RouteHandlerOptions>(options => options.ThrowOnBadRequest = true);
        return services.ConfigureHttpJsonOptions(json =>
        {
            if (!json.SerializerOptions.Converters.Any(converter => converter.CanConvert(typeof(LaneNumber))))
            {
                WireJson.Apply(json.SerializerOptions);
            }
        });
    }

    /// <summary>Comes before all that answers. Behind a proxy, whatever reads the forwarded scheme and host comes before this.</summary>
    public static IApplicationBuilder UseAccess(this IApplicationBuilder app) => app
        .UseMiddleware<BadRequests>()
        .UseMiddleware<SenderReading>()
        .UseMiddleware<OwnOrigin>()
        .UseMiddleware<WhoMayGate>();
}
