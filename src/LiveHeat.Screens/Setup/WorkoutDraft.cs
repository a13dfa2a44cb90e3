using System.Globalization;
using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Setup;

/// <summary>The five relay orders, as a form offers them.</summary>
public enum OrderKind
{
    /// <summary>One round each in turn.</summary>
    InTurn,

    /// <summary>Several rounds each before the tag.</summary>
    Blocks,

    /// <summary>A tag after every movement.</summary>
    EachMovement,

    /// <summary>Somebody wrote down who does each round.</summary>
    Listed,

    /// <summary>The team as one.</summary>
    Together,
}

/// <summary>A workout while it is written: numbers and times as typed.</summary>
public sealed class WorkoutDraft
{
    private readonly List<FieldProblem> unread = [];

    public string Id { get; private init; } = "";

    public string Name { get; set; } = "";

    public OrderKind Order { get; set; }

    public string BlockSize { get; set; } = "2";

    /// <summary>Numbers in the team, between commas or spaces.</summary>
    public string Listed { get; set; } = "";

    public Counting Counting { get; set; }

    public string CheckpointEvery { get; set; } = "5";

    public FinishKind Finish { get; set; }

    /// <summary>What makes a result.</summary>
    public ScoringDraft Scoring { get; private init; } = new();

    /// <summary>Penalty and consequences.</summary>
    public ConsequenceDraft Consequences { get; private init; } = new();

    public List<MovementDraft> Movements { get; } = [];

    public List<PrescriptionDraft> Prescriptions { get; } = [];

    /// <summary>A workout that is there, or an empty one with a first movement and the competition's first division.</summary>
    public static WorkoutDraft Of(Workout? workout, SetupAll all)
    {
        if (workout is null)
        {
            var fresh = new WorkoutDraft();
            fresh.Movements.Add(new MovementDraft { Id = "m1" });
            fresh.AddDivision(all.Divisions[0]);
            fresh.Prescriptions[0].Round.Add(new SetDraft { Movement = "m1" });
            return fresh;
        }

        var draft = new WorkoutDraft
        {
            Id = workout.Id,
            Name = workout.Name,
            Counting = workout.Counting,
            Finish = workout.Finish,
            Scoring = ScoringDraft.Of(workout),
            Consequences = ConsequenceDraft.Of(workout),
            CheckpointEvery = Text(Math.Max(1, workout.CheckpointEvery)),
            Order = workout.Order switch
            {
                RelayOrder.InTurn => OrderKind.InTurn,
                RelayOrder.Blocks => OrderKind.Blocks,
                RelayOrder.EachMovement => OrderKind.EachMovement,
                RelayOrder.Listed => OrderKind.Listed,
                _ => OrderKind.Together,
            },
            BlockSize = workout.Order is RelayOrder.Blocks blocks ? Text(blocks.Size) : "2",
            Listed = workout.Order is RelayOrder.Listed listed ? string.Join(", ", listed.Athletes) : "",
        };
        draft.Movements.AddRange(workout.Movements.Select(MovementDraft.Of));
        draft.Prescriptions.AddRange(workout.Prescriptions.Select(prescription => PrescriptionDraft.Of(prescription, draft.Scoring)));
        return draft;
    }

    /// <summary>The rounds of every division begin and end by the clock.</summary>
    public bool ByClock => Scoring.MayFollowClock && Prescriptions.Count > 0 && Prescriptions.All(prescription => prescription.Clock.On);

    /// <summary>Every number and time could be read when the workout was made last.</summary>
    public bool AllRead => unread.Count == 0;

    /// <summary>A movement with an id of its own.</summary>
    public MovementDraft AddMovement()
    {
        var movement = new MovementDraft { Id = SetupId.For($"m{Movements.Count + 1}", Movements.Select(one => one.Id), "m") };
        Movements.Add(movement);
        return movement;
    }

