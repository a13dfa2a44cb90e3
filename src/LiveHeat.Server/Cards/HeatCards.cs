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
public sealed record LaneCard(int Lane, string Team, string Division, IReadOnlyList<string> Athletes, string Cap, bool Endless, IReadOnlyList<IReadOnlyList<CardRound>> Pages);

/// <summary>Lines that belong together.</summary>
/// <param name="Heading">"Round 3"; on a second page it may stand again.</param>
/// <param name="Who">The athlete who does all of it; empty where they differ, or the team works as one.</param>
/// <param name="Lines">In order.</param>
public sealed record CardRound(string Heading, string Who, IReadOnlyList<CardLine> Lines);

/// <summary>One step to be marked.</summary>
/// <param name="Step">Its number.</param>
/// <param name="Kind">"set", "value", "tag" or "finish".</param>
/// <param name="Label">As the pad says it.</param>
/// <param name="Notes">The load, and what one box stands for.</param>
/// <param name="Who">The athlete, where the round does not say it.</param>
/// <param name="Boxes">How many there are to tick.</param>
/// <param name="Field">What is written beside them: a time or a reading; null where nothing is.</param>
public sealed record CardLine(int Step, string Kind, string Label, string Notes, string Who, int Boxes, string? Field);
