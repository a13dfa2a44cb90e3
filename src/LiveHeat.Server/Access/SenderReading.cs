using LiveHeat.Ledger.Registry;

namespace LiveHeat.Server.Access;

/// <summary>Finds out who sent a request. Asks the registry every time, so that a sign-in ends at once wherever it is ended.</summary>
internal sealed class SenderReading(RequestDelegate next, HeatRegistry registry, TimeProvider time)
{
    public async Task Invoke(HttpContext context)
    {
        if (SignInCookie.Token(context.Request) is { } token
            && await registry.SignIns.FindByToken(token, context.RequestAborted) is { } found
            && time.GetUtcNow().ToUnixTimeMilliseconds() - found.CreatedAt.UnixMs < SignInCookie.Lifetime.TotalMilliseconds)
        {
            context.SetSignedIn(new SignedIn(found.Id, found.Name, found.Role, found.Lane));
        }

        await next(context);
    }
}
