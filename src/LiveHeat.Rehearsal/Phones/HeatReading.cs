using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Rehearsal.Phones;

/// <summary>What a phone has read of one heat: the newest frame, the sheet, the facts of its lane.</summary>
internal sealed class HeatReading(SiteClient site, HeatId heat, LaneNumber lane, Pulse changed)
{
    private readonly Lock turn = new();
    private List<KnownFact> facts = [];
    private long head;
    private string? startRead;

    public HeatId Heat => heat;

    public Frame? Frame { get; private set; }

    public Sheet? Sheet { get; private set; }

    /// <summary>The sequence at which this phone took its seat; -1 before.</summary>
    public long Taken { get; set; } = -1;

    public IReadOnlyList<KnownFact> Facts
    {
        get
        {
            lock (turn)
            {
                return facts;
            }
        }
    }

    /// <summary>A frame tells of a sheet or of facts that were not read yet.</summary>
    public bool IsBehind => Frame is { } frame && (Sheet?.Version != frame.Sheet || NewestOf(frame) > head || StartOf(frame) != startRead);

    /// <summary>Takes a frame; an older one of the same ledger is dropped.</summary>
    public void Take(Frame next)
    {
        bool tell;
        lock (turn)
        {
            if (next.Heat != heat || (Frame is { } last && last.Epoch == next.Epoch && last.Sequence > next.Sequence))
            {
                return;
            }

            tell = Frame is null || Gist(Frame) != Gist(next);
            Frame = next;
        }

        if (tell || IsBehind)
        {
            changed.Beat();
        }
    }

    /// <summary>Reads the sheet if it changed and the lane's facts. What a start makes of the taps is read anew.</summary>
    /// <returns>The heat's head that the facts go up to.</returns>
    public async Task<long> CatchUp(CancellationToken stopping)
    {
        if (Frame is null)
        {
            Take(await site.Get<Frame>($"/api/heats/{heat}/frame", stopping).ConfigureAwait(false));
        }

        var frame = Frame!;
        if (Sheet?.Version != frame.Sheet)
        {
            Sheet = await site.Get<Sheet>($"/api/heats/{heat}/sheet", stopping).ConfigureAwait(false);
        }

        var after = StartOf(frame) == startRead ? head : 0;
        var lines = await site.Get<FactLines>($"/api/heats/{heat}/lanes/{lane}/facts?after={after}", stopping).ConfigureAwait(false);
        lock (turn)
        {
            // A lower head is another ledger.
            var known = lines.Head < after ? [] : lines.Facts.Select(KnownFact.Of).ToList();
            // Two readings may run at once: what both asked for counts once.
            facts = [.. facts.Where(fact => fact.Sequence <= after), .. known];
            (head, startRead) = (lines.Head, StartOf(frame));
        }

        changed.Beat();
        return lines.Head;
    }

    private static string StartOf(Frame frame) => $"{frame.Start?.Id}@{frame.Start?.GoAt}";

    private long NewestOf(Frame frame) => frame.Lanes.FirstOrDefault(told => told.Lane == lane)?.FactSequence ?? 0;

    /// <summary>What a judge would look up for.</summary>
    private object Gist(Frame frame)
    {
        var told = frame.Lanes.FirstOrDefault(line => line.Lane == lane);
        return (frame.Phase, StartOf(frame), frame.HaltedAt, frame.Sheet, frame.Epoch, (told?.Seat, told?.HeldAt, told?.CapMs, told?.Ready, told?.Status));
    }
}
