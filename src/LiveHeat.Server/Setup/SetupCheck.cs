using LiveHeat.Contracts.Setup;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Setup;

/// <summary>Finds what cannot be in the documents that refer to nothing.</summary>
internal static class SetupCheck
{
    public static IEnumerable<FieldError> Competition(CompetitionSetup competition) => SetupText.Name("name", "The competition's name", competition.Name);

    public static IEnumerable<FieldError> Division(DivisionSetup division) => SetupText.Name("name", "The division's name", division.Name);
}
