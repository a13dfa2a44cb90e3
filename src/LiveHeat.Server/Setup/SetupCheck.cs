using LiveHeat.Contracts.Setup;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Setup;

/// <summary>Finds what cannot be in the documents that refer to nothing.</summary>
internal static class SetupCheck
{
    private const int MostAppealMinutes = 24 * 60;

    public static IEnumerable<FieldError> Competition(CompetitionSetup competition) => SetupText.Name("name", "The competition's name", competition.Name)
        .Concat(competition.AppealMinutes is < 0 or > MostAppealMinutes ? [new FieldError("appealMinutes", "Teams may appeal for 0 to 1440 minutes after the result is posted.")] : []);

    public static IEnumerable<FieldError> Division(DivisionSetup division) => SetupText.Name("name", "The division's name", division.Name);
}
