using System.Reflection;
using LiveHeat.Contracts.Language;
using LiveHeat.Ledger.Registry;
using Microsoft.AspNetCore.SignalR;

namespace LiveHeat.Server.Access;

/// <summary>The same for the methods of a hub. A refusal reaches the caller as "code: sentence".</summary>
internal sealed class WhoMayFilter(HeatRegistry registry, OpenConnections connections, ILogger<WhoMayFilter> log) : IHubFilter
{
    public async ValueTask<object?> InvokeMethodAsync(HubInvocationContext invocationContext, Func<HubInvocationContext, ValueTask<object?>> next)
    {
        var method = invocationContext.HubMethod;
        if (method.GetCustomAttribute<WhoMayAttribute>() is not { } may)
        {
            log.LogError("{Method} of the hub does not state who may call it, so nobody may", method.Name);
            throw new HubException($"not-yours: {AccessRefusals.NobodyMayCall.Sentence()}");
        }

        if (may.Roles.Count > 0 && may.Refuse(await Now(invocationContext.Context)) is { } refusal)
        {
            throw new HubException($"{refusal.Code}: {refusal.Detail}");
        }

        return await next(invocationContext);
    }

    public Task OnConnectedAsync(HubLifetimeContext context, Func<HubLifetimeContext, Task> next)
    {
        connections.Opened(Sender(context.Context).Id, context.Context);
        return next(context);
    }

    public Task OnDisconnectedAsync(HubLifetimeContext context, Exception? exception, Func<HubLifetimeContext, Exception?, Task> next)
    {
        connections.Gone(context.Context);
        return next(context, exception);
    }

    private static SignedIn Sender(HubCallerContext context) => context.GetHttpContext()?.SignedIn() ?? SignedIn.Nobody;

    /// <summary>A connection may be older than the end of its sign-in, which another server may have taken.</summary>
    private async Task<SignedIn> Now(HubCallerContext context)
    {
        var sender = Sender(context);
        return sender.Id.Length > 0 && await registry.SignIns.Find(sender.Id, context.ConnectionAborted) is { RevokedAt: null } ? sender : SignedIn.Nobody;
    }
}
