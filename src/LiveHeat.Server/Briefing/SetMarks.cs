using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Briefing;

/// <summary>What a set stands for besides its reps: its end is the tiebreak, or a part that is scored apart ends with it.</summary>
internal static class SetMarks
{
    /// <summary>Of the sets before the rounds, by their place in the list, from 0.</summary>
    public static ILookup<int, string> Before(Prescription prescription) => Of(prescription, at => at.Round == 0 ? at.Set - 1 : null);

    /// <summary>Of the sets after the rounds.</summary>
    public static ILookup<int, string> After(Prescription prescription) => Of(prescription, at => at.Round is null ? at.Set - 1 : null);

    /// <summary>Of the sets of a round. A lift is one set, whichever of its attempts is meant.</summary>
    public static ILookup<int, string> Round(Workout workout, Prescription prescription) => workout.Scoring is ScoringRule.HeaviestLoad
        ? new[] { prescription.Tiebreak }.OfType<TiebreakSet>().ToLookup(_ => 0, at => Attempt(workout.Order, at))
        : Of(prescription, at => at.Round is > 0 and var round ? InRounds(prescription, round, at.Set) : null);

    private static ILookup<int, string> Of(Prescription prescription, Func<TiebreakSet, int?> placeOf)
    {
        var tiebreak = new[] { prescription.Tiebreak }.OfType<TiebreakSet>().Select(at => (Place: placeOf(at), Words: BriefingWords.Tiebreak(at.Round)));
        var parts = (prescription.Parts ?? []).Where(part => part.Last is not null).Select(part => (Place: placeOf(part.Last!), Words: BriefingWords.PartEnds(part.Name, part.Last!.Round)));
        return tiebreak.Concat(parts).Where(mark => mark.Place is not null).ToLookup(mark => mark.Place!.Value, mark => mark.Words);
    }

    /// <summary>Where a round's set stands among the sets of all rounds: by the clock a round may leave some out.</summary>
    private static int? InRounds(Prescription prescription, int round, int set) =>
        prescription.Round.Select((one, i) => (one, i)).Where(pair => pair.one.InRound is null || pair.one.InRound == round).Select(pair => (int?)pair.i).ElementAtOrDefault(set - 1);

    private static string Attempt(RelayOrder order, TiebreakSet at) => order switch
    {
        RelayOrder.EachMovement => BriefingWords.TiebreakAttemptOf(at.Set, at.Round ?? 1),
        RelayOrder.Together => BriefingWords.TiebreakAttempt(at.Set),
        _ => BriefingWords.TiebreakAttemptOf(at.Round ?? 1, at.Set),
    };
}
