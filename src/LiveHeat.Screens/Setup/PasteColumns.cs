using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Setup;

/// <summary>A pasted line, sorted.</summary>
internal sealed record PasteLine(string Team, string Division, IReadOnlyList<(string Name, string Say)> Athletes, string Say, string Home, IReadOnlyList<string> Facts);

/// <summary>
/// What the columns of pasted lines are: "team", "division", "athlete" (as many as there are), "say" behind a team or an athlete for how that name is said, "home",
/// "fact" (as many as there are), or what the screen's language calls them. Without a first line that names them: team, division, then athletes.
/// </summary>
internal sealed class PasteColumns
{
    private const string Team = "team", Division = "division", Athlete = "athlete", Say = "say", SayAthlete = "say athlete", Home = "home", Fact = "fact";

    private static readonly string[] Kinds = [Team, Division, Athlete, Say, Home, Fact];

    private readonly List<string> kinds;

    private PasteColumns(List<string> kinds) => this.kinds = kinds;

    /// <summary>Team, division, athletes.</summary>
    public static PasteColumns Plain { get; } = new([Team, Division]);

    /// <summary>From 1.</summary>
    public int DivisionColumn => kinds.IndexOf(Division) + 1;

    /// <summary>Whether a first line names columns and no team.</summary>
    public static bool AreNamed(IReadOnlyList<string> cells) => cells.Any(cell => KindOf(cell) == Team) && cells.Any(cell => KindOf(cell) == Division);

    /// <summary>Reads the line that names them.</summary>
    public static PasteColumns Read(IReadOnlyList<string> cells, int line, List<string> wrong)
    {
        var kinds = new List<string>();
        foreach (var (cell, i) in cells.Select((cell, i) => (cell, i)))
        {
            var kind = KindOf(cell);
            if (kind is null)
            {
                wrong.Add(PasteWords.NoSuchColumn(line, i + 1, cell, Kinds.Select(one => PasteWords.Columns(one)[0])));
            }
            else if (kind == Say && (i == 0 || kinds[^1] is not (Team or Athlete)))
            {
                wrong.Add(PasteWords.SayBehindNothing(line, i + 1, cell));
            }
            else if (kind is Team or Division or Home && kinds.Contains(kind))
            {
                wrong.Add(PasteWords.ColumnTwice(line, i + 1, cell));
            }

            kinds.Add(kind == Say && i > 0 && kinds[^1] == Athlete ? SayAthlete : kind ?? "");
        }

        return new PasteColumns(kinds);
    }

    /// <summary>Sorts a line's cells. Without named columns all from the third on are athletes.</summary>
    public PasteLine Of(IReadOnlyList<string> cells)
    {
        var athletes = new List<(string Name, string Say)>();
        for (var i = 0; i < cells.Count; i++)
        {
            if (KindAt(i) == Athlete && cells[i].Length > 0)
            {
                athletes.Add((cells[i], i + 1 < cells.Count && KindAt(i + 1) == SayAthlete ? cells[i + 1] : ""));
            }
        }

        return new PasteLine(First(cells, Team), First(cells, Division), athletes, First(cells, Say), First(cells, Home),
            [.. cells.Where((cell, i) => KindAt(i) == Fact && cell.Length > 0)]);
    }

    /// <summary>The first column, from 1, that tells how to say a name where no name stands; null when there is none.</summary>
    public int? SayWithoutName(IReadOnlyList<string> cells)
    {
        var column = Enumerable.Range(1, Math.Max(0, cells.Count - 1)).FirstOrDefault(i => KindAt(i) == SayAthlete && cells[i].Length > 0 && cells[i - 1].Length == 0);
        return column == 0 ? null : column + 1;
    }

    /// <summary>The team with what the line tells of it; what no column is about stays as it was.</summary>
    public TeamSetup Tells(PasteLine line, TeamSetup? known, TeamSetup team) => team with
    {
        Say = kinds.Contains(Say) ? OrNull(line.Say) : known?.Say,
        Home = kinds.Contains(Home) ? OrNull(line.Home) : known?.Home,
        Facts = kinds.Contains(Fact) ? line.Facts.Count > 0 ? line.Facts.ToItems() : null : known?.Facts,
        AthletesSay = kinds.Contains(SayAthlete) ? line.Athletes.Any(athlete => athlete.Say.Length > 0) ? line.Athletes.Select(athlete => athlete.Say).ToItems() : null
            : known is not null && known.Athletes == team.Athletes ? known.AthletesSay : null,
    };

    private string KindAt(int column) => column < kinds.Count ? kinds[column] : ReferenceEquals(this, Plain) ? Athlete : "";

    private string First(IReadOnlyList<string> cells, string kind) => kinds.IndexOf(kind) is >= 0 and var column && column < cells.Count ? cells[column] : "";

    private static string? OrNull(string text) => text.Length > 0 ? text : null;

    /// <summary>"Athlete 3" is an athlete, "Facts" a fact, in the language of the screen or in English; nothing above a column is nothing, and null is no column.</summary>
    private static string? KindOf(string cell)
    {
        var word = cell.Trim().TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9', ' ');
        bool Is(string name) => string.Equals(name, word, StringComparison.OrdinalIgnoreCase);
        return word.Length == 0 ? "" : Kinds.FirstOrDefault(kind => Is(kind) || Is($"{kind}s") || PasteWords.Columns(kind).Any(Is));
    }
}
