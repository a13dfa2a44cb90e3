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

    /// <summary>Reads team; division; athlete; athlete ... A team of the same name takes the place of the one known.</summary>
    public static TeamPaste Read(string text, SetupAll all)
    {
        var teams = new List<TeamSetup>();
        var wrong = new List<string>();
        foreach (var (line, number) in text.Split('\n').Select((line, i) => (line.Trim(), i + 1)).Where(pair => pair.Item1.Length > 0))
        {
            var cells = line.Split(Between).Select(cell => cell.Trim()).ToList();
            var athletes = cells.Skip(2).Where(cell => cell.Length > 0).ToItems();
            if (cells.Count < 3 || cells[0].Length == 0 || athletes.Count == 0)
            {
                wrong.Add(SetupWords.LineTooShort(number));
            }
            else if (all.Divisions.FirstOrDefault(division => Same(division.Name, cells[1]) || division.Id == cells[1]) is not { } division)
            {
                wrong.Add(SetupWords.NoSuchDivision(number, cells[1], all.Divisions.Select(one => one.Name)));
            }
            else if (teams.Any(team => Same(team.Name, cells[0])))
            {
                wrong.Add(SetupWords.TwiceInPaste(number, cells[0]));
            }
            else if (athletes.Count > LineUp.MostAthletes)
            {
                wrong.Add(SetupWords.TooManyAthletes(number, athletes.Count, LineUp.MostAthletes));
            }
            else
            {
                var id = all.Teams.FirstOrDefault(team => Same(team.Name, cells[0]))?.Id
                    ?? SetupId.For(cells[0], all.Teams.Concat(teams).Select(team => team.Id), "team");
                teams.Add(new TeamSetup(id, cells[0], division.Id, athletes));
            }
        }

        return new TeamPaste(wrong.Count == 0 ? teams : [], wrong);
    }

    private static bool Same(string left, string right) => string.Equals(left, right, StringComparison.OrdinalIgnoreCase);
}
