using System.Globalization;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Setup;

/// <summary>A points rule while it is written: numbers are text, until they are read.</summary>
public sealed class PointsDraft
{
    private static readonly char[] Between = [' ', ';', '\t', '\r', '\n'];

    /// <summary>Low or high points.</summary>
    public PointsKind Rule { get; set; }

    /// <summary>Numbers of workouts, between blanks: "5 9".</summary>
    public string Exclusions { get; set; } = "";

    /// <summary>Points by place, between blanks: "25 18 15".</summary>
    public string Table { get; set; } = "";

    /// <summary>How many go on, by workout; empty for all.</summary>
    public Dictionary<string, string> Cuts { get; } = [];

    /// <summary>A rule as it was kept.</summary>
    public static PointsDraft Of(PointsSetup points)
    {
        var draft = new PointsDraft { Rule = points.Rule, Exclusions = Text(points.ExclusionsFrom.Select(from => (decimal)from)), Table = Text(points.Table) };
        foreach (var cut in points.Cuts)
        {
            draft.Cuts[cut.Workout] = cut.GoOn.ToString(CultureInfo.InvariantCulture);
        }

        return draft;
    }

    /// <summary>Points as they are typed.</summary>
    public static string Text(IEnumerable<decimal> points) => string.Join(' ', points.Select(one => one.ToString("0.####", Numbers.Format)));

    /// <summary>How many go on after a workout, as written.</summary>
    public string CutAfter(string workout) => Cuts.GetValueOrDefault(workout, "");

    /// <summary>The rule, or what cannot be read. What the other kind of points would use is left out.</summary>
    /// <param name="workouts">The competition's, in order; a cut after another is forgotten.</param>
    public (PointsSetup? Points, FormErrors Errors) Make(IReadOnlyList<Workout> workouts)
    {
        var errors = new List<FieldProblem>();
        var exclusions = Rule == PointsKind.Low ? Read(Exclusions, "exclusionsFrom", PointsWords.ExclusionsWrong, Whole, errors) : [];
        var table = Rule == PointsKind.High ? Read(Table, "table", PointsWords.TableWrong, Point, errors) : [];
        var cuts = new List<CutSetup>();
        foreach (var workout in workouts.Where(workout => CutAfter(workout.Id).Trim().Length > 0))
        {
            if (Whole(CutAfter(workout.Id).Trim()) is { } goOn)
            {
                cuts.Add(new CutSetup(workout.Id, goOn));
            }
            else
            {
                errors.Add(new FieldProblem(CutField(workout.Id), PointsWords.CutWrong));
            }
        }

        return errors.Count > 0 ? (null, new FormErrors(errors)) : (new PointsSetup(Rule) { ExclusionsFrom = exclusions.ToItems(), Table = table.ToItems(), Cuts = cuts.ToItems() }, FormErrors.None);
    }

    /// <summary>A cut's field on the form; the wire names it by its number.</summary>
    public static string CutField(string workout) => $"cuts[{workout}]";

    /// <summary>Errors as the server names them, with each cut's at its workout.</summary>
    public static FormErrors Told(PointsSetup sent, IEnumerable<FieldProblem> errors) => new(errors.Select(error =>
        Enumerable.Range(0, sent.Cuts.Count).Where(i => error.Field.StartsWith($"cuts[{i}]", StringComparison.Ordinal)).Select(i => error with { Field = CutField(sent.Cuts[i].Workout) }).FirstOrDefault() ?? error));

    private static List<T> Read<T>(string text, string field, Func<string, string> wrong, Func<string, T?> one, List<FieldProblem> errors)
        where T : struct
    {
        var read = new List<T>();
        foreach (var word in text.Split(Between, StringSplitOptions.RemoveEmptyEntries))
        {
            if (one(word) is { } number)
            {
                read.Add(number);
            }
            else
            {
                errors.Add(new FieldProblem(field, wrong(word)));
            }
        }

        return read;
    }

    private static int? Whole(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    /// <summary>A comma may stand for the decimal point, as it does on half the keyboards; so it does not stand between two numbers.</summary>
    private static decimal? Point(string text) =>
        decimal.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;
}
