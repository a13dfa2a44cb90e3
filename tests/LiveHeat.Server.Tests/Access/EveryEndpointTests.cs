using System.Reflection;
using LiveHeat.Testing.Hosting;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.SignalR;
using Microsoft.Extensions.DependencyInjection;

namespace LiveHeat.Server.Access;

public sealed class EveryEndpointTests
{
    [Fact]
    public void Every_endpoint_of_the_hub_states_who_may_call_it()
    {
        using var app = new LiveHeatApp();
        var endpoints = app.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>().ToList();

        Assert.Contains(endpoints, endpoint => endpoint.RoutePattern.RawText == "/api/heats/{heat}/taps");
        Assert.Empty(endpoints.Where(endpoint => endpoint.Metadata.GetMetadata<WhoMayAttribute>() is null).Select(endpoint => endpoint.DisplayName));
    }

    [Fact]
    public void Every_method_that_can_be_called_on_a_hub_states_who_may()
    {
        var methods = typeof(Program).Assembly.GetTypes()
            .Where(type => type.IsSubclassOf(typeof(Microsoft.AspNetCore.SignalR.Hub)))
            .SelectMany(hub => hub.GetMethods(BindingFlags.Instance | BindingFlags.Public))
            .Where(method => method.GetBaseDefinition().DeclaringType is { } declaring && declaring.IsSubclassOf(typeof(Microsoft.AspNetCore.SignalR.Hub)))
            .Where(method => !method.IsSpecialName)
            .ToList();

        Assert.Contains(methods, method => method.Name == "WatchPhones");
        Assert.Empty(methods.Where(method => method.GetCustomAttribute<WhoMayAttribute>() is null).Select(method => $"{method.DeclaringType!.Name}.{method.Name}"));
    }
}
