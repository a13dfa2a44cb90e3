using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Library;
using LiveHeat.Screens.Setup;

namespace LiveHeat.Screens.Words;

/// <summary>The library of movements and an organiser's own.</summary>
public static class MovementWords
{
    private static readonly Wording Words = new(typeof(MovementWords));

    public static string Movements => Words[nameof(Movements)];
    public static string PageHelp => Words[nameof(PageHelp)];
    public static string Own => Words[nameof(Own)];
    public static string Library => Words[nameof(Library)];
    public static string Filter => Words[nameof(Filter)];
    public static string New => Words[nameof(New)];
    public static string Copy => Words[nameof(Copy)];
    public static string Back => Words[nameof(Back)];
    public static string EditMovements => Words[nameof(EditMovements)];

    public static string Find => Words[nameof(Find)];
    public static string FindHelp => Words[nameof(FindHelp)];
    public static string NothingFound => Words[nameof(NothingFound)];

    public static string Start => Words[nameof(Start)];
    public static string Finish => Words[nameof(Finish)];
    public static string Between => Words[nameof(Between)];
    public static string Allowed => Words[nameof(Allowed)];
    public static string Caution => Words[nameof(Caution)];
    public static string FaultsHelp => Words[nameof(FaultsHelp)];
    public static string Variants => Words[nameof(Variants)];
    public static string Source => Words[nameof(Source)];
    public static string NoRep => Words[nameof(NoRep)];
    public static string IsAllowed => Words[nameof(IsAllowed)];
    public static string Easier => Words[nameof(Easier)];

    public static string Picture => Words[nameof(Picture)];
    public static string RemovePicture => Words[nameof(RemovePicture)];
    public static string PictureTooLarge => Words[nameof(PictureTooLarge)];

    public static string PictureOf(string name) => Words.Say(nameof(PictureOf), name);

    public static string WillAttach(string file) => Words.Say(nameof(WillAttach), file);

    public static string Added(string name) => Words.Say(nameof(Added), name);

    public static string Kind(MovementChoice choice) => WorkoutWords.UnitOf(choice.Movement.Unit) is var unit && choice.IsOwn ? OwnKind(unit) : unit;

    public static string Line(LibraryMovement movement) => Words.Count(nameof(Line), movement.Faults.Count, WorkoutWords.UnitOf(movement.Unit));

    private static string OwnKind(string unit) => Words.Say(nameof(OwnKind), unit);
}
