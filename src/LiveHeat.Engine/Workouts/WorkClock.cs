namespace LiveHeat.Engine.Workouts;

/// <summary>Clock-driven work: every round begins and ends by the clock, with rest between; what is done in it counts, what is not done is over.</summary>
/// <param name="WorkMs">How long each round is, milliseconds, above 0.</param>
/// <param name="RestMs">From the end of one to the beginning of the next, from 0.</param>
/// <param name="Repeat">The round's sets are done again and again until it is over; otherwise once, and who is through rests.</param>
public sealed record WorkClock(int WorkMs, int RestMs, bool Repeat)
{
    /// <summary>From GO to the end of the last round.</summary>
    public long LengthMs(int rounds) => (rounds * ((long)WorkMs + RestMs)) - RestMs;
}

/// <summary>A round by the clock, in lane time.</summary>
/// <param name="First">Its first step.</param>
/// <param name="Last">Its last step.</param>
/// <param name="FromMs">Milliseconds after GO.</param>
/// <param name="UntilMs">Later than <paramref name="FromMs"/>. What is done exactly then still counts.</param>
public sealed record Window(int First, int Last, int FromMs, int UntilMs);

/// <summary>Lays clock-driven work out, and finds what cannot be.</summary>
internal static class Windows
{
    private const int LongestMs = 60 * 60 * 1000;

    /// <summary>The prescription with each round's own sets as often as the fastest possible team could begin them in it.</summary>
    public static Prescription LaidOut(RelayOrder order, Prescription prescription, WorkClock clock, IReadOnlyDictionary<string, Movement> movements)
    {
        if (!clock.Repeat)
        {
            return prescription;
        }

        return prescription with { Round = Enumerable.Range(1, prescription.Rounds).SelectMany(round => Again(prescription.SetsIn(round)).Select(set => set with { InRound = round })).ToItems() };

        IEnumerable<PrescribedSet> Again(Items<PrescribedSet> sets)
        {
            var once = prescription with { Before = [], Rounds = 0, Round = sets, CapMs = clock.WorkMs };
            var times = Math.Min(EndlessRounds.Of(order, once, movements), Math.Max(1, EndlessRounds.MostSteps / (prescription.Rounds * sets.Count)));
            return Enumerable.Repeat(sets, times).SelectMany(one => one);
        }
    }

    /// <summary>The windows of steps that were laid out round by round.</summary>
    public static Items<Window> Of(WorkClock clock, IReadOnlyList<Step> steps) => steps.GroupBy(step => step.Round!.Value)
        .Select(round => new Window(round.First().Number, round.Last().Number, From(clock, round.Key), From(clock, round.Key) + clock.WorkMs)).ToItems();

    /// <summary>What cannot be in clock-driven work.</summary>
    public static IEnumerable<FieldError> Errors(Workout workout, Prescription prescription, WorkClock clock, string at)
    {
        var who = prescription.DivisionName;
        if (workout.Scoring is not (ScoringRule.MostWork or ScoringRule.MostReading))
        {
            yield return new($"{at}.clock", WorkoutRefusals.ClockNeedsWork(who));
        }

        if (clock.WorkMs is < 1000 or > LongestMs || clock.RestMs is < 0 or > LongestMs)
        {
            yield return new($"{at}.clock", WorkoutRefusals.ClockLengths(who));
        }

        if (prescription.Rounds is < 1 or > 100)
        {
            yield return new($"{at}.rounds", WorkoutRefusals.ClockRounds(who, prescription.Rounds));
            yield break;
        }

        if (prescription.Before.Count > 0 || prescription.After.Count > 0)
        {
            yield return new(prescription.Before.Count > 0 ? $"{at}.before" : $"{at}.after", WorkoutRefusals.ClockHasOnlyRounds(who));
        }

        if (prescription.Round.Count == 0)
        {
            yield return new($"{at}.round", WorkoutRefusals.ClockRoundIsEmpty(who));
        }

        foreach (var (set, i) in prescription.Round.Select((set, i) => (set, i)).Where(pair => pair.set.InRound < 1 || pair.set.InRound > prescription.Rounds))
        {
            yield return new(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{at}.round[{i}].inRound"), WorkoutRefusals.NoSuchClockRound(who, set.InRound!.Value, prescription.Rounds));
        }

        foreach (var round in Enumerable.Range(1, prescription.Rounds).Where(round => prescription.Round.Count > 0 && prescription.SetsIn(round).Count == 0))
        {
            yield return new($"{at}.round", WorkoutRefusals.ClockRoundWithoutWork(who, round));
        }

        if (prescription.CapMs != clock.LengthMs(prescription.Rounds))
        {
            yield return new($"{at}.capMs", WorkoutRefusals.ClockCap(prescription.Rounds, who, new Part.Length(clock.LengthMs(prescription.Rounds))));
        }
    }

    private static int From(WorkClock clock, int round) => (round - 1) * (clock.WorkMs + clock.RestMs);
}
