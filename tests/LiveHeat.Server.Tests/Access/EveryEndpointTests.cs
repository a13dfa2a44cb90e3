using System.Reflection;
using LiveHeat.Testing.Hosting;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace LiveHeat.Server.Access;

public sealed class EveryEndpointTests
{
    /// <summary>
    /// Run from its build folder, the framework adds this for files that were put there after the build. It cannot be told who may, so nobody may;
    /// what is published does not have it.
    /// </summary>
    private const string AddedByTheFramework = "Fallback {**path:file}";

    [Fact]
    public void Every_endpoint_of_the_hub_states_who_may_call_it()
    {
        using var app = new LiveHeatApp();
        var endpoints = app.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>().ToList();

        Assert.Contains(endpoints, endpoint => endpoint.RoutePattern.RawText == "/api/heats/{heat}/taps");
        Assert.Equal([], endpoints.Where(endpoint => endpoint.Metadata.GetMetadata<WhoMayAttribute>() is null && endpoint.DisplayName != AddedByTheFramework)
            .Select(endpoint => endpoint.DisplayName));
    }

    [Fact]
    public void Every_method_that_can_be_called_on_a_hub_states_who_may()
    {
        var ours = typeof(Program).Assembly;
        var methods = ours.GetTypes()
            .Where(type => type.IsSubclassOf(typeof(Microsoft.AspNetCore.SignalR.Hub)))
            .SelectMany(hub => hub.GetMethods(BindingFlags.Instance | BindingFlags.Public))
            // Not what SignalR itself calls: what a hub inherits or overrides.
            .Where(method => method.GetBaseDefinition().DeclaringType!.Assembly == ours)
            .ToList();

        Assert.Contains(methods, method => method.Name == "WatchPhones");
        Assert.Equal([], methods.Where(method => method.GetCustomAttribute<WhoMayAttribute>() is null).Select(method => $"{method.DeclaringType!.Name}.{method.Name}"));
    }
}