    /// <summary>A copy of a movement. One that is still empty is filled, so that the sets that name it have it.</summary>
    public MovementDraft AddMovement(LibraryMovement movement)
    {
        if (movement.Id != Movement.TagId && Movements.FirstOrDefault(one => string.IsNullOrWhiteSpace(one.Name)) is { } empty)
        {
            empty.Fill(movement.ToMovement(empty.Id));
            return empty;
        }

        var copy = MovementDraft.Of(movement.ToMovement(SetupId.For(movement.Id, Movements.Select(one => one.Id), "m")));
        Movements.Add(copy);
        return copy;
    }

    /// <summary>A division that does this workout too, with the first one's work to begin with.</summary>
    public void AddDivision(DivisionSetup division) => Prescriptions.Add(
        Prescriptions.FirstOrDefault() is { } first ? first.CopyFor(division) : new PrescriptionDraft { Division = division.Id, DivisionName = division.Name });

    /// <summary>The workout as typed, with all that is wrong, in the words of the engine and by the paths of the wire.</summary>
    public (Workout Workout, FormErrors Errors) Make(SetupAll all)
    {
        unread.Clear();
        var workout = new Workout(
            Id.Length > 0 ? Id : SetupId.For(Name, all.Workouts.Select(one => one.Id), "workout"), Name.Trim(), MakeOrder(), Counting,
            Checkpoint(), Scoring.HasFinish ? Finish : FinishKind.None,
            Movements.Select((movement, i) => movement.Make(Seconds, $"{Path("movements", i)}.")).ToItems(),
            Prescriptions.Select((prescription, i) => prescription.Make(this, Path("prescriptions", i))).ToItems())
        { Scoring = Scoring.Make(this), EqualWork = Scoring.MakeEqualWork(ByClock) };
        workout = Consequences.Put(workout, this);
        var read = unread.Select(error => error.Field).ToHashSet();
        return (workout, new FormErrors([.. unread, .. WorkoutCheck.Errors(workout).Where(error => !read.Contains(error.Field)).Select(FieldProblem.Of)]));
    }

    internal static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    internal static string Path(string list, int index) => string.Create(CultureInfo.InvariantCulture, $"{list}[{index}]");

    /// <summary>A whole number; what cannot be read is noted for its field.</summary>
    internal int Number(string text, string field)
    {
        if (int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number))
        {
            return number;
        }

        unread.Add(new(field, WorkoutWords.NeedsNumber));
        return 1;
    }

    internal double Seconds(string text, string field)
    {
        if (ReadSeconds(text) is { } seconds)
        {
            return seconds;
        }

        unread.Add(new(field, WorkoutWords.NeedsSeconds));
        return 1;
    }

    /// <summary>Seconds with a point or a comma; null when they cannot be read.</summary>
    public static double? ReadSeconds(string text) =>
        double.TryParse(text.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var seconds) ? seconds : null;

    internal int Time(string text, string field)
    {
        if (TimeWords.Parse(text) is { } ms)
        {
            return ms;
        }

        unread.Add(new(field, WorkoutWords.NeedsTime));
        return 1;
    }

    /// <summary>Where it is not shown, what cannot be read is nothing that is wrong.</summary>
    private int Checkpoint() => Counting != Counting.Reps || (!Scoring.HasCounting && !int.TryParse(CheckpointEvery, out _)) ? 1 : Number(CheckpointEvery, "checkpointEvery");

    private RelayOrder MakeOrder() => Order switch
    {
        OrderKind.InTurn => new RelayOrder.InTurn(),
        OrderKind.Blocks => new RelayOrder.Blocks(Number(BlockSize, "order.size")),
        OrderKind.EachMovement => new RelayOrder.EachMovement(),
        OrderKind.Listed => new RelayOrder.Listed(Listed.Split([',', ' ', ';'], StringSplitOptions.RemoveEmptyEntries).Select(part => Number(part, "order.athletes")).ToItems()),
        _ => new RelayOrder.Together(),
    };
}
