using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Library;

/// <summary>The movements that come with the program, in one language.</summary>
/// <param name="Language">Such as "en" (BCP 47).</param>
/// <param name="Movements">In the order of the file: alike beside alike.</param>
public sealed record MovementLibrary(string Language, Items<LibraryMovement> Movements);

/// <summary>A movement of the library, or an organiser's own: copied from one, or new.</summary>
/// <param name="Id">Small letters, digits and hyphens; unique in the library, and among the organiser's own.</param>
/// <param name="Name">As counted on the floor, plural where reps are counted: "wall balls".</param>
/// <param name="Unit">What a quantity of it counts.</param>
/// <param name="SecondsPerUnit">Expected pace, seconds a unit (with kilograms: an attempt), above 0. Only a prior for widths and forecasts.</param>
/// <param name="FastestSecondsPerUnit">Nobody is faster.</param>
/// <param name="Start">The position from which it begins.</param>
/// <param name="Finish">The position in which it counts.</param>
/// <param name="Between">What must hold on the way.</param>
/// <param name="Faults">Named reasons for a no-rep, most usual first.</param>
/// <param name="Allowed">What looks doubtful and is expressly allowed.</param>
/// <param name="Variants">What those do who cannot do it as it stands.</param>
/// <param name="Caution">One sentence where one is usual; otherwise null.</param>
/// <param name="Source">Where it comes from: "common practice, no source" or a document.</param>
public sealed record LibraryMovement(
    string Id, string Name, Unit Unit, double SecondsPerUnit, double FastestSecondsPerUnit, string Start, string Finish, Items<string> Between,
    Items<NamedFault> Faults, Items<string> Allowed, Items<ScaledVariant> Variants, string? Caution, string Source)
{
    /// <summary>The library's movement of which this is a copy; null when it is none.</summary>
    public string? BasedOn { get; init; }

    /// <summary>The address of its picture on this server; null when it has none.</summary>
    public string? Picture { get; init; }

    /// <summary>The movement as a workout has it, with an id of its own there.</summary>
    public Movement ToMovement(string id)
    {
        var full = new Standard(Start, Finish, Between, Allowed, Faults, Caution, Picture);
        return new Movement(id, Name, Unit, SecondsPerUnit, FastestSecondsPerUnit, full.InShort(), Faults.Select(fault => fault.Name).ToItems()) { FullStandard = full };
    }
}

/// <summary>An easier way of doing a movement.</summary>
/// <param name="Name">In a few words.</param>
/// <param name="How">In a sentence.</param>
/// <param name="Movement">The library's movement that it is; null when it is not one by itself.</param>
public sealed record ScaledVariant(string Name, string How, string? Movement);
