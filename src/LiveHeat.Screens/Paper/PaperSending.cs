using LiveHeat.Engine;
using LiveHeat.Engine.Paper;
using LiveHeat.Screens.Commands;
using LiveHeat.Screens.Connection;

namespace LiveHeat.Screens.Paper;

/// <summary>Writes what was taken from a card, line by line. Stops at the first refusal; goes on from there with the same ids, so nothing is written twice.</summary>
public sealed class PaperSending(Items<CardWrite> writes, Func<CardWrite, string> words)
{
    /// <summary>How many are on the record.</summary>
    public int Written { get; private set; }

    public int Count => writes.Count;

    /// <summary>Why the next was not taken; null when nothing went wrong.</summary>
    public Problem? Problem { get; private set; }

    public bool Busy { get; private set; }

    public bool Over => Written == writes.Count;

    /// <summary>The line that is next, in words; empty when all are written.</summary>
    public string Next => Over ? "" : words(writes[Written]);

    /// <param name="ask">Asks the server.</param>
    /// <param name="draw">Told after each line.</param>
    public async Task Go(AskHeat ask, Action draw)
    {
        if (Busy)
        {
            return;
        }

        (Busy, Problem) = (true, null);
        try
        {
            while (!Over && Problem is null)
            {
                var write = writes[Written];
                Problem = await ask(_ => write.Command, words(write));
                Written += Problem is null ? 1 : 0;
                draw();
            }
        }
        finally
        {
            Busy = false;
        }
    }
}
