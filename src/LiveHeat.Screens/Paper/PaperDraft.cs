using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Paper;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Paper;

/// <summary>A lane's paper card while it is typed in. It stays on this screen; nothing of it is stored but what is taken from it.</summary>
public sealed class PaperDraft
{
    /// <summary>What cannot be read, by step; that of the reps at the cap stands at 0, that of a round by the clock at its number below 0.</summary>
    private readonly Dictionary<int, string> wrong = [];

    public PaperDraft(SheetLane lane)
    {
        Lane = lane;
        Entries = [.. lane.Steps.Select(step => new PaperEntry(step, lane.Athletes.Count))];
        Rounds = [.. (lane.Windows ?? []).Select(window => new PaperRound(window, [.. Entries.Skip(window.First - 1).Take(window.Last - window.First + 1)]))];
    }

    public SheetLane Lane { get; }

    public IReadOnlyList<PaperEntry> Entries { get; }

    /// <summary>Rounds by the clock; empty where one follows the other.</summary>
    public IReadOnlyList<PaperRound> Rounds { get; }

    /// <summary>Of the first step that is not done.</summary>
    public string AtCap { get; set; } = "";

    /// <summary>All lines stand there, also those that hardly any team comes to.</summary>
    public bool ShowsAll { get; set; }

    /// <summary>The time of the last step; there is none where the work has no end, ends by the clock, or is not timed.</summary>
    public PaperEntry? Finish => Lane.ExpectedSteps is null && Rounds.Count == 0 && Lane.Score is null && Entries.Count > 0 ? Entries[^1] : null;

    /// <summary>It is written down how much of a set was done at the cap.</summary>
    public bool TakesAtCap => Rounds.Count == 0 && Entries.Any(entry => entry.Step.Kind == StepKind.Set);

    /// <summary>The set that is open on the card; null when all is done, or it is no set.</summary>
    public SheetStep? Open => DoneTo < Entries.Count && Entries[DoneTo].Step is { Kind: StepKind.Set } set ? set : null;

    public IReadOnlyDictionary<int, string> Wrong => wrong;

    private int DoneTo => Entries.Where(entry => entry.Done).Select(entry => entry.Step.Step).DefaultIfEmpty(0).Max();

    /// <summary>The round by the clock that the step is in; null where there is none.</summary>
    public PaperRound? RoundOf(int step) => Rounds.FirstOrDefault(round => step >= round.Window.First && step <= round.Window.Last);

    /// <summary>Whether a line stands there: where the work is laid out for the fastest that can be, only as far as usual, and a round beyond what is done.</summary>
    public bool Shows(PaperEntry entry)
    {
        if (ShowsAll || (Lane.ExpectedSteps is null && Rounds.Count == 0))
        {
            return true;
        }

        if (RoundOf(entry.Step.Step) is { Window: var window })
        {
            var done = Entries.Where(one => one.Done && one.Step.Step >= window.First && one.Step.Step <= window.Last).Select(one => one.Step.Step).DefaultIfEmpty(window.First).Max();
            var expectedMs = Entries.Skip(window.First - 1).Take(entry.Step.Step - window.First).Sum(one => (long)one.Step.ExpectedMs);
            return expectedMs <= (window.UntilMs - window.FromMs) * 3L / 2 || entry.Step.Step <= done + 4;
        }

        return entry.Step.Round <= Math.Max(Entries[Lane.ExpectedSteps!.Value - 1].Step.Round ?? 0, DoneTo == 0 ? 0 : Entries[DoneTo - 1].Step.Round ?? 0) + 1;
    }

    /// <summary>Ticks a step and all before it; what is ticked after it no longer is. Where rounds end by the clock, only in its round.</summary>
    public void DoneUpTo(int step)
    {
        var round = RoundOf(step);
        foreach (var entry in Entries.Where(entry => RoundOf(entry.Step.Step) == round))
        {
            if (entry.Step.Step <= step)
            {
                entry.Done = true;
            }
            else
            {
                entry.Clear();
            }
        }
    }

    /// <summary>The card as far as it can be read; what cannot is in <see cref="Wrong"/>.</summary>
    /// <param name="record">The lane on the record, whose holds move its rounds; null before it is known.</param>
    public PaperCard Read(LaneState? record = null)
    {
        wrong.Clear();
        var lines = new List<PaperLine>();
        var (latest, latestAt) = (0L, 0);
        foreach (var entry in Entries)
        {
            var line = PaperReading.Of(entry, why => wrong[entry.Step.Step] = why);
            if (line.Time is { } time)
            {
                CheckTime(line.Step, time.HeatMs, latest, latestAt, record);
                (latest, latestAt) = time.HeatMs >= latest ? (time.HeatMs, line.Step) : (latest, latestAt);
            }

            if (line.Value is not null && !entry.Done && RoundOf(line.Step) is var round && line.Step > (round is null ? DoneTo : Entries.Where(one => one.Done && RoundOf(one.Step.Step) == round).Select(one => one.Step.Step).DefaultIfEmpty(0).Max()))
            {
                wrong[line.Step] = PaperKindWords.NotTicked;
            }

            lines.Add(line);
        }

        return new PaperCard(lines.ToItems(), Count(0, AtCap.Trim().Length > 0 ? AtCap : SharesOfOpen(lines), Open, PaperWords.NothingOpen))
        {
            AtEnds = Rounds.Select(round => (round.Number, Units: Count(-round.Number, round.Left, round.Open, PaperKindWords.NothingOpen(round.Number)))).Where(left => left.Units is not null).Select(left => new LeftOpen(left.Number, left.Units!.Value)).ToItems(),
        };
    }

    /// <summary>A time is misread that lies before one above it, before its round began or after it was over.</summary>
    private void CheckTime(int step, long heatMs, long latest, int latestAt, LaneState? record)
    {
        var round = RoundOf(step);
        if (round is not null && heatMs < Floor(round.Window.FromMs))
        {
            wrong[step] = PaperKindWords.BeforeRound(round.Number, TimeWords.Clock(Floor(round.Window.FromMs)));
        }
        else if (heatMs < latest)
        {
            wrong[step] = PaperWords.EarlierThan(Entries[latestAt - 1].Step);
        }
        else if (round is not null && heatMs > Floor(round.Window.UntilMs))
        {
            wrong[step] = PaperKindWords.AfterRound(round.Number, TimeWords.Clock(Floor(round.Window.UntilMs)));
        }

        long Floor(int laneMs) => record is null ? laneMs : CardDifferences.HeatMsOf(record, laneMs);
    }

    /// <summary>Where the open set is shared and everybody's part is written, so is the count.</summary>
    private string SharesOfOpen(List<PaperLine> lines) =>
        Rounds.Count == 0 && Open is { } open && lines[open.Step - 1].Shares is { Count: > 0 } shares ? shares.Sum(share => share.Units).ToString(System.Globalization.CultureInfo.InvariantCulture) : "";

    /// <summary>Units of the open set; null when nothing is typed, or it cannot be: then it is told at <paramref name="at"/>.</summary>
    private int? Count(int at, string typed, SheetStep? open, string nothingOpen)
    {
        if (typed.Trim().Length == 0)
        {
            return null;
        }

        var count = open is null ? null : PaperReading.Whole(typed, open.Quantity);
        if (count is null)
        {
            wrong[at] = open is null ? nothingOpen : PaperWords.CountUpTo(open.Quantity);
        }

        return count;
    }
}
