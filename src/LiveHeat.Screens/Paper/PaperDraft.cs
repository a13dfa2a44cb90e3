using System.Globalization;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine;
using LiveHeat.Engine.Paper;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Paper;

/// <summary>A lane's paper card while it is typed in. It stays on this screen; nothing of it is stored but what is taken from it.</summary>
public sealed class PaperDraft(SheetLane lane)
{
    private const int MostNoReps = 200;

    /// <summary>What cannot be read, by step; that of the reps at the cap stands at 0.</summary>
    private readonly Dictionary<int, string> wrong = [];

    public SheetLane Lane => lane;

    public IReadOnlyList<PaperEntry> Entries { get; } = [.. lane.Steps.Select(step => new PaperEntry(step))];

    /// <summary>Of the first step that is not done.</summary>
    public string AtCap { get; set; } = "";

    /// <summary>The time of the last step; there is none where the work has no end.</summary>
    public PaperEntry? Finish => lane.ExpectedSteps is null && Entries.Count > 0 ? Entries[^1] : null;

    /// <summary>The set that is open on the card; null when all is done, or it is no set.</summary>
    public SheetStep? Open => Entries.Count(entry => entry.Step.Step <= DoneTo) < Entries.Count && Entries[DoneTo].Step is { Kind: StepKind.Set } set ? set : null;

    public IReadOnlyDictionary<int, string> Wrong => wrong;

    private int DoneTo => Entries.Where(entry => entry.Done).Select(entry => entry.Step.Step).DefaultIfEmpty(0).Max();

    /// <summary>Ticks a step and all before it; what is ticked after it no longer is.</summary>
    public void DoneUpTo(int step)
    {
        foreach (var entry in Entries)
        {
            entry.Done = entry.Step.Step <= step;
            if (!entry.Done)
            {
                entry.Time = "";
            }
        }
    }

    /// <summary>The card as far as it can be read; what cannot is in <see cref="Wrong"/>.</summary>
    public PaperCard Read()
    {
        wrong.Clear();
        var lines = new List<PaperLine>();
        var (latest, latestAt) = (0L, 0);
        foreach (var entry in Entries)
        {
            var line = Line(entry);
            if (line.Time is { } time)
            {
                if (time.HeatMs < latest)
                {
                    wrong[line.Step] = PaperWords.EarlierThan(Entries[latestAt - 1].Step);
                }

                (latest, latestAt) = time.HeatMs >= latest ? (time.HeatMs, line.Step) : (latest, latestAt);
            }

            lines.Add(line);
        }

        int? atCap = null;
        if (AtCap.Trim().Length > 0)
        {
            atCap = Whole(AtCap, Open?.Quantity ?? 0);
            if (atCap is null || Open is null)
            {
                wrong[0] = Open is { } open ? PaperWords.CountUpTo(open.Quantity) : PaperWords.NothingOpen;
            }
        }

        return new PaperCard(lines.ToItems(), atCap);
    }

    private static int? Whole(string text, int most) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number <= most ? number : null;

    private PaperLine Line(PaperEntry entry)
    {
        var (step, line) = (entry.Step.Step, new PaperLine(entry.Step.Step, entry.Done));
        if (entry.Time.Trim() is { Length: > 0 } time)
        {
            line = TimeWords.Parse(time) is { } ms ? line with { Time = new PaperTime(ms, time.AsSpan().ContainsAny('.', ',') ? PaperTime.TenthsMs : PaperTime.SecondsMs) } : Bad(PaperWords.BadTime);
        }

        if (entry.TakesValue && entry.Value.Trim() is { Length: > 0 } value)
        {
            line = decimal.TryParse(value.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var reading) ? line with { Value = reading } : Bad(PaperWords.BadValue);
        }

        if (entry.TakesNoReps && entry.NoReps.Trim() is { Length: > 0 } noReps)
        {
            line = Whole(noReps, MostNoReps) is { } count ? line with { NoReps = count } : Bad(PaperWords.CountUpTo(MostNoReps));
        }

        return line;

        PaperLine Bad(string why)
        {
            wrong[step] = why;
            return line;
        }
    }
}
