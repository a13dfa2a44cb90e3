using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Phones;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Connection;

namespace LiveHeat.Screens.Heats;

/// <summary>The heat that this screen follows, as last heard. It keeps the last good state and never blanks.</summary>
public sealed class HeatStore(ServerClock clock, TimeProvider time)
{
    private long? heardAt;
    private long lostAt = time.GetTimestamp();

    /// <summary>Anything here changed.</summary>
    public event Action? Changed;

    /// <summary>The heat followed: an id, "current", or null.</summary>
    public string? Following { get; private set; }

    /// <summary>The newest frame; null before the heat's first.</summary>
    public Frame? Frame { get; private set; }

    /// <summary>What is to be done; null before the call.</summary>
    public Sheet? Sheet { get; private set; }

    /// <summary>All phones, as far as this sign-in may see them.</summary>
    public IReadOnlyList<PhoneSeen> Phones { get; private set; } = [];

    /// <summary>How the link is.</summary>
    public LinkState Link { get; private set; }

    /// <summary>The first answer for this heat came, even if it was that there is nothing yet.</summary>
    public bool Asked { get; private set; }

    /// <summary>The server's time on this device.</summary>
    public ServerClock Clock => clock;

    /// <summary>The phase at this moment.</summary>
    public Phase Phase => Frame is { } frame ? HeatTime.PhaseAt(frame, clock.Now) : Phase.Planned;

    /// <summary>The sheet that fits the frame is missing.</summary>
    public bool NeedsSheet => Frame is { Sheet: > 0 } frame && (Sheet is null || Sheet.Heat != frame.Heat || Sheet.Epoch != frame.Epoch || Sheet.Version != frame.Sheet);

    /// <summary>How old what is shown may be: since the last frame while the heat is live, since the link was lost otherwise.</summary>
    public TimeSpan Age => Frame is not null && HeatTime.IsLive(Phase) && heardAt is { } heard ? time.GetElapsedTime(heard)
        : Link == LinkState.Online ? TimeSpan.Zero
        : time.GetElapsedTime(lostAt);

    /// <summary>Lanes with what they have to do and where they are, in floor order. Empty before the call.</summary>
    public IReadOnlyList<LaneView> Lanes { get; private set; } = [];

    /// <summary>All that is drawn of it.</summary>
    public HeatScene Scene => new(Frame, Sheet, Lanes, clock);

    /// <summary>Follows another heat and forgets this one; the same again changes nothing.</summary>
    public void Follow(string heat)
    {
        if (Following == heat)
        {
            return;
        }

        (Following, Frame, Sheet, Lanes, Asked, heardAt) = (heat, null, null, [], false, null);
        Changed?.Invoke();
    }

    /// <summary>Takes a frame; an older one of the same heat is dropped.</summary>
    /// <returns>Whether it was taken.</returns>
    public bool Take(Frame frame)
    {
        Asked = true;
        if (Following is { } heat and not HeatConnection.Current && heat != frame.Heat.Value)
        {
            return false;
        }

        if (Frame is { } known && known.Heat == frame.Heat && known.Epoch == frame.Epoch && frame.Sequence < known.Sequence)
        {
            return false;
        }

        (Frame, heardAt) = (frame, time.GetTimestamp());
        Join();
        return true;
    }

    /// <summary>Takes a sheet.</summary>
    public void Take(Sheet sheet)
    {
        Sheet = sheet;
        Join();
    }

    /// <summary>Takes the list of phones.</summary>
    public void Take(IReadOnlyList<PhoneSeen> phones)
    {
        Phones = phones;
        Changed?.Invoke();
    }

    /// <summary>Takes how the link is.</summary>
    public void Take(LinkState link)
    {
        if (Link == LinkState.Online && link != LinkState.Online)
        {
            lostAt = time.GetTimestamp();
        }

        Link = link;
        Changed?.Invoke();
    }

    /// <summary>The heat was asked for and has no frame yet.</summary>
    public void TakeNothing()
    {
        Asked = true;
        Changed?.Invoke();
    }

    private void Join()
    {
        Lanes = HeatScene.Join(Sheet, Frame, clock);
        Changed?.Invoke();
    }
}
