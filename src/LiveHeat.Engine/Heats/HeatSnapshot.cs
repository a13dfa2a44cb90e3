using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Heats;

/// <summary>A lane of a heat and the team on it.</summary>
/// <param name="Lane">The lane.</param>
/// <param name="Team">The team's id.</param>
/// <param name="Name">The team's name.</param>
/// <param name="Division">The team's division.</param>
/// <param name="Athletes">In relay order.</param>
public sealed record LaneEntry(LaneNumber Lane, string Team, string Name, string Division, Items<string> Athletes)
{
    /// <summary>The team as it stands on the lane.</summary>
    public LineUp LineUp() => new(Team, Name, Division, Athletes);
}

/// <summary>All there is to know about a heat when it is called.</summary>
/// <param name="Competition">The competition's name.</param>
/// <param name="Title">The heat's title.</param>
/// <param name="Workout">What is done.</param>
/// <param name="Lanes">Who stands where; lanes are not repeated.</param>
/// <param name="Rounding">How measured times become official.</param>
/// <param name="Timekeepers">How the times of several timekeepers combine.</param>
/// <param name="HandTimingMs">
/// How wrong a hand may be either way, milliseconds: half of the 0.19 s by which the timers of one run differed (J Strength Cond Res 29(6):1509, 2015).
/// </param>
/// <param name="RerunOf">The heat that this one repeats; null when it repeats none.</param>
public sealed record HeatSnapshot(string Competition, string Title, Workout Workout, Items<LaneEntry> Lanes, Rounding Rounding,
    TimekeeperRule Timekeepers = TimekeeperRule.Athletics, int HandTimingMs = HeatSnapshot.UsualHandTimingMs, HeatId? RerunOf = null)
{
    /// <summary>See <see cref="HandTimingMs"/>.</summary>
    public const int UsualHandTimingMs = 95;

    /// <summary>How long after the provisional result is posted a team may appeal, where nothing else is set: common practice, no source.</summary>
    public const int UsualAppealMinutes = 15;

    /// <summary>How long after the provisional result is posted a team may appeal, minutes, from 0; null is <see cref="UsualAppealMinutes"/>.</summary>
    public int? AppealMinutes { get; init; }
}
