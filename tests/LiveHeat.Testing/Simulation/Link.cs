namespace LiveHeat.Testing.Simulation;

/// <summary>A phone's way to the server: every request and every answer may be lost, late, doubled or overtaken.</summary>
internal sealed class Link(PhonePlot plot, Agenda agenda, Venue venue)
{
    private const double PatienceMs = 10_000;
    private int asked;

    /// <summary>Whether the server can be reached at all: all faults end some day.</summary>
    public bool Healed { get; set; }

    /// <summary>Sends a question.</summary>
    /// <param name="atServer">What the server does with it, each time it arrives.</param>
    /// <param name="heard">The first answer that comes while somebody waits for one. Runs on the phone.</param>
    /// <param name="gaveUp">None came in time. Runs on the phone.</param>
    /// <param name="onPhone">Runs something when the phone is awake, or never if it was switched off meanwhile.</param>
    public void Ask<T>(Func<Task<T>> atServer, Action<T> heard, Action gaveUp, Action<double, Action> onPhone)
    {
        var passage = Healed ? Passage.Fine : plot.Passages[asked++ % plot.Passages.Count];
        var waiting = true;
        void Once(Action then)
        {
            if (waiting)
            {
                waiting = false;
                then();
            }
        }

        async Task Arrive()
        {
            if (venue.IsDown)
            {
                return;
            }

            var answer = await atServer();
            if (!passage.LostDown && !Cut)
            {
                onPhone(passage.DownMs, () => Once(() => heard(answer)));
            }
        }

        if (!passage.LostUp && !Cut)
        {
            agenda.At(agenda.NowMs + passage.UpMs, Arrive);
            if (passage.RepeatMs is { } laterMs)
            {
                agenda.At(agenda.NowMs + passage.UpMs + laterMs, Arrive);
            }
        }

        onPhone(PatienceMs, () => Once(gaveUp));
    }

    /// <summary>A push: nobody asks again for it.</summary>
    public void Push(double downMs, bool lost, Action heard, Action<double, Action> onPhone)
    {
        if (!lost && !Cut)
        {
            onPhone(downMs, heard);
        }
    }

    private bool Cut => !Healed && plot.Cuts.Any(cut => cut.Holds(agenda.NowMs));
}
