using LiveHeat.Contracts.Forecasts;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Programme;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Access;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Forecasts;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Introductions;
using LiveHeat.Screens.Replays;

namespace LiveHeat.Screens.Announcer;

/// <summary>All that the announcer sees: the heat that is on, or one that is played again, with one event for all of it.</summary>
public sealed class AnnouncerView(
    HeatStore heat, ForecastStore forecast, SaidStore said, IntroductionStore introductions, ProgramStore program, SignInStore signIn, Feed feed, ReplayFeed replay)
{
    private const int OverShown = 2;
    private readonly PlaceTrend trend = new();

    public HeatStore Heat => heat;

    public ProgramStore Program => program;

    public ReplayStore Replay => replay.Store;

    /// <summary>How to say the teams' names, and what to say of them.</summary>
    public IntroductionStore Introductions => introductions;

    /// <summary>What is foretold of the heat that is on; null while it is not known, grew old, or a heat is played again.</summary>
    public ForecastFrame? Foretold => !Replaying && heat.Frame is { } frame ? forecast.Of(frame.Heat, HeatTime.IsLive(heat.Phase), heat.Clock.Now) : null;

    /// <summary>Worth saying and not said yet, the next thing first.</summary>
    public IReadOnlyList<Callout> ToSay => Foretold is { } frame ? said.ToSay(frame, heat.Clock.Now) : [];

    /// <summary>A heat is played again: nothing on the screen is live.</summary>
    public bool Replaying => Replay.Heat is not null;

    /// <summary>What is drawn.</summary>
    public HeatScene Scene => Replaying ? Replay.Scene : heat.Scene;

    /// <summary>Heats to turn to: those that are called or live, the last that wait for their signatures, and the one on the screen.</summary>
    public IReadOnlyList<ProgramHeat> Heats
    {
        get
        {
            var all = (program.List?.Heats ?? []).OrderBy(one => one.Number).ToList();
            var over = all.Where(one => one.Phase is Phase.Ended or Phase.Frozen).TakeLast(OverShown).ToList();
            return [.. all.Where(one => one.Phase is Phase.Called or Phase.Armed || HeatTime.IsLive(one.Phase) || over.Contains(one) || one.Heat == heat.Frame?.Heat)];
        }
    }

    /// <summary>It stays with a heat that was picked, whatever the floor does.</summary>
    public bool Stays => heat.Following is not (null or HeatConnection.Current);

    /// <summary>Playing again is for those who work here.</summary>
    public bool MayReplay => signIn.Me?.Role is Role.Announcer or Role.Organiser or Role.HeadJudge;

    /// <summary>Begins to draw at every change of anything here, and follows the heat that is on.</summary>
    public Task Open(Action draw)
    {
        heat.Changed += draw;
        program.Changed += draw;
        signIn.Changed += draw;
        Replay.Changed += draw;
        forecast.Changed += draw;
        said.Changed += draw;
        introductions.Changed += draw;
        heat.Changed += Note;
        heat.Changed += Introduce;
        forecast.Changed += Recall;
        Recall();
        return FollowFloor();
    }

    /// <summary>Lets go of all that <see cref="Open"/> took.</summary>
    public void Close(Action draw)
    {
        heat.Changed -= draw;
        program.Changed -= draw;
        signIn.Changed -= draw;
        Replay.Changed -= draw;
        forecast.Changed -= draw;
        said.Changed -= draw;
        introductions.Changed -= draw;
        heat.Changed -= Note;
        heat.Changed -= Introduce;
        forecast.Changed -= Recall;
        Replay.Close();
    }

    /// <summary>What is foretold of a lane; null where nothing is.</summary>
    public RowOutlook? OutlookOf(LaneNumber lane) => Foretold is not { } frame ? null : RowOutlook.Of(
        frame.Lanes.FirstOrDefault(one => one.Lane == lane), frame.Tags.Cast<TagOutlook?>().FirstOrDefault(tag => tag!.Lane == lane), trend.Gained(lane, heat.Clock.Now), heat.Clock.Now);

    /// <summary>It was said: it does not come back.</summary>
    public Task Said(string id) => Foretold is { } frame ? said.Said(frame, id) : Task.CompletedTask;

    /// <summary>Plays a heat again, from a little before its GO.</summary>
    public async Task Play(HeatId id, ReplayBy by)
    {
        await replay.Open(id, by, -ReplayStore.LeadMs);
        if (Replay.Heat == id && Replay is { IsHere: true, Player.Playing: false })
        {
            Replay.Toggle();
        }
    }

    /// <summary>Turns to a heat and stays with it; to the one that is on, and follows the floor again.</summary>
    public Task Turn(HeatId id) => id == program.List?.Current ? FollowFloor() : feed.Follow(id.Value);

    /// <summary>Follows the heat that is on, and the next after it.</summary>
    public async Task FollowFloor()
    {
        await feed.Follow(HeatConnection.Current);
        await feed.FollowForecast();
    }

    private void Note()
    {
        if (heat.Frame is { } frame)
        {
            trend.Take(frame);
        }
    }

    /// <summary>Once a heat, and only for who may know.</summary>
    private void Introduce()
    {
        if (MayReplay && heat.Frame is { } frame)
        {
            _ = introductions.ReadFor(frame.Heat);
        }
    }

    private void Recall()
    {
        if (forecast.Frame is { } frame)
        {
            _ = said.ReadFor(frame);
        }
    }

    /// <summary>Back to the heat that is on.</summary>
    public void GoLive() => Replay.Close();
}
