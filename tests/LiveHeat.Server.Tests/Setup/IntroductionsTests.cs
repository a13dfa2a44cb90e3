using System.Text.Json;
using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Setup;

/// <summary>What the announcer is told of the teams: from the setup, and only for those who speak or decide.</summary>
public sealed class IntroductionsTests(SharedFloor shared) : FloorTest(shared)
{
    private static readonly TeamSetup Team = new("t-told", "Wet Matches", "open", ["Ayşe", "Bo", "Cy"]);

    [Fact]
    public async Task What_was_written_of_a_team_is_what_the_announcer_reads()
    {
        (await Floor.Organiser.Put("/api/setup/teams/t-told", Team with { Say = " wet MATCH-iz ", AthletesSay = ["eye-SHEH", "", ""], Home = "Harbour Street", Facts = ["All bakers.", " "] })).Fine();
        var announcer = await Floor.Join(Role.Announcer, null, "Ada");

        var read = (await announcer.Get("/api/introductions")).Read<TeamIntroduction[]>().Single(one => one.Team == "t-told");

        Assert.Equal(new TeamIntroduction("t-told", "wet MATCH-iz", "Harbour Street", [new NameSaid("Ayşe", "eye-SHEH")], ["All bakers."]), read);
    }

    [Fact]
    public async Task A_judge_and_the_stands_do_not_read_them()
    {
        Assert.Equal(401, (await Floor.Visitor().Get("/api/introductions")).Status);
        Assert.Equal(403, (await (await Floor.Join(Role.Judge, 1, "Mara")).Get("/api/introductions")).Status);
    }

    [Fact]
    public async Task Too_many_facts_and_too_many_ways_to_say_a_name_are_refused_by_field()
    {
        var reply = await Floor.Organiser.Put("/api/setup/teams/t-told", Team with { Facts = ["1", "2", "3", "4", "5", "6"], AthletesSay = ["a", "b", "c", "d"] });

        Assert.Equal(400, reply.Status);
        Assert.Contains("\"field\":\"facts\"", reply.Text, StringComparison.Ordinal);
        Assert.Contains("\"field\":\"athletesSay\"", reply.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_team_of_which_nothing_is_told_is_written_as_before() =>
        Assert.Equal("""{"id":"t-told","name":"Wet Matches","division":"open","athletes":["Ay\u015Fe","Bo","Cy"]}""", JsonSerializer.Serialize(Team, WireJson.Options));
}
