using System.Globalization;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Setup;

/// <summary>The parts of the work that a tiebreak may stand in.</summary>
public enum TiebreakPart
{
    /// <summary>No tiebreak.</summary>
    None,

    /// <summary>Before the rounds.</summary>
    Before,

    /// <summary>In a round.</summary>
    Round,

    /// <summary>After the rounds.</summary>
    After,
}

/// <summary>The set whose end breaks ties, while it is written.</summary>
public sealed record TiebreakDraft(TiebreakPart Part, int Set, string Round)
{
    /// <summary>No tiebreak; if there will be one, it is first thought of in round 1.</summary>
    public static TiebreakDraft None { get; } = new(TiebreakPart.None, 1, "1");

    /// <summary>One that is there.</summary>
    public static TiebreakDraft Of(TiebreakSet? tiebreak) => tiebreak switch
    {
        null => None,
        { Round: null } => new(TiebreakPart.After, tiebreak.Set, "1"),
        { Round: 0 } => new(TiebreakPart.Before, tiebreak.Set, "1"),
        { Round: { } round } => new(TiebreakPart.Round, tiebreak.Set, WorkoutDraft.Text(round)),
    };

    /// <summary>What a list of choices calls it.</summary>
    public string Key => Part == TiebreakPart.None ? "" : string.Create(CultureInfo.InvariantCulture, $"{Part}-{Set}");

    /// <summary>The same with another choice of that list.</summary>
    public TiebreakDraft Chosen(string key)
    {
        var parts = key.Split('-');
        return parts.Length == 2 && Enum.TryParse<TiebreakPart>(parts[0], out var part) && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var set)
            ? this with { Part = part, Set = set }
            : this with { Part = TiebreakPart.None };
    }

    internal TiebreakSet? Make(WorkoutDraft workout, string at) => Part switch
    {
        TiebreakPart.None => null,
        TiebreakPart.Before => new TiebreakSet(0, Set),
        TiebreakPart.After => new TiebreakSet(null, Set),
        _ => new TiebreakSet(Math.Max(1, workout.Number(Round, $"{at}.tiebreak.round")), Set),
    };
}
