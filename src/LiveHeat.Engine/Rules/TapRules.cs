using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Rules;

/// <summary>Whether a tap may be written at all. An odd tap is kept and flagged by the fold; only one that is not this judge's to make is refused.</summary>
public static class TapRules
{
    /// <summary>No load, or one that nobody lifts.</summary>
    internal static Verdict.Refused Unliftable { get; } = new("unreadable", Refusals.Unliftable(Attempts.HeaviestLoad));

    /// <summary>Null when the tap is to be kept.</summary>
    /// <param name="heat">The heat it is for.</param>
    /// <param name="tap">The tap.</param>
    /// <param name="by">Who sends it.</param>
    /// <param name="ownLane">The sender's lane, for a judge.</param>
    public static Verdict.Refused? Refuse(HeatState heat, HeatFact.Floor tap, By by, LaneNumber? ownLane)
    {
        if (heat.Find(tap.Lane) is null)
        {
            return new Verdict.Refused("no-such-lane", Refusals.NoSuchLane(tap.Lane));
        }

        if (tap is HeatFact.AttemptJudged { Load: var load } && !Attempts.CanBe(load))
        {
            return Unliftable;
        }

        // A phone that moved to another lane may still hold taps of the lane it had: the seat it held decides, not the lane it has now.
        var sat = heat.Seats.Any(seat => seat.Lane == tap.Lane && seat.SignIn == by.SignIn);
        return ownLane == tap.Lane || sat
            ? null
            : new Verdict.Refused("not-your-lane", Refusals.NeverJudgedLane(tap.Lane));
    }
}
