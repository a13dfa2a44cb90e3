using LiveHeat.Contracts.Language;

namespace LiveHeat.Screens.Words;

/// <summary>Entering many teams at once.</summary>
public static class PasteWords
{
    private static readonly Wording Words = new(typeof(PasteWords));

    public static string Help => Words[nameof(Help)];
    public static string Example => Words[nameof(Example)];
    public static string Enter => Words[nameof(Enter)];

    /// <summary>What a kind of column is called, the usual word first.</summary>
    /// <param name="kind">As <see cref="Setup.PasteColumns"/> knows it.</param>
    public static IReadOnlyList<string> Columns(string kind) => Words[$"{nameof(Columns)}.{kind}"].Split(", ");

    public static string LineTooShort(int line) => Words.Say(nameof(LineTooShort), line);

    public static string NoSuchColumn(int line, int column, string name, IEnumerable<string> known) => Words.Say(nameof(NoSuchColumn), line, column, name, string.Join(", ", known));

    public static string SayBehindNothing(int line, int column, string name) => Words.Say(nameof(SayBehindNothing), line, column, name);

    public static string ColumnTwice(int line, int column, string name) => Words.Say(nameof(ColumnTwice), line, column, name);

    public static string SayWithoutName(int line, int column) => Words.Say(nameof(SayWithoutName), line, column);

    public static string NoSuchDivision(int line, int column, string name, IEnumerable<string> known) => Words.Say(nameof(NoSuchDivision), line, column, name, string.Join(", ", known));

    public static string Twice(int line, string name) => Words.Say(nameof(Twice), line, name);

    public static string TooManyAthletes(int line, int count, int most) => Words.Say(nameof(TooManyAthletes), line, count, most);

    /// <summary>What is wrong with a team.</summary>
    public static string OfTeam(string team, string wrong) => Words.Say(nameof(OfTeam), team, wrong);
}
