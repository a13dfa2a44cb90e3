using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Points;
using LiveHeat.Engine.Scoring;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Callouts;

/// <summary>Results of earlier heats of the same workout as they come in: posted with the freeze, official when both have signed. What may still change is never told as final.</summary>
internal static class FromResults
{
    public static IEnumerable<Callout> Of(IReadOnlyList<HeatState> earlier, Instant now)
    {
        foreach (var heat in earlier)
        {
            if (CameIn.At(heat) is not { } at || CalloutWeight.Now(CalloutKind.HeatResult, 1, now - at) is null)
            {
                continue;
            }

            var open = OpenQuestions.Of(heat, now).SelectMany(question => question.Lanes).ToHashSet();
            var divisions = HeatResult.Of(heat, now).GroupBy(line => line.Lane.Entry.Division).ToList();
            foreach (var lines in divisions.Select(division => division.ToList()))
            {
                // Where parts are scored apart nobody has won the whole; where something is open nobody may be named.
                if (lines.Exists(line => line.Lane.Plan.Parts.Count > 0 || open.Contains(line.Lane.Lane)))
                {
                    continue;
                }

                var told = new CameInResult(heat, at, now, divisions.Count > 1 ? lines[0].Lane.Plan.DivisionName : null);
                if (Won(told, lines) is { } won)
                {
                    yield return won;
                }

                if (Leads(told, lines[0].Lane.Entry.Division, earlier) is { } leads)
                {
                    yield return leads;
                }
            }
        }
    }

    private static Callout? Won(CameInResult told, List<ResultLine> lines)
    {
        var first = lines.Where(line => line.Place == 1 && HasShown(line)).ToList();
        var others = lines.Where(line => line.Place > 1).OrderBy(line => line.Place).ToList();
        if (first.Count == 0 || first.Count + others.Count < 2)
        {
            return null;
        }

        var result = told.Best(first, CameIn.IsFinal(told.Heat));
        var second = first.Count == 1 && others.Count(line => line.Place == others[0].Place) == 1 ? others[0] : null;
        return told.Make(CalloutKind.HeatResult, 1, second is null ? result : Behind(result, first[0], second));
    }

    /// <summary>By how much, where both have a time or neither has: of what a tiebreak parted there is nothing to say.</summary>
    private static EarlierResult Behind(EarlierResult result, ResultLine first, ResultLine second) => (first.OfficialMs, second.OfficialMs) switch
    {
        ({ } own, { } other) when other > own => result with { Second = second.Lane.Entry.Name, AheadMs = other - own },
        (null, null) when first.Outcome == second.Outcome && first.Worth > second.Worth => result with { Second = second.Lane.Entry.Name, AheadWorth = first.Worth - second.Worth },
        _ => result,
    };

    /// <summary>Only where an earlier heat had the division too: else whoever won leads. What was posted changed the order; its signing keeps it.</summary>
    private static Callout? Leads(CameInResult told, string division, IReadOnlyList<HeatState> earlier)
    {
        var heats = earlier.Where(heat => CameIn.At(heat) is not null).ToList();
        var (before, after) = (Leaders(heats.Where(heat => heat.Heat != told.Heat.Heat), division, told.Now), Leaders(heats, division, told.Now));
        if (before.Count == 0 || after.Count == 0)
        {
            return null;
        }

        var kept = told.Heat.Told == Phase.Certified || before.Select(result => result.Team).ToHashSet().SetEquals(after.Select(result => result.Team));
        var official = heats.Where(heat => heat.Lanes.Any(lane => lane.Entry.Division == division)).All(CameIn.IsFinal);
        return told.Make(CalloutKind.WorkoutLead, kept ? 0.75 : 1, told.Best([.. after.Select(result => result.Line)], official) with { Kept = kept });
    }

    private static List<TeamResult> Leaders(IEnumerable<HeatState> heats, string division, Instant now)
    {
        var results = CountingResults.Of(heats.Select(heat => (heat, HeatResult.Of(heat, now))), division);
        var first = WorkoutOrder.Of(results).Where(place => place is { Place: 1, Taken: Taken.Placed }).Select(place => place.Team).ToHashSet();
        return results.Where(result => first.Contains(result.Team) && HasShown(result.Line)).ToList();
    }

    private static bool HasShown(ResultLine line) => line.OfficialMs is not null || line.Worth > 0;

    /// <summary>One division of a heat whose result came in.</summary>
    private sealed record CameInResult(HeatState Heat, Instant At, Instant Now, string? Division)
    {
        public EarlierResult Best(List<ResultLine> lines, bool official)
        {
            var plan = lines[0].Lane.Plan;
            return new EarlierResult(Heat.Heat, Heat.Snapshot!.Title, Division, lines.Select(line => line.Lane.Entry.Name).ToItems(), official, lines[0].OfficialMs, lines[0].Worth)
            {
                Score = plan.Measured ? plan.Score : null,
                RoundsAndReps = plan is { Endless: true, Windows.Count: 0 } ? RoundsAndReps.Of(plan, lines[0].Lane.DoneSteps, lines[0].Worth) : null,
            };
        }

        /// <summary>Posted and signed are two things worth saying, and so is each revision.</summary>
        public Callout? Make(CalloutKind kind, double share, EarlierResult result) => CalloutWeight.Now(kind, 1, Now - At, share) is { } weight
            ? new Callout($"{kind}.{Heat.Heat}.{Heat.Revision}.{Heat.Told}.{Division}".ToLowerInvariant(), kind, weight, At, CalloutGrounds.Confirmed, []) { Earlier = result }
            : null;
    }
}
