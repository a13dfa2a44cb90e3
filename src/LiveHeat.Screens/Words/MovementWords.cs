using LiveHeat.Contracts.Library;
using LiveHeat.Screens.Setup;

namespace LiveHeat.Screens.Words;

/// <summary>The library of movements and an organiser's own.</summary>
public static class MovementWords
{
    public const string Movements = "Movements";
    public const string PageHelp = "Copy a standard to change it, or write one. A workout takes a copy when a movement is added to it: what you change here later changes no workout.";
    public const string Own = "Your own";
    public const string Library = "Library";
    public const string Filter = "Find by name";
    public const string New = "New movement";
    public const string Copy = "Make a copy";
    public const string Back = "Back to the movements";
    public const string EditMovements = "Movements and standards";

    public const string Find = "Add a movement from the library";
    public const string FindHelp = "Type a part of its name";
    public const string NothingFound = "Nothing in the library is called so. Add an empty movement and write it.";

    public const string Start = "Start position";
    public const string Finish = "Finish position";
    public const string Between = "What must hold between, one a line";
    public const string Allowed = "Expressly allowed, one a line";
    public const string Caution = "Caution";
    public const string FaultsHelp = "Behind \" = \" what it means: short of the line = The ball met the wall below the line.";
    public const string Variants = "Easier variants, one a line";
    public const string Source = "Source";
    public const string NoRep = "No rep:";
    public const string IsAllowed = "Allowed:";
    public const string Easier = "Easier:";

    public const string Picture = "Picture (PNG, JPEG or WebP, at most 512 kB)";
    public const string RemovePicture = "Take the picture off";
    public const string PictureTooLarge = "The picture has more than 512 kB. Make it smaller, or choose another.";

    public static string PictureOf(string name) => $"Picture: {name}";

    public static string WillAttach(string file) => $"{file} is attached when you save.";

    public static string Added(string name) => $"{name}: added.";

    public static string Kind(MovementChoice choice) => $"{WorkoutWords.UnitOf(choice.Movement.Unit)}{(choice.IsOwn ? " · your own" : "")}";

    public static string Line(LibraryMovement movement) => $"{WorkoutWords.UnitOf(movement.Unit)} · {CommonWords.Count(movement.Faults.Count, "fault", "faults")}";
}
