using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Connection;

/// <summary>Reads the result while somebody looks at it: when the heat is over, and again after each new fact.</summary>
public sealed class ResultFeed(HeatApi api, HeatStore heat, ResultStore result, TimeProvider time)
{
    private static readonly TimeSpan Least = TimeSpan.FromMilliseconds(500);
    private (HeatId Heat, string Epoch, long Sequence)? read;
    private int lookers;
    private bool reading;

    /// <summary>Somebody looks; to be ended with <see cref="LookAway"/>.</summary>
    public void Look()
    {
        if (lookers++ == 0)
        {
            heat.Changed += Follow;
        }

        Follow();
    }

    /// <summary>One fewer looks.</summary>
    public void LookAway()
    {
        if (--lookers == 0)
        {
            heat.Changed -= Follow;
        }
    }

    private (HeatId Heat, string Epoch, long Sequence)? Wanted =>
        heat.Frame is { Phase: Phase.Ended or Phase.Frozen or Phase.Certified } frame ? (frame.Heat, frame.Epoch, frame.Sequence) : null;

    private void Follow() => _ = reading || Wanted is null || Wanted == read ? Task.CompletedTask : Read();

    private async Task Read()
    {
        reading = true;
        try
        {
            while (lookers > 0 && Wanted is { } wanted && wanted != read)
            {
                var reply = await api.Result(wanted.Heat);
                read = reply.Problem is null ? wanted : read;
                result.Take(reply);
                await Task.Delay(Least, time);
            }
        }
        finally
        {
            reading = false;
        }
    }
}
