namespace LiveHeat.Server.Cards;

/// <summary>The paper scorecards of a heat, for a lane whose judge has no phone, and for every lane as a second record.</summary>
/// <param name="Competition">Its name.</param>
/// <param name="Title">The heat's title.</param>
/// <param name="Workout">The workout's name.</param>
/// <param name="Lanes">By lane.</param>
public sealed record HeatCards(string Competition, string Title, string Workout, IReadOnlyList<LaneCard> Lanes);

/// <summary>One lane's card.</summary>
/// <param name="Lane">Its number.</param>
/// <param name="Team">The team.</param>
/// <param name="Division">The division's name.</param>
/// <param name="Athletes">In relay order.</param>
/// <param name="Cap">The time cap, as the clock shows it.</param>
/// <param name="Endless">The rounds go on until the time is over.</param>
/// <param name="Pages">Each on a page of its own; empty where the lane's work cannot be laid out.</param>
public sealed record LaneCard(int Lane, string Team, string Division, IReadOnlyList<string> Athletes, string Cap, bool Endless, IReadOnlyList<IReadOnlyList<CardRound>> Pages)
{
    /// <summary>How it is marked, in sentences.</summary>
    public IReadOnlyList<string> Marks { get; init; } = [];

    /// <summary>What is written down at the end, each on a line.</summary>
    public IReadOnlyList<string> Totals { get; init; } = [];
}

/// <summary>Lines that belong together.</summary>
/// <param name="Heading">"Round 3"; on a second page it may stand again.</param>
/// <param name="Who">The athlete who does all of it; empty where they differ, or the team works as one.</param>
/// <param name="Lines">In order.</param>
public sealed record CardRound(string Heading, string Who, IReadOnlyList<CardLine> Lines)
{
    /// <summary>From when to when by the floor's clock; empty where the work follows none.</summary>
    public string Times { get; init; } = "";

    /// <summary>It stands in one piece: a set at the head of a column does not say whose round it is.</summary>
    public bool Together { get; init; }

    /// <summary>What stands under a round by the clock; null where there is nothing, or it stands on the next sheet.</summary>
    public CardRoundEnd? End { get; init; }
}

/// <summary>The end of a round by the clock.</summary>
/// <param name="LeftOpen">What asks how much of the open set was done; empty where it is not asked.</param>
/// <param name="Rest">Until when there is rest; empty after the last round, and where the next begins at once.</param>
public sealed record CardRoundEnd(string LeftOpen, string Rest);

/// <summary>One step to be marked.</summary>
/// <param name="Step">Its number.</param>
/// <param name="Kind">"set", "value", "attempt", "tag" or "finish".</param>
/// <param name="Label">As the pad says it.</param>
/// <param name="Notes">The load, and what one box stands for.</param>
/// <param name="Who">The athlete, or all who work together, where the round does not say it.</param>
/// <param name="Boxes">How many there are to tick.</param>
/// <param name="Field">What is written beside them: a time or a reading; null where nothing is.</param>
public sealed record CardLine(int Step, string Kind, string Label, string Notes, string Who, int Boxes, string? Field)
{
    /// <summary>A line for each athlete's part of what the team shares; empty where one does it all.</summary>
    public IReadOnlyList<CardTally> Tallies { get; init; } = [];
}

/// <summary>One athlete's part of what the team shares.</summary>
/// <param name="Athlete">The name.</param>
/// <param name="Least">The least that everybody does, in words; empty where there is none.</param>
public sealed record CardTally(string Athlete, string Least);
