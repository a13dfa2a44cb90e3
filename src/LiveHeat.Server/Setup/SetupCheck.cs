using LiveHeat.Contracts.Setup;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Setup;

/// <summary>Finds what cannot be in the documents that refer to nothing.</summary>
internal static class SetupCheck
{
    private const int MostAppealMinutes = 24 * 60;

    public static IEnumerable<FieldError> Competition(CompetitionSetup competition) => SetupText.Name("name", "The competition's name", competition.Name)
        .Concat(competition.AppealMinutes is < 0 or > MostAppealMinutes ? [new FieldError("appealMinutes", "Teams may appeal for 0 to 1440 minutes after the result is posted.")] : [])
        .Concat(competition.Screen is { WidthM: < 0.2m or > 60 } ? [new FieldError("screen.widthM", "The board's picture is 0.2 to 60 metres wide.")] : [])
        .Concat(competition.Screen is { SeatM: < 0.5m or > 300 } ? [new FieldError("screen.seatM", "The farthest seat is 0.5 to 300 metres from the board.")] : []);

    public static IEnumerable<FieldError> Division(DivisionSetup division) => SetupText.Name("name", "The division's name", division.Name);
}
