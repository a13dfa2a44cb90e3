namespace LiveHeat.Server.Briefing;

/// <summary>One picture of the briefing on the big screen. What does not fit there is split by the screen itself (floor/briefing/split.js).</summary>
/// <param name="Kind">workout, relay, movement, faults, cautions, or none where there is no heat.</param>
/// <param name="Heading">In the largest letters.</param>
/// <param name="Under">Below it, smaller.</param>
/// <param name="Lines">What is to be read.</param>
/// <param name="Picture">The address of a picture; null for none.</param>
public sealed record Slide(string Kind, string Heading, string Under, IReadOnlyList<SlideLine> Lines, string? Picture = null);

/// <summary>One line: a label and what is said beside it; either may be empty.</summary>
/// <param name="Label">Told first, in heavier letters.</param>
/// <param name="Text">What is said.</param>
/// <param name="IsHead">Whether it heads the lines after it.</param>
public sealed record SlideLine(string Label, string Text, bool IsHead = false);
