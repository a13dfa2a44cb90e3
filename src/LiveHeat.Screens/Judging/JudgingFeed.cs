using LiveHeat.Contracts.Judging;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Access;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Judging;

/// <summary>Reads how the heat on the screen is judged while somebody looks: once it runs, and after new facts, at most every ten seconds.</summary>
public sealed class JudgingFeed(HeatApi api, HeatStore heat, SignInStore signIn, JudgingStore store, TimeProvider time)
{
    private static readonly TimeSpan Least = TimeSpan.FromSeconds(10);
    private (HeatId Heat, string Epoch, long Sequence)? read;
    private HeatId? tried;
    private long triedAt;
    private ITimer? due;
    private int lookers;
    private bool reading;

    /// <summary>Where it is put.</summary>
    public JudgingStore Store => store;

    /// <summary>Somebody looks; to be ended with <see cref="Close"/>.</summary>
    /// <param name="draw">Called at every change.</param>
    public void Open(Action draw)
    {
        store.Changed += draw;
        if (lookers++ == 0)
        {
            heat.Changed += Follow;
        }

        Follow();
    }

    /// <summary>One fewer looks.</summary>
    public void Close(Action draw)
    {
        store.Changed -= draw;
        if (--lookers == 0)
        {
            heat.Changed -= Follow;
            due?.Dispose();
            due = null;
        }
    }

    /// <summary>Before GO nothing is judged; and the server tells it to those who may rule only.</summary>
    private (HeatId Heat, string Epoch, long Sequence)? Wanted =>
        signIn.MayRule && heat.Frame is { Phase: Phase.Running or Phase.Halted or Phase.Ended or Phase.Frozen or Phase.Certified } frame ? (frame.Heat, frame.Epoch, frame.Sequence) : null;

    private void Follow()
    {
        if (lookers == 0 || reading || due is not null || Wanted is not { } wanted || wanted == read)
        {
            return;
        }

        var wait = tried == wanted.Heat ? Least - time.GetElapsedTime(triedAt) : TimeSpan.Zero;
        if (wait <= TimeSpan.Zero)
        {
            _ = Read(wanted);
        }
        else
        {
            due = time.CreateTimer(_ => Due(), null, wait, Timeout.InfiniteTimeSpan);
        }
    }

    private void Due()
    {
        due?.Dispose();
        due = null;
        Follow();
    }

    private async Task Read((HeatId Heat, string Epoch, long Sequence) wanted)
    {
        (reading, tried, triedAt) = (true, wanted.Heat, time.GetTimestamp());
        Reply<JudgingTable> reply;
        try
        {
            reply = await api.Judging(wanted.Heat);
        }
        finally
        {
            reading = false;
        }

        read = reply.Problem is null ? wanted : read;
        store.Take(reply);
        Follow();
    }
}
