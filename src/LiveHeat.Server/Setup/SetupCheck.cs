using LiveHeat.Contracts.Setup;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Setup;

/// <summary>Finds what cannot be in the documents that refer to nothing.</summary>
internal static class SetupCheck
{
    private const int MostAppealMinutes = 24 * 60;
    private const decimal NarrowestM = 0.2m;
    private const decimal WidestM = 60;
    private const decimal NearestM = 0.5m;
    private const decimal FarthestM = 300;

    public static IEnumerable<FieldError> Competition(CompetitionSetup competition) => SetupText.Name("name", SetupRefusals.CompetitionName, competition.Name)
        .Concat(competition.AppealMinutes is < 0 or > MostAppealMinutes ? [new FieldError("appealMinutes", SetupRefusals.AppealMinutes(MostAppealMinutes))] : [])
        .Concat(competition.Screen is { WidthM: < NarrowestM or > WidestM } ? [new FieldError("screen.widthM", SetupRefusals.BoardWidth(NarrowestM, WidestM))] : [])
        .Concat(competition.Screen is { SeatM: < NearestM or > FarthestM } ? [new FieldError("screen.seatM", SetupRefusals.FarthestSeat(NearestM, FarthestM))] : []);

    public static IEnumerable<FieldError> Division(DivisionSetup division) => SetupText.Name("name", SetupRefusals.DivisionName, division.Name);
}
