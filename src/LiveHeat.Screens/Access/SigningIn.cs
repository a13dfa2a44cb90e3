using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Access;

/// <summary>Signs this browser in and out; every store then sees the new sign-in.</summary>
public sealed class SigningIn(HeatApi api, Feed feed)
{
    /// <summary>As the organiser.</summary>
    /// <returns>What is wrong, for a person; null when it went well.</returns>
    public Task<string?> AsOrganiser(string passphrase, string name) => Take(api.SignIn(passphrase, name));

    /// <summary>With a join code, as typed: spaces, dashes and small letters are put right.</summary>
    public Task<string?> WithCode(string code, string name) => Take(api.Join(JoinCode.Clean(code), name));

    /// <summary>Ends the sign-in.</summary>
    public Task<string?> Out() => Take(api.SignOut());

    private async Task<string?> Take(Task<Reply<Done>> asked)
    {
        if ((await asked).Problem is { } problem)
        {
            return ProblemWords.WithCode(problem.Detail, problem.Code);
        }

        await feed.SignedInAnew();
        return null;
    }
}
