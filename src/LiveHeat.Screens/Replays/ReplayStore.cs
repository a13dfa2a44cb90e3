using System.Text.Json;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Replays;

/// <summary>A heat played again: which, in which order, where it stands, and what is seen there.</summary>
public sealed class ReplayStore(TimeProvider time)
{
    /// <summary>Played from the beginning, it begins a little before GO.</summary>
    public const int LeadMs = 3_000;

    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(100);
    private ITimer? beat;
    private ReplayLines? lines;
    private HeatClock clock = HeatClock.Unset;
    private (int Index, HeatScene Scene)? drawn;
    private (bool Open, long? HeatMs) first;

    /// <summary>Anything here changed; ten times a second while it plays.</summary>
    public event Action? Changed;

    /// <summary>The heat; null when none is played.</summary>
    public HeatId? Heat { get; private set; }

    /// <summary>In which order.</summary>
    public ReplayBy By { get; private set; }

    /// <summary>Why it is missing; null when it is here.</summary>
    public Problem? Problem { get; private set; }

    /// <summary>The clock of what is played.</summary>
    public ReplayPlayer Player { get; } = new(time);

    /// <summary>There is something to be seen.</summary>
    public bool IsHere => lines is { Moments.Count: > 0 };

    /// <summary>The newest fact that is in it, as the ledger counts; 0 while there is none.</summary>
    public long Head { get; private set; }

    /// <summary>Heat time of the moment shown, by the start that counts in the end; null while there is none.</summary>
    public long? HeatMs => clock.HeatMs(Player.Now);

    /// <summary>Start and halts as they stand in the end, to turn instants into heat time.</summary>
    public HeatClock Clock => clock;

    /// <summary>The heat at the moment shown.</summary>
    public HeatScene Scene => lines is { Moments.Count: > 0 } here ? SceneAt(here, IndexAt(here, Player.Now)) : new HeatScene(null, null, [], Player);

    /// <summary>Begins with a heat. The same heat in another order stays where it stands, so that both can be compared.</summary>
    /// <param name="heat">Which.</param>
    /// <param name="by">In which order.</param>
    /// <param name="heatMs">Where to stand, heat time; null for where it is, or the beginning.</param>
    public void Begin(HeatId heat, ReplayBy by, long? heatMs = null)
    {
        if (Heat != heat)
        {
            Player.Pause();
            (lines, drawn, clock, Head) = (null, null, HeatClock.Unset, 0);
            first = (true, heatMs);
        }
        else if (heatMs is not null)
        {
            first = (true, heatMs);
        }

        (Heat, By, Problem) = (heat, by, null);
        Changed?.Invoke();
    }

    /// <summary>Takes an answer; one for another heat or order is too late and dropped. After a problem the last good one stays.</summary>
    public void Take(HeatId heat, ReplayBy by, Reply<ReplayLines> reply)
    {
        if (Heat != heat || By != by)
        {
            return;
        }

        Problem = reply.Problem;
        if (reply.Value is { Moments.Count: > 0 } read)
        {
            (lines, drawn, Head) = (read, null, read.Moments.Max(moment => moment.Sequence));
            clock = read.Start is { } start ? new HeatClock(new Start(start.Id, start.GoAt, start.UncertaintyMs, start.Observed), read.Halts) : HeatClock.Unset;
            Player.Load(read.Moments[0].At, read.Moments[^1].At);
            if (first.Open)
            {
                Player.Seek(Beginning(read));
                first = (false, null);
            }
        }

        Changed?.Invoke();
    }

    /// <summary>Ends it and forgets it.</summary>
    public void Close()
    {
        Player.Pause();
        (Heat, lines, drawn, clock, Head, Problem) = (null, null, null, HeatClock.Unset, 0, null);
        Changed?.Invoke();
    }

    /// <summary>Plays, or stands still.</summary>
    public void Toggle()
    {
        if (Player.Playing)
        {
            Player.Pause();
        }
        else if (IsHere)
        {
            Player.Play();
        }

        Turned();
    }

    /// <summary>Sets the speed; 1 is as fast as it was.</summary>
    public void SetSpeed(double speed) => Do(() => Player.SetSpeed(speed));

    /// <summary>Goes to an instant.</summary>
    public void Seek(Instant at) => Do(() => Player.Seek(at));

    /// <summary>Goes to a heat time; does nothing without a start.</summary>
    public void SeekHeat(long heatMs) => Do(() => Player.Seek(clock.InstantOf(heatMs) ?? Player.Now));

    /// <summary>Goes so far forward, or back.</summary>
    public void Skip(long ms) => Do(() => Player.Seek(Player.Now + ms));

    /// <summary>Stands at the next fact, or the one before; where there is none it stays.</summary>
    /// <param name="forward">To the next.</param>
    /// <param name="fits">Which facts, by their sequence; null for all.</param>
    public void Step(bool forward, Func<long, bool>? fits = null)
    {
        if (lines is not { } here)
        {
            return;
        }

        var now = Player.Now;
        var facts = here.Moments.Where((moment, i) => (i == 0 || moment.Sequence != here.Moments[i - 1].Sequence) && fits?.Invoke(moment.Sequence) != false);
        var found = forward ? facts.FirstOrDefault(moment => moment.At > now) : facts.LastOrDefault(moment => moment.At < now);
        Do(() =>
        {
            Player.Pause();
            Player.Seek(found?.At ?? now);
        });
    }

    private Instant Beginning(ReplayLines read) =>
        first.HeatMs is { } wanted && clock.InstantOf(wanted) is { } at ? at
        : HeatTime.IsLive(SceneAt(read, read.Moments.Count - 1).Frame!.Phase) ? Player.Until
        : clock.InstantOf(-LeadMs) ?? Player.From;

    private HeatScene SceneAt(ReplayLines read, int index)
    {
        if (drawn is not { } known || known.Index != index)
        {
            var frame = read.Moments[index].Frame.Deserialize<Frame>(WireJson.Options)!;
            var sheet = read.Sheets.FirstOrDefault(one => one.Version == frame.Sheet);
            drawn = known = (index, new HeatScene(frame, sheet, HeatScene.Join(sheet, frame, Player), Player));
        }

        return known.Scene;
    }

    private static int IndexAt(ReplayLines read, Instant now)
    {
        var (low, high) = (0, read.Moments.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = read.Moments[middle].At <= now ? (middle + 1, high) : (low, middle);
        }

        return Math.Max(0, low - 1);
    }

    private void Do(Action change)
    {
        change();
        Turned();
    }

    /// <summary>The timer runs only while something plays.</summary>
    private void Turned()
    {
        beat?.Dispose();
        beat = Player.Playing ? time.CreateTimer(_ => OnBeat(), null, Beat, Beat) : null;
        Changed?.Invoke();
    }

    private void OnBeat()
    {
        if (Player.Playing && Player.Now >= Player.Until)
        {
            Player.Pause();
            Turned();
        }
        else if (Player.Playing)
        {
            Changed?.Invoke();
        }
    }
}
