using LiveHeat.Contracts.Access;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Ledger.Registry;

namespace LiveHeat.Server.Access;

/// <summary>Lets people in: by the passphrase or by a code.</summary>
internal sealed class Entrance(HeatRegistry registry, WrongTries tries, OpenConnections connections)
{
    /// <summary>With the passphrase, as organiser.</summary>
    public Task<IResult> SignIn(HttpContext context, SignInRequest request) => Named(context, request.Name, async (device, name) =>
    {
        if (tries.Begin(device) is { } wait)
        {
            return SlowDown(wait);
        }

        if (!await registry.Passphrase.Verify(request.Passphrase, context.RequestAborted))
        {
            return Wrong(device, "wrong-passphrase", AccessRefusals.WrongPassphrase);
        }

        tries.Forgive(device);
        return await Let(context, device, name, Role.Organiser, null);
    });

    /// <summary>With a code, as what the code is for. The code stays good for the next phone.</summary>
    public Task<IResult> Join(HttpContext context, JoinRequest request) => Named(context, request.Name, async (device, name) =>
    {
        if (CodeText.Normalise(request.Code, JoinCodes.Length) is null)
        {
            // No guess, so nobody waits for it.
            return Problems.Of(StatusCodes.Status403Forbidden, "wrong-code", AccessRefusals.NoCode(JoinCodes.Length));
        }

        if (tries.Begin(device) is { } wait)
        {
            return SlowDown(wait);
        }

        switch (await registry.JoinCodes.Check(request.Code, context.RequestAborted))
        {
            case CodeCheck.Good { Code: var code }:
                tries.Forgive(device);
                return await Let(context, device, name, code.Role, code.Lane);
            case CodeCheck.Over:
                tries.Forgive(device);
                return Problems.Of(StatusCodes.Status403Forbidden, "code-expired", AccessRefusals.CodeOver);
            default:
                return Wrong(device, "wrong-code", AccessRefusals.WrongCode);
        }
    });

    /// <summary>Ends the sign-in, also for whoever copied the cookie.</summary>
    public async Task<IResult> SignOut(HttpContext context)
    {
        if (context.SignedIn() is { Id.Length: > 0 } sender)
        {
            await registry.SignIns.Revoke(sender.Id, context.RequestAborted);
            connections.Close(sender.Id);
        }

        SignInCookie.Forget(context);
        return Results.Json(Me(Access.SignedIn.Nobody), Contracts.Wire.WireJson.Options);
    }

    public static Me Me(SignedIn sender) => new(sender.Role, sender.Name, sender.Lane, sender.Id);

    private static async Task<IResult> Named(HttpContext context, string? typed, Func<string, string, Task<IResult>> next)
    {
        var name = typed?.Trim();
        return PlainText.Wrong(AccessRefusals.YourName, name) is { } wrong
            ? Problems.Of(StatusCodes.Status400BadRequest, "bad-name", wrong)
            : await next(SignInCookie.Device(context), name!);
    }

    private async Task<IResult> Let(HttpContext context, string device, string name, Role role, LaneNumber? lane)
    {
        var before = context.SignedIn();
        if (before.Id.Length > 0 && before == new SignedIn(before.Id, name, role, lane))
        {
            // Sent twice, or the page was opened again: a judge keeps the seat.
            return Results.Json(Me(before), Contracts.Wire.WireJson.Options);
        }

        var made = await registry.SignIns.Make(device, name, role, lane, context.RequestAborted);
        SignInCookie.SetToken(context, made.Token);
        if (before.Id.Length > 0)
        {
            // One sign-in a browser: the new cookie takes the place of the old, which then is nobody's.
            await registry.SignIns.Revoke(before.Id, CancellationToken.None);
            // Not before the new cookie is there, or a screen would come back with the old one.
            context.Response.OnCompleted(() =>
            {
                connections.Close(before.Id);
                return Task.CompletedTask;
            });
        }

        return Results.Json(Me(new SignedIn(made.SignIn.Id, name, role, lane)), Contracts.Wire.WireJson.Options);
    }

    private IResult Wrong(string device, string code, Telling why) =>
        tries.AfterWrong(device) is { } wait ? SlowDown(wait) : Problems.Of(StatusCodes.Status403Forbidden, code, why);

    private static Problem SlowDown(TimeSpan wait) => new(
        StatusCodes.Status429TooManyRequests, "slow-down",
        AccessRefusals.SlowDown(Math.Max(1, (int)Math.Ceiling(wait.TotalSeconds))))
    {
        RetryAfter = wait,
    };
}
