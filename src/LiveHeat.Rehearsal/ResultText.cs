using System.Globalization;
using System.Text;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Scoring;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Rehearsal;

/// <summary>A result table as aligned plain text, for a console.</summary>
public static class ResultText
{
    private static readonly string[] Heads = ["place", "lane", "team", "result", "no-reps", "status"];

    public static string Of(ResultTable table)
    {
        var text = new StringBuilder();
        text.AppendLine(CultureInfo.InvariantCulture, $"{table.Competition} · {table.Title} · {table.Workout}");
        foreach (var division in table.Lanes.GroupBy(lane => lane.DivisionName))
        {
            text.AppendLine().AppendLine(division.Key);
            Rows(text, [Heads, .. division.Select(Row)]);
        }

        text.AppendLine();
        var signed = string.Join(" and ", table.Signatures.Select(signature => signature.Name));
        text.AppendLine(CultureInfo.InvariantCulture, $"{table.Status}, revision {table.Revision}, number {table.Head}{(signed.Length > 0 ? $", signed by {signed}" : "")}");
        text.AppendLine(CultureInfo.InvariantCulture, $"ledger {table.HeadHash}");
        return text.ToString();
    }

    private static string[] Row(ResultLane lane) =>
    [
        lane.Place is { } place ? string.Create(CultureInfo.InvariantCulture, $"{place}{(lane.Tied ? "=" : "")}") : "–",
        lane.Lane.ToString(),
        lane.Name,
        lane.OfficialMs is { } ms ? TimeText.Of(ms) : lane.RoundsAndReps is { } done ? RoundWords.Of(done) : lane.Score is not null
            ? ScoreWords.Of(lane.Worth, lane.Score) : string.Create(CultureInfo.InvariantCulture, $"{lane.Worth} of {lane.WorthOfAll}"),
        lane.NoReps.ToString(CultureInfo.InvariantCulture),
        Words(lane),
    ];

    private static string Words(ResultLane lane) => lane.Outcome switch
    {
        Outcome.Finished => "finished",
        Outcome.FinishedTimeUnknown => "finished, time unknown",
        Outcome.Through => "all done",
        Outcome.Capped => "time cap",
        Outcome.Stopped => "stopped",
        Outcome.DidNotStart => "did not start",
        Outcome.Disqualified => "disqualified",
        _ => "at work",
    }
    + (lane.ReadBack is { Agreed: false } disputed ? $", disputed by {disputed.Name}" : "");

    private static void Rows(StringBuilder text, IReadOnlyList<string[]> rows)
    {
        var widths = Enumerable.Range(0, Heads.Length).Select(column => rows.Max(row => row[column].Length)).ToArray();
        foreach (var row in rows)
        {
            text.AppendLine("  " + string.Join("  ", row.Select((cell, column) => IsNumber(column) ? cell.PadLeft(widths[column]) : cell.PadRight(widths[column]))).TrimEnd());
        }
    }

    /// <summary>Place, lane, result and no-reps stand to the right.</summary>
    private static bool IsNumber(int column) => column is 0 or 1 or 3 or 4;
}
