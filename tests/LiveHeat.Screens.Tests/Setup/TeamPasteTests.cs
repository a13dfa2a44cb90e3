using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Screens.Setup;

/// <summary>Pasted teams, with and without a first line that names the columns.</summary>
public sealed class TeamPasteTests
{
    private static readonly SetupAll All = new(new CompetitionSetup("Breakwater Relays"), [new DivisionSetup("open", "Open")], [],
        [new TeamSetup("t-nine", "Nine Buckets", "open", ["Ann", "Bo"]) { Home = "Quarry Road", AthletesSay = ["", "boh"] }], []);

    [Fact]
    public void Without_named_columns_a_line_is_team_division_and_athletes_and_keeps_what_was_told_before()
    {
        var team = Assert.Single(TeamPaste.Read("Nine Buckets; Open; Ann; Bo", All).Teams);

        Assert.Equal(("t-nine", "Quarry Road"), (team.Id, team.Home));
        Assert.Equal(["Ann", "Bo"], team.Athletes);
        Assert.Equal(["", "boh"], team.AthletesSay!.Value);
        Assert.Null(Assert.Single(TeamPaste.Read("Nine Buckets; Open; Bo; Ann", All).Teams).AthletesSay);
    }

    [Fact]
    public void Named_columns_tell_how_to_say_names_the_home_and_facts()
    {
        var team = Assert.Single(TeamPaste.Read("Team\tSay\tDivision\tAthlete 1\tSay\tAthlete 2\tHome\tFact\tFact\nWet Matches\twet MATCH-iz\topen\tAyşe\teye-SHEH\tBo\tHarbour Street\tFirst heat.\tAll bakers.", All).Teams);

        Assert.Equal(("Wet Matches", "open", "wet MATCH-iz", "Harbour Street"), (team.Name, team.Division, team.Say, team.Home));
        Assert.Equal(["Ayşe", "Bo"], team.Athletes);
        Assert.Equal(["eye-SHEH", ""], team.AthletesSay!.Value);
        Assert.Equal(["First heat.", "All bakers."], team.Facts!.Value);
    }

    [Theory]
    [InlineData("de", "Team; Aussprache; Klasse; Athlet 1; Aussprache; Athlet 2; Herkunft; Info")]
    [InlineData("fr", "Équipe; Prononciation; Catégorie; Athlète 1; Prononciation; Athlète 2; Origine; Info")]
    [InlineData("es", "Equipo; Pronunciación; Categoría; Atleta 1; Pronunciación; Atleta 2; Origen; Dato")]
    [InlineData("es", "team; say; division; athletes; say; athletes; home; facts")]
    public void Columns_are_known_by_the_words_of_the_screens_language_and_by_the_English_ones(string language, string columns)
    {
        Tongue.Speak(language);
        var team = Assert.Single(TeamPaste.Read($"{columns}\nWet Matches; wet MATCH-iz; Open; Ayşe; eye-SHEH; Bo; Harbour Street; All bakers.", All).Teams);

        Assert.Equal(("wet MATCH-iz", "open", "Harbour Street"), (team.Say, team.Division, team.Home));
        Assert.Equal(["Ayşe", "Bo"], team.Athletes);
        Assert.Equal(["eye-SHEH", ""], team.AthletesSay!.Value);
        Assert.Equal(["All bakers."], team.Facts!.Value);
    }

    [Fact]
    public void A_column_that_is_none_is_told_with_those_that_are_in_the_screens_language()
    {
        Tongue.Speak("de");
        Assert.Equal(
            "Zeile 1, Spalte 4: „Schuhgröße“ ist nicht bekannt. Spalten sind: Team, Klasse, Athlet, Aussprache, Herkunft, Info.",
            Assert.Single(TeamPaste.Read("Team; Klasse; Athlet; Schuhgröße\nA; Open; Ann; 9", All).Wrong));
    }

    [Theory]
    [InlineData("team; division; athlete; shoe size\nA; Open; Ann; 9", "Line 1, column 4: nothing is known as \"shoe size\"")]
    [InlineData("team; division; say; athlete\nA; Open; x; Ann", "Line 1, column 3: \"say\" stands behind a team or an athlete")]
    [InlineData("team; division; athlete; home; home\nA; Open; Ann; x; y", "Line 1, column 5: there is a \"home\" already")]
    [InlineData("team; division; athlete; say; athlete; say\nA; Open; Ann; an; ; boh", "Line 2, column 6: it tells how to say a name")]
    [InlineData("team; athlete; division\nA; Ann; Masters", "Line 2, column 3: there is no division \"Masters\"")]
    [InlineData("A; Masters; Ann", "Line 1, column 2: there is no division \"Masters\"")]
    [InlineData("A; Open", "Line 1: write the team")]
    public void What_is_wrong_is_told_by_line_and_column_and_nothing_is_entered(string text, string wrong)
    {
        var read = TeamPaste.Read(text, All);

        Assert.StartsWith(wrong, Assert.Single(read.Wrong), StringComparison.Ordinal);
        Assert.Empty(read.Teams);
    }
}
