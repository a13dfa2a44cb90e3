using System.Globalization;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Paper;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Paper;

/// <summary>Reads what was typed of one line.</summary>
internal static class PaperReading
{
    public const int MostNoReps = 200;

    /// <summary>The line as far as it can be read.</summary>
    /// <param name="entry">The line.</param>
    /// <param name="bad">Told what cannot be, and what to do.</param>
    public static PaperLine Of(PaperEntry entry, Action<string> bad)
    {
        var line = new PaperLine(entry.Step.Step, entry.Done);
        if (entry.Time.Trim() is { Length: > 0 } time)
        {
            line = TimeWords.Parse(time) is { } ms ? line with { Time = new PaperTime(ms, time.AsSpan().ContainsAny('.', ',') ? PaperTime.TenthsMs : PaperTime.SecondsMs) } : Bad(PaperWords.BadTime);
        }

        if (entry.TakesValue && entry.Value.Trim() is { Length: > 0 } value)
        {
            line = Number(value) is { } reading ? line with { Value = reading } : Bad(PaperWords.BadValue);
        }

        if (entry.TakesNoReps && entry.NoReps.Trim() is { Length: > 0 } noReps)
        {
            line = Whole(noReps, MostNoReps) is { } count ? line with { NoReps = count } : Bad(PaperWords.CountUpTo(MostNoReps));
        }

        return Shares(entry, entry.TakesAttempt ? Attempt(entry, line, bad) : line, bad);

        PaperLine Bad(string why)
        {
            bad(why);
            return line;
        }
    }

    public static int? Whole(string text, int most) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number <= most ? number : null;

    /// <summary>Load and lift go together: an attempt that was not made has neither.</summary>
    private static PaperLine Attempt(PaperEntry entry, PaperLine line, Action<string> bad)
    {
        if (entry.Load.Trim() is not { Length: > 0 } typed)
        {
            if (entry.Good is not null)
            {
                bad(PaperKindWords.LoadMissing);
            }

            return line;
        }

        if (Number(typed) is not { } load || !Attempts.CanBe(load))
        {
            bad(PaperKindWords.BadLoad(entry.Step.Unit));
            return line;
        }

        if (entry.Good is null)
        {
            bad(PaperKindWords.LiftMissing);
        }

        return line with { Load = load, Good = entry.Good };
    }

    /// <summary>All parts together are the set where it is done, and no more than the set where it is not.</summary>
    private static PaperLine Shares(PaperEntry entry, PaperLine line, Action<string> bad)
    {
        if (entry.Shares.All(share => share.Trim().Length == 0))
        {
            return line;
        }

        var (step, units) = (entry.Step, entry.Shares.Select(share => share.Trim().Length == 0 ? 0 : Whole(share, entry.Step.Quantity)).ToList());
        if (units.Any(one => one is null))
        {
            bad(PaperWords.CountUpTo(step.Quantity));
            return line;
        }

        var sum = units.Sum(one => one!.Value);
        if (entry.Done ? sum != step.Quantity : sum > step.Quantity)
        {
            bad(PaperKindWords.SumIs(sum, step.Quantity));
        }

        return line with { Shares = units.Select((one, i) => new Share(step.Step, i + 1, one!.Value)).ToItems() };
    }

    private static decimal? Number(string typed) =>
        decimal.TryParse(typed.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;
}
