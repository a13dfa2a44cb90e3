using LiveHeat.Screens.Access;
using LiveHeat.Screens.Connection;

namespace LiveHeat.Screens.Judging;

/// <summary>Reads the judges' pages when somebody who may see them opens them.</summary>
public sealed class JudgesFeed(HeatApi api, SignInStore signIn, JudgesStore store)
{
    private bool asked;

    public JudgesStore Store => store;

    public SignInStore SignIn => signIn;

    /// <summary>Reads now, or once it is known who this is.</summary>
    public void Open(Action draw)
    {
        asked = false;
        store.Changed += draw;
        signIn.Changed += draw;
        signIn.Changed += Follow;
        Follow();
    }

    /// <summary>Lets go of all that <see cref="Open"/> took.</summary>
    public void Close(Action draw)
    {
        store.Changed -= draw;
        signIn.Changed -= draw;
        signIn.Changed -= Follow;
    }

    private void Follow()
    {
        if (!asked && signIn.MayRule)
        {
            asked = true;
            _ = Read();
        }
    }

    private async Task Read() => store.Take(await api.Judges());
}
