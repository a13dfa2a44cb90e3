using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;

namespace LiveHeat.Server.Exports;

/// <summary>Rows as comma-separated values (RFC 4180), as spreadsheets read them: UTF-8 with its mark, a line of names first.</summary>
/// <remarks>Names of teams are typed by anybody: a cell that begins like a formula is written so that no spreadsheet runs it.</remarks>
internal static class Csv
{
    private static readonly CsvConfiguration Form = new(CultureInfo.InvariantCulture) { InjectionOptions = InjectionOptions.Escape, NewLine = "\r\n" };
    private static readonly UTF8Encoding Marked = new(encoderShouldEmitUTF8Identifier: true);

    /// <summary>A file to save.</summary>
    /// <param name="name">Its name, without an ending.</param>
    /// <param name="columns">Names of the columns.</param>
    /// <param name="rows">As many values each; null is an empty cell.</param>
    public static IResult File(string name, IReadOnlyList<string> columns, IEnumerable<object?[]> rows)
    {
        using var bytes = new MemoryStream();
        using (var text = new StreamWriter(bytes, Marked, leaveOpen: true))
        using (var csv = new CsvWriter(text, Form))
        {
            Line(csv, columns);
            foreach (var row in rows)
            {
                Line(csv, row);
            }
        }

        return Results.File(bytes.ToArray(), "text/csv; charset=utf-8", $"{name}.csv");
    }

    private static void Line(CsvWriter csv, IEnumerable<object?> values)
    {
        foreach (var value in values)
        {
            csv.WriteField(Convert.ToString(value, CultureInfo.InvariantCulture));
        }

        csv.NextRecord();
    }
}
