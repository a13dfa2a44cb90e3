using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Setup;

/// <summary>An organiser's own movement while it is written: a copy of the library's, or a new one.</summary>
public sealed class OwnMovementDraft
{
    private readonly List<FieldProblem> unread = [];
    private readonly LibraryMovement? origin;
    private readonly string? basedOn;

    private OwnMovementDraft(MovementDraft movement, LibraryMovement? origin, string? basedOn)
    {
        (Movement, this.origin, this.basedOn) = (movement, origin, basedOn);
        Variants = Lines.Join((origin?.Variants ?? []).Select(variant => Lines.Explained(variant.Name, variant.How)));
        Source = origin?.Source ?? "";
    }

    /// <summary>All that a workout takes over too. Its id is empty while it is new.</summary>
    public MovementDraft Movement { get; }

    /// <summary>One a line, what it is behind an equals sign.</summary>
    public string Variants { get; set; }

    public string Source { get; set; }

    /// <summary>One that is there.</summary>
    public static OwnMovementDraft Of(LibraryMovement own) => new(MovementDraft.Of(own.ToMovement(own.Id)), own, own.BasedOn);

    /// <summary>A new one, empty or like another.</summary>
    public static OwnMovementDraft New(LibraryMovement? like) =>
        new(like is null ? new MovementDraft { Id = "" } : MovementDraft.Of(like.ToMovement("")), like, like?.BasedOn ?? like?.Id);

    /// <summary>The movement as typed, and what cannot be read of it.</summary>
    /// <param name="taken">Ids that a new one cannot have.</param>
    public (LibraryMovement Movement, FormErrors Errors) Make(IEnumerable<string> taken)
    {
        unread.Clear();
        var made = Movement.Make(Seconds, "");
        var full = made.FullStandard;
        var movement = new LibraryMovement(
            made.Id.Length > 0 ? made.Id : SetupId.For(made.Name, taken, "movement"), made.Name, made.Unit, made.SecondsPerUnit, made.FastestSecondsPerUnit,
            full?.Start ?? "", full?.Finish ?? "", full?.Between ?? [], Lines.Explanations(Movement.Faults).ToItems(), full?.Allowed ?? [],
            Lines.Explanations(Variants).Select(line => new ScaledVariant(line.Name, line.How, origin?.Variants.FirstOrDefault(variant => variant.Name == line.Name)?.Movement)).ToItems(),
            full?.Caution, Source.Trim())
        {
            BasedOn = basedOn,
            Picture = Movement.Picture,
        };
        return (movement, new FormErrors([.. unread, .. MovementCheck.Errors(made).Select(FieldProblem.Of).Where(error => unread.All(known => known.Field != error.Field))]));
    }

    private double Seconds(string text, string field)
    {
        if (WorkoutDraft.ReadSeconds(text) is { } seconds)
        {
            return seconds;
        }

        unread.Add(new(field, WorkoutWords.NeedsSeconds));
        return 1;
    }
}
