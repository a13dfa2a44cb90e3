namespace LiveHeat.Engine.Points;

/// <summary>Whether a team has a place in a workout.</summary>
public enum Taken
{
    /// <summary>It has a place.</summary>
    Placed,

    /// <summary>It did not start, or withdrew.</summary>
    DidNotStart,

    /// <summary>It was put out of the workout.</summary>
    Disqualified,

    /// <summary>Its result is void.</summary>
    ResultVoid,
}

/// <summary>A team's place in one workout within its division.</summary>
/// <param name="Team">The team.</param>
/// <param name="Place">From 1; those who tie have the same. 0 without a place.</param>
/// <param name="Taken">Whether it has a place.</param>
/// <param name="Provisional">Not certified yet.</param>
public sealed record TeamPlace(string Team, int Place, Taken Taken = Taken.Placed, bool Provisional = false);

/// <summary>One workout's places within a division.</summary>
/// <param name="Workout">Its id.</param>
/// <param name="Places">One a team that has been at it; a team missing here has yet to do it.</param>
public sealed record WorkoutPlaces(string Workout, Items<TeamPlace> Places)
{
    /// <summary>How many teams go on after this workout; null: all. Those who tie for the last of these places all go on.</summary>
    public int? GoOn { get; init; }

    /// <summary>The team's place, or null when it has yet to do the workout.</summary>
    public TeamPlace? Of(string team) => Places.FirstOrDefault(place => place.Team == team);
}
