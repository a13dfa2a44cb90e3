using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Connection;

namespace LiveHeat.Screens.Heats;

/// <summary>The facts of the heat on the screen, for those who may read them.</summary>
public sealed class FactStore
{
    /// <summary>Anything here changed.</summary>
    public event Action? Changed;

    /// <summary>The heat they are of.</summary>
    public HeatId? Heat { get; private set; }

    /// <summary>The facts.</summary>
    public FactBook Book { get; private set; } = FactBook.Empty;

    /// <summary>Why they are missing; null when they are here.</summary>
    public Problem? Problem { get; private set; }

    /// <summary>Begins with another heat.</summary>
    public void Begin(HeatId heat)
    {
        (Heat, Book, Problem) = (heat, FactBook.Empty, null);
        Changed?.Invoke();
    }

    /// <summary>Takes all facts, or those after the ones known.</summary>
    public void Take(Reply<FactLines> reply, bool all)
    {
        Problem = reply.Problem;
        if (reply.Value is { } lines)
        {
            Book = new FactBook(lines.Head, all ? lines.Facts : [.. Book.Lines, .. lines.Facts]);
        }

        Changed?.Invoke();
    }
}
