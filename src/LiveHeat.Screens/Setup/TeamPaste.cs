using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Setup;

/// <summary>Reads many teams from pasted lines: all of them, or none and what is wrong by line.</summary>
/// <param name="Teams">Empty when anything is wrong.</param>
/// <param name="Wrong">One sentence a mistake.</param>
public sealed record TeamPaste(IReadOnlyList<TeamSetup> Teams, IReadOnlyList<string> Wrong)
{
    private static readonly char[] Between = [';', '\t'];

    /// <summary>
    /// Reads team; division; athlete; athlete ... or, when the first line names the columns, what they say: see <see cref="PasteColumns"/>.
    /// A team of the same name takes the place of the one known, and keeps what the lines say nothing of.
    /// </summary>
    public static TeamPaste Read(string text, SetupAll all)
    {
        var teams = new List<TeamSetup>();
        var lines = text.Split('\n').Select((line, i) => (Cells: line.Trim('\r', ' ').Split(Between).Select(cell => cell.Trim()).ToList(), Number: i + 1))
            .Where(line => line.Cells.Any(cell => cell.Length > 0)).ToList();
        var columns = PasteColumns.Plain;
        var wrong = new List<string>();
        if (lines.Count > 0 && PasteColumns.AreNamed(lines[0].Cells))
        {
            columns = PasteColumns.Read(lines[0].Cells, lines[0].Number, wrong);
            lines.RemoveAt(0);
        }

        if (wrong.Count > 0)
        {
            return new TeamPaste([], wrong);
        }

        foreach (var (cells, number) in lines)
        {
            var line = columns.Of(cells);
            if (line.Team.Length == 0 || line.Division.Length == 0 || line.Athletes.Count == 0)
            {
                wrong.Add(PasteWords.LineTooShort(number));
            }
            else if (all.Divisions.FirstOrDefault(division => Same(division.Name, line.Division) || division.Id == line.Division) is not { } division)
            {
                wrong.Add(PasteWords.NoSuchDivision(number, columns.DivisionColumn, line.Division, all.Divisions.Select(one => one.Name)));
            }
            else if (teams.Any(team => Same(team.Name, line.Team)))
            {
                wrong.Add(PasteWords.Twice(number, line.Team));
            }
            else if (line.Athletes.Count > LineUp.MostAthletes)
            {
                wrong.Add(PasteWords.TooManyAthletes(number, line.Athletes.Count, LineUp.MostAthletes));
            }
            else if (columns.SayWithoutName(cells) is { } column)
            {
                wrong.Add(PasteWords.SayWithoutName(number, column));
            }
            else
            {
                var known = all.Teams.FirstOrDefault(team => Same(team.Name, line.Team));
                var id = known?.Id ?? SetupId.For(line.Team, all.Teams.Concat(teams).Select(team => team.Id), "team");
                teams.Add(columns.Tells(line, known, new TeamSetup(id, line.Team, division.Id, line.Athletes.Select(athlete => athlete.Name).ToItems())));
            }
        }

        return new TeamPaste(wrong.Count == 0 ? teams : [], wrong);
    }

    private static bool Same(string left, string right) => string.Equals(left, right, StringComparison.OrdinalIgnoreCase);
}
