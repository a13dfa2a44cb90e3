namespace LiveHeat.Server.Setup;

internal static class SetupEndpoints
{
    public static IEndpointRouteBuilder MapSetup(this IEndpointRouteBuilder app) => app;
}
