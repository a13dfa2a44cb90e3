using LiveHeat.Contracts.Sheets;

namespace LiveHeat.Server.Briefing;

/// <summary>What athletes and judges of a heat are told before it: on paper and on the big screen.</summary>
/// <param name="Competition">Its name.</param>
/// <param name="Title">The heat's title.</param>
/// <param name="Workout">The workout's name.</param>
/// <param name="Summary">The workout in a line.</param>
/// <param name="Relay">Who does what, one sentence each.</param>
/// <param name="Tag">What a good tag is; null where nobody tags.</param>
/// <param name="Divisions">Those that stand on the lanes; all of the workout's while nobody does.</param>
/// <param name="Movements">Those that these divisions do, in the order of the workout; the tag is not among them.</param>
/// <param name="Lanes">Who stands where, by lane.</param>
public sealed record HeatBriefing(
    string Competition, string Title, string Workout, string Summary, IReadOnlyList<string> Relay, SheetMovement? Tag,
    IReadOnlyList<BriefedDivision> Divisions, IReadOnlyList<BriefedMovement> Movements, IReadOnlyList<BriefedLane> Lanes);

/// <summary>A division's amount of the work.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Cap">Its time cap, as the clock shows it.</param>
/// <param name="Parts">In the order they are done.</param>
public sealed record BriefedDivision(string Name, string Cap, IReadOnlyList<BriefedPart> Parts);

/// <summary>Sets that belong together: "8 rounds of".</summary>
public sealed record BriefedPart(string Heading, IReadOnlyList<BriefedSet> Sets);

/// <summary>A set.</summary>
/// <param name="What">"18 wall balls".</param>
/// <param name="Notes">The load as announced, and what a score makes of it; empty where there is nothing to add.</param>
public sealed record BriefedSet(string What, string Notes);

/// <summary>A movement and, where only some divisions do it, which.</summary>
public sealed record BriefedMovement(SheetMovement Movement, string? OnlyIn);

/// <summary>A team on its lane, its athletes in relay order.</summary>
public sealed record BriefedLane(int Lane, string Team, string Division, IReadOnlyList<string> Athletes);
