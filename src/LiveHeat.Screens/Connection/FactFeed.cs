using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Connection;

/// <summary>Reads the heat's facts while somebody looks at them, at most twice a second.</summary>
/// <remarks>
/// New taps are added to those known. A ruling or an undo can change how older facts are kept, so then all are read again.
/// </remarks>
public sealed class FactFeed(HeatApi api, HeatStore heat, FactStore facts, TimeProvider time)
{
    private static readonly TimeSpan Least = TimeSpan.FromMilliseconds(500);
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

    private bool Behind => heat.Frame is { } frame && (facts.Heat != frame.Heat || facts.Book.Head < frame.Sequence);

    private void Follow() => _ = reading || !Behind ? Task.CompletedTask : Read();

    private async Task Read()
    {
        reading = true;
        try
        {
            while (lookers > 0 && Behind && heat.Frame is { } frame)
            {
                if (facts.Heat != frame.Heat)
                {
                    facts.Begin(frame.Heat);
                }

                await ReadNew(frame.Heat);
                await Task.Delay(Least, time);
            }
        }
        finally
        {
            reading = false;
        }
    }

    private async Task ReadNew(HeatId id)
    {
        var known = facts.Book.Head;
        var news = await api.Facts(id, known);
        var all = known == 0;
        if (!all && news.Value is { } lines && lines.Facts.Any(line => line.Fact is HeatFact.Desk or HeatFact.Undone))
        {
            (news, all) = (await api.Facts(id, 0), true);
        }

        if (facts.Heat == id)
        {
            facts.Take(news, all);
        }
    }
}
