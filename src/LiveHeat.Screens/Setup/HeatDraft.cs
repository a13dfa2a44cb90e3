using System.Globalization;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Setup;

/// <summary>A heat while it is written: texts as typed, a team or nothing for each lane.</summary>
public sealed class HeatDraft
{
    private const string LocalTime = "yyyy-MM-dd'T'HH:mm";
    private const int UsualLanes = 8;
    private const int MostLanes = 20;

    public string Id { get; private init; } = "";

    public string Number { get; set; } = "";

    public string Title { get; set; } = "";

    public string Workout { get; set; } = "";

    /// <summary>As the browser's own field has it; empty when nobody planned it.</summary>
    public string PlannedAt { get; set; } = "";

    /// <summary>The heat that this one repeats; empty when it repeats none.</summary>
    public string RerunOf { get; set; } = "";

    /// <summary>Team ids by lane, from lane 1; empty for an empty lane.</summary>
    public List<string> Lanes { get; } = [];

    /// <summary>A heat that is there, or the next one of the competition.</summary>
    public static HeatDraft Of(HeatSetup? heat, SetupAll all)
    {
        var number = all.Heats.Select(one => one.Number).DefaultIfEmpty(0).Max() + 1;
        var before = all.Heats.Count > 0 ? all.Heats[^1] : null;
        var draft = heat is null
            ? new HeatDraft
            {
                Number = number.ToString(CultureInfo.InvariantCulture),
                Title = SetupWords.Heat(number),
                Workout = before?.Workout ?? (all.Workouts.Count > 0 ? all.Workouts[0].Id : ""),
            }
            : new HeatDraft
            {
                Id = heat.Id,
                RerunOf = heat.RerunOf?.Value ?? "",
                Number = heat.Number.ToString(CultureInfo.InvariantCulture),
                Title = heat.Title,
                Workout = heat.Workout,
                PlannedAt = heat.PlannedAt is { } at ? DateTimeOffset.FromUnixTimeMilliseconds(at.UnixMs).ToLocalTime().ToString(LocalTime, CultureInfo.InvariantCulture) : "",
            };
        // A new heat has as many lanes as the one before it.
        draft.SetLanes(((heat ?? before)?.Lanes ?? []).Select(lane => lane.Lane.Value).DefaultIfEmpty(UsualLanes).Max());
        foreach (var lane in heat?.Lanes ?? [])
        {
            draft.Lanes[lane.Lane.Value - 1] = lane.Team;
        }

        return draft;
    }

    /// <summary>So many lanes; those beyond lose their team.</summary>
    public void SetLanes(int count)
    {
        count = Math.Clamp(count, 1, MostLanes);
        while (Lanes.Count < count)
        {
            Lanes.Add("");
        }

        Lanes.RemoveRange(count, Lanes.Count - count);
    }

    /// <summary>Empty lanes get teams that the workout has work for and that have no heat of it yet.</summary>
    public void Fill(SetupAll all)
    {
        var divisions = all.Workouts.FirstOrDefault(workout => workout.Id == Workout)?.Prescriptions.Select(prescription => prescription.Division).ToHashSet() ?? [];
        var busy = all.Heats.Where(heat => heat.Id != Id && heat.Workout == Workout).SelectMany(heat => heat.Lanes).Select(lane => lane.Team).Concat(Lanes).ToHashSet();
        var free = new Queue<string>(all.Teams.Where(team => divisions.Contains(team.Division) && !busy.Contains(team.Id)).Select(team => team.Id));
        for (var i = 0; i < Lanes.Count && free.Count > 0; i++)
        {
            Lanes[i] = Lanes[i].Length == 0 ? free.Dequeue() : Lanes[i];
        }
    }

    /// <summary>The heat, or what is wrong. Errors of lanes name the position on the wire; see <see cref="FieldOf"/>.</summary>
    public (HeatSetup? Heat, FormErrors Errors) Make(SetupAll all)
    {
        var errors = new List<FieldProblem>();
        if (!int.TryParse(Number, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
        {
            errors.Add(new("number", HeatWords.NumberWrong));
        }

        Instant? plannedAt = null;
        if (PlannedAt.Length > 0)
        {
            if (DateTime.TryParseExact(PlannedAt, [LocalTime, "yyyy-MM-dd'T'HH:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.AssumeLocal, out var local))
            {
                plannedAt = new Instant(new DateTimeOffset(local).ToUnixTimeMilliseconds());
            }
            else
            {
                errors.Add(new("plannedAt", HeatWords.PlannedAtWrong));
            }
        }

        var id = Id.Length > 0 ? Id : SetupId.For(Title, all.Heats.Select(heat => heat.Id), "heat");
        return errors.Count > 0 ? (null, new FormErrors(errors)) : (new HeatSetup(id, number, Title.Trim(), Workout, plannedAt, Taken(), RerunOf.Length > 0 ? new HeatId(RerunOf) : null), FormErrors.None);
    }

    /// <summary>The path of a lane's errors on the wire: only lanes with a team are sent.</summary>
    public string? FieldOf(int lane) => Lanes[lane - 1].Length == 0 ? null : string.Create(CultureInfo.InvariantCulture, $"lanes[{Lanes.Take(lane - 1).Count(team => team.Length > 0)}].");

    private Items<HeatSetupLane> Taken() => Lanes.Select((team, i) => new HeatSetupLane(new LaneNumber(i + 1), team)).Where(lane => lane.Team.Length > 0).ToItems();
}
