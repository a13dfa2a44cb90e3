using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Briefing;

/// <summary>Makes the briefing of a heat from what it was set up, or called, with.</summary>
internal static class BriefingMaking
{
    public static HeatBriefing Of(HeatSnapshot heat)
    {
        var workout = heat.Workout;
        var standing = heat.Lanes.Select(lane => lane.Division).ToHashSet();
        var prescriptions = workout.Prescriptions.Where(prescription => standing.Count == 0 || standing.Contains(prescription.Division)).ToList();
        var movements = workout.Movements.ToDictionary(movement => movement.Id);
        var names = prescriptions.ToDictionary(prescription => prescription.Division, prescription => prescription.DivisionName);
        return new HeatBriefing(
            heat.Competition, heat.Title, workout.Name, SheetMaking.Summary(workout), RelayWords.Of(workout),
            RelayWords.HasTags(workout) ? Tag(movements) : null,
            [.. prescriptions.Select(prescription => Division(workout, prescription, movements))],
            [.. workout.Movements.Select(movement => Movement(workout, movement, prescriptions)).OfType<BriefedMovement>()],
            [.. heat.Lanes.OrderBy(lane => lane.Lane).Select(lane => new BriefedLane(lane.Lane.Value, lane.Name, names.GetValueOrDefault(lane.Division, lane.Division), lane.Athletes))]);
    }

    private static SheetMovement Tag(Dictionary<string, Movement> movements) =>
        movements.TryGetValue(Engine.Workouts.Movement.TagId, out var own) ? SheetMaking.Movement(own) : BriefingWords.UsualTag;

    private static BriefedDivision Division(Workout workout, Prescription prescription, Dictionary<string, Movement> movements)
    {
        var rounds = BriefingWords.Rounds(workout, prescription);
        BriefedPart[] parts =
        [
            new(rounds is not null ? BriefingWords.BeforeRounds : BriefingWords.ToBeDone, Sets(prescription.Before, SetMarks.Before(prescription))),
            new(rounds ?? "", rounds is not null ? Sets(prescription.Round, SetMarks.Round(workout, prescription)) : []),
            new(rounds is not null ? BriefingWords.AfterRounds : BriefingWords.Then, Sets(prescription.After, SetMarks.After(prescription))),
        ];
        return new BriefedDivision(prescription.DivisionName, TimeText.Whole(prescription.CapMs), [.. parts.Where(part => part.Sets.Count > 0)]);

        IReadOnlyList<BriefedSet> Sets(IEnumerable<PrescribedSet> sets, ILookup<int, string> marks) =>
            [.. sets.Select((set, i) => BriefingWords.Set(set, movements[set.Movement], workout.Scoring, marks[i]))];
    }

    /// <summary>Null when none of the divisions does it.</summary>
    private static BriefedMovement? Movement(Workout workout, Movement movement, List<Prescription> prescriptions)
    {
        var who = prescriptions.Where(prescription => Does(workout, prescription, movement.Id)).ToList();
        return who.Count == 0 || movement.Id == Engine.Workouts.Movement.TagId
            ? null
            : new BriefedMovement(SheetMaking.Movement(movement), who.Count == prescriptions.Count ? null : BriefingWords.Only(who.Select(prescription => prescription.DivisionName)));
    }

    private static bool Does(Workout workout, Prescription prescription, string movement) =>
        prescription.Before.Concat(BriefingWords.Rounds(workout, prescription) is null ? [] : prescription.Round).Concat(prescription.After).Any(set => set.Movement == movement);
}
