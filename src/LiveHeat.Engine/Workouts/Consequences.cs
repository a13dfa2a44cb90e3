namespace LiveHeat.Engine.Workouts;

/// <summary>What an offence costs in this workout.</summary>
/// <remarks>
/// 30 s for every offence after a warning: the international functional-fitness federation's test announcements of 2021 and 2023. Other workouts have other
/// prices, so none is assumed.
/// </remarks>
/// <param name="AddMs">Onto the official time, milliseconds, 0 to an hour.</param>
/// <param name="Reps">Off the worth done, 0 to 10,000; one of the two is above 0.</param>
/// <param name="WarnFirst">The first offence is warned of. A head judge may go on without: it is told, not enforced.</param>
public sealed record PenaltyRule(int AddMs, int Reps = 0, bool WarnFirst = true);

/// <summary>What follows when a team departs from what was prescribed.</summary>
public enum Consequence
{
    /// <summary>Nothing: it counts like the prescribed work.</summary>
    Allowed,

    /// <summary>The workout's penalty, once for each departure.</summary>
    Penalty,

    /// <summary>The team ranks after all who did as prescribed, in order among those who did likewise.</summary>
    RanksBelow,

    /// <summary>The result is void: the team is not ranked.</summary>
    Void,
}

/// <summary>What a workout says of departures from what was prescribed. The fold applies it by itself.</summary>
/// <param name="WrongAthlete">Another athlete worked than the plan names: once for each leg.</param>
/// <param name="LineUpChange">Others, or another order, after GO: once for each change.</param>
public sealed record Consequences(Consequence WrongAthlete = Consequence.Allowed, Consequence LineUpChange = Consequence.Allowed)
{
    /// <summary>
    /// Another division's work was taken: once for each time. Null, as before there was a choice: the team has no place in its division and is compared
    /// only with those that took the same.
    /// </summary>
    public Consequence? Variant { get; init; }

    /// <summary>Some departure costs the workout's penalty.</summary>
    internal bool NeedsPenalty => WrongAthlete == Consequence.Penalty || LineUpChange == Consequence.Penalty || Variant == Consequence.Penalty;
}
