using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Access;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Replays;

namespace LiveHeat.Screens.Announcer;

/// <summary>All that the announcer sees: the heat that is on, or one that is played again, with one event for all of it.</summary>
public sealed class AnnouncerView(HeatStore heat, ProgramStore program, SignInStore signIn, Feed feed, ReplayFeed replay)
{
    public HeatStore Heat => heat;

    public ProgramStore Program => program;

    public ReplayStore Replay => replay.Store;

    /// <summary>A heat is played again: nothing on the screen is live.</summary>
    public bool Replaying => Replay.Heat is not null;

    /// <summary>What is drawn.</summary>
    public HeatScene Scene => Replaying ? Replay.Scene : heat.Scene;

    /// <summary>Playing again is for those who work here.</summary>
    public bool MayReplay => signIn.Me?.Role is Role.Announcer or Role.Organiser or Role.HeadJudge;

    /// <summary>Begins to draw at every change of anything here, and follows the heat that is on.</summary>
    public Task Open(Action draw)
    {
        heat.Changed += draw;
        program.Changed += draw;
        signIn.Changed += draw;
        Replay.Changed += draw;
        return feed.Follow(HeatConnection.Current);
    }

    /// <summary>Lets go of all that <see cref="Open"/> took.</summary>
    public void Close(Action draw)
    {
        heat.Changed -= draw;
        program.Changed -= draw;
        signIn.Changed -= draw;
        Replay.Changed -= draw;
        Replay.Close();
    }

    /// <summary>Plays a heat again, from a little before its GO.</summary>
    public async Task Play(HeatId id, ReplayBy by)
    {
        await replay.Open(id, by, -ReplayStore.LeadMs);
        if (Replay.Heat == id && Replay is { IsHere: true, Player.Playing: false })
        {
            Replay.Toggle();
        }
    }

    /// <summary>Back to the heat that is on.</summary>
    public void GoLive() => Replay.Close();
}
