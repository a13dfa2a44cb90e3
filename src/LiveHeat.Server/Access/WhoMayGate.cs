namespace LiveHeat.Server.Access;

/// <summary>Lets through whom the endpoint names.</summary>
internal sealed class WhoMayGate(RequestDelegate next, ILogger<WhoMayGate> log)
{
    public Task Invoke(HttpContext context)
    {
        // Routing's own answers ("405", "415") are endpoints without a route; they do nothing for anybody.
        if (context.GetEndpoint() is not RouteEndpoint endpoint)
        {
            return next(context);
        }

        if (endpoint.Metadata.GetMetadata<WhoMayAttribute>() is not { } may)
        {
            log.LogError("{Endpoint} does not state who may call it, so nobody may", endpoint.DisplayName);
            return new Problem(StatusCodes.Status403Forbidden, "not-yours", AccessRefusals.NobodyMayUse).ExecuteAsync(context);
        }

        return may.Refuse(context.SignedIn()) is { } refusal ? refusal.ExecuteAsync(context) : next(context);
    }
}
