using LiveHeat.Engine.Heats;
using LiveHeat.Ledger.Registry;
using LiveHeat.Server.Access;
using Microsoft.Extensions.DependencyInjection;

namespace LiveHeat.Server.Setup;

public sealed class SetupEndpointsTests
{
    [Fact]
    public async Task What_was_put_is_read_back()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();

        var all = (await desk.Get("/api/setup")).Json;

        Assert.Equal("Breakwater Relays", all.GetProperty("competition").GetProperty("name").GetString());
        Assert.Equal("Open", all.GetProperty("divisions")[0].GetProperty("name").GetString());
        Assert.Equal("in-turn", all.GetProperty("workouts")[0].GetProperty("order").GetProperty("kind").GetString());
        Assert.Equal(["t-anvils", "t-gulls"], all.GetProperty("teams").EnumerateArray().Select(team => team.GetProperty("id").GetString()!));
        Assert.Equal("t-gulls", all.GetProperty("heats")[0].GetProperty("lanes")[1].GetProperty("team").GetString());
    }

    [Theory]
    [InlineData(Role.HeadJudge)]
    [InlineData(Role.Judge)]
    [InlineData(Role.Announcer)]
    [InlineData(Role.Viewer)]
    public async Task Only_the_organiser_sets_up(Role role)
    {
        await using var host = await SmallHost.Start();
        await host.SetUp();
        var browser = role == Role.Viewer ? host.Browser() : await host.Joined(role, role == Role.Judge ? 1 : null);
        var before = await host.Registry.Setup.List(CancellationToken.None);

        Answer[] answers =
        [
            await browser.Get("/api/setup"),
            await browser.Put("/api/setup/competition", new { name = "Mine" }),
            await browser.Put("/api/setup/divisions/mine", new { id = "mine", name = "Mine" }),
            await browser.PutText("/api/setup/workouts/low-tide", SetupSome.Workout),
            await browser.Put("/api/setup/teams/mine", SetupSome.Team("mine", "Mine")),
            await browser.Put("/api/setup/heats/h2", SetupSome.Heat("h2", 2)),
            await browser.Delete("/api/setup/heats/h1"),
        ];

        Assert.All(answers, answer => Assert.Equal(role == Role.Viewer ? "not-signed-in" : "not-yours", answer.Code));
        Assert.Equal(before, await host.Registry.Setup.List(CancellationToken.None));
    }

    [Fact]
    public async Task Putting_the_same_again_changes_nothing_and_tells_nobody()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();
        var changes = 0;
        host.Services.GetRequiredService<SetupReader>().Changed += () => changes++;

        var again = await desk.Put("/api/setup/teams/t-gulls", SetupSome.Team("t-gulls", " Gull Street "));

        Assert.Equal("Gull Street", again.Field("name"));
        Assert.Equal(0, changes);
        Assert.Equal(1, (await host.Registry.Setup.Get(SetupKind.Team, "t-gulls", CancellationToken.None))!.Version);
    }

    [Fact]
    public async Task A_change_is_told_after_it_can_be_read()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();
        var reader = host.Services.GetRequiredService<SetupReader>();
        var names = new List<string>();
        reader.Changed += () => names.Add(reader.All(CancellationToken.None).GetAwaiter().GetResult().Teams[0].Name);

        await desk.Put("/api/setup/teams/t-anvils", SetupSome.Team("t-anvils", "Iron Anvils"));
        await desk.Delete("/api/setup/heats/h1");

        Assert.Equal(["Iron Anvils", "Iron Anvils"], names);
    }

    [Theory]
    [InlineData("Upper")]
    [InlineData("a_b")]
    [InlineData("a.b")]
    [InlineData("é")]
    [InlineData("12345678901234567890123456789012345678901")]
    public async Task An_id_has_small_letters_digits_and_hyphens(string id)
    {
        await using var host = await SmallHost.Start();
        var desk = await host.Organiser();

        var answer = await desk.Put($"/api/setup/divisions/{Uri.EscapeDataString(id)}", new { id, name = "Open" });

        Assert.Equal("bad-setup", answer.Code);
        Assert.Equal("id", answer.Fields());
        Assert.Empty(await host.Registry.Setup.List(CancellationToken.None));
    }

    [Fact]
    public async Task Address_and_document_name_the_same_thing()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.Organiser();

        var answer = await desk.Put("/api/setup/divisions/open", new { id = "rx", name = "Open" });

        Assert.Equal("bad-setup", answer.Code);
        Assert.Equal("id", answer.Fields());
    }

    [Theory]
    [InlineData("competition", "{}", "name")]
    [InlineData("competition", """{"name":" "}""", "name")]
    [InlineData("competition", """{"name":"Breakwater","appealMinutes":-1}""", "appealMinutes")]
    [InlineData("competition", """{"name":"Breakwater","appealMinutes":1441}""", "appealMinutes")]
    [InlineData("competition", """{"name":"Breakwater","screen":{"widthM":0.1,"seatM":25}}""", "screen.widthM")]
    [InlineData("competition", """{"name":"Breakwater","screen":{"widthM":4,"seatM":400}}""", "screen.seatM")]
    [InlineData("competition", """{"name":"Break\nwater"}""", "name")]
    [InlineData("divisions/open", """{"id":"open"}""", "name")]
    [InlineData("teams/t", """{"id":"t","name":"T","division":"rx","athletes":["A"]}""", "division")]
    [InlineData("teams/t", """{"id":"t","division":"open","athletes":["A"]}""", "name")]
    [InlineData("teams/t", """{"id":"t","name":"T","division":"open"}""", "athletes")]
    [InlineData("teams/t", """{"id":"t","name":"T","division":"open","athletes":["A"," "]}""", "athletes[1]")]
    [InlineData("teams/t", """{"id":"t","name":"T","division":"open","athletes":["A","B\u0007"]}""", "athletes[1]")]
    [InlineData("teams/t", """{"id":"t","name":"T","division":"open","athletes":["1","2","3","4","5","6","7","8","9","10","11","12","13"]}""", "athletes")]
    [InlineData("heats/h2", """{"id":"h2","number":2,"title":"Heat 2","workout":"high-tide","lanes":[]}""", "workout")]
    [InlineData("heats/h2", """{"id":"h2","number":2,"title":"Heat 2"}""", "workout")]
    [InlineData("heats/h2", """{"id":"h2","number":0,"title":"","workout":"low-tide"}""", "title number")]
    [InlineData("heats/h2", """{"id":"h2","number":2,"title":"Heat 2","workout":"low-tide","lanes":[{"lane":1,"team":"t-nobody"}]}""", "lanes[0].team")]
    [InlineData("heats/h2", """{"id":"h2","number":2,"title":"Heat 2","workout":"low-tide","lanes":[{"lane":1}]}""", "lanes[0].team")]
    [InlineData("heats/h2", """{"id":"h2","number":2,"title":"Heat 2","workout":"low-tide","lanes":[{"team":"t-gulls"}]}""", "lanes[0].lane")]
    [InlineData("heats/h2", """{"id":"h2","number":2,"title":"Heat 2","workout":"low-tide","lanes":[{"lane":1,"team":"t-gulls"},{"lane":1,"team":"t-anvils"}]}""", "lanes[1].lane")]
    [InlineData("heats/h2", """{"id":"h2","number":2,"title":"Heat 2","workout":"low-tide","lanes":[{"lane":1,"team":"t-gulls"},{"lane":3,"team":"t-gulls"}]}""", "lanes[1].team")]
    public async Task What_cannot_be_is_refused_with_its_fields_and_changes_nothing(string path, string body, string fields)
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();
        var before = await host.Registry.Setup.List(CancellationToken.None);

        var answer = await desk.PutText($"/api/setup/{path}", body);

        Assert.Equal(400, answer.Status);
        Assert.Equal("bad-setup", answer.Code);
        Assert.Equal(fields, answer.Fields());
        Assert.Equal(before, await host.Registry.Setup.List(CancellationToken.None));
    }

    [Theory]
    [InlineData("h2", "high-tide", "There is no workout \"high-tide\".")]
    [InlineData("h2", "low-tide", "there is no team \"t-nobody\".")]
    public async Task What_is_unknown_is_named(string id, string workout, string words)
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();

        var answer = await desk.Put($"/api/setup/heats/{id}", new { id, number = 2, title = "Heat 2", workout, lanes = new[] { new { lane = 1, team = "t-nobody" } } });

        Assert.Contains(words, answer.Detail, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("divisions/open", "Low Tide, Gull Street, Harbour Anvils")]
    [InlineData("workouts/low-tide", "Heat 1")]
    [InlineData("teams/t-gulls", "Heat 1")]
    public async Task What_is_needed_elsewhere_stays_and_says_where(string path, string users)
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();

        var answer = await desk.Delete($"/api/setup/{path}");

        Assert.Equal(409, answer.Status);
        Assert.Equal("in-use", answer.Code);
        Assert.All(users.Split(", "), user => Assert.Contains(user, answer.Detail, StringComparison.Ordinal));
        Assert.Equal(6, (await host.Registry.Setup.List(CancellationToken.None)).Count);
    }

    [Fact]
    public async Task A_heat_that_was_called_stays()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();
        host.Called.Add(new HeatId("h1"));

        var answer = await desk.Delete("/api/setup/heats/h1");

        Assert.Equal((409, "in-use"), (answer.Status, answer.Code));
        Assert.NotNull(await host.Registry.Setup.Get(SetupKind.Heat, "h1", CancellationToken.None));
    }

    [Fact]
    public async Task What_nothing_needs_is_deleted_and_deleting_again_is_no_error()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();

        foreach (var path in new[] { "heats/h1", "teams/t-gulls", "teams/t-anvils", "workouts/low-tide", "divisions/open", "divisions/open" })
        {
            Assert.Equal(204, (await desk.Delete($"/api/setup/{path}")).Status);
        }

        Assert.Equal(SetupKind.Competition, Assert.Single(await host.Registry.Setup.List(CancellationToken.None)).Kind);
    }

    [Fact]
    public async Task A_team_cannot_be_deleted_while_a_heat_takes_it()
    {
        // Each round races a deletion against a heat that names the team: whoever is first, no heat may name a team that is gone.
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();
        for (var round = 0; round < 20; round++)
        {
            var team = $"t-{round}";
            await desk.Put($"/api/setup/teams/{team}", SetupSome.Team(team, "Racers"));
            var both = await Task.WhenAll(
                desk.Delete($"/api/setup/teams/{team}"), desk.Put($"/api/setup/heats/h-{round}", SetupSome.Heat($"h-{round}", 2, (1, team))));

            Assert.Equal(1, both.Count(answer => answer.Status is 200 or 204));
        }

        foreach (var heat in (await desk.Get("/api/setup")).Json.GetProperty("heats").EnumerateArray())
        {
            Assert.NotNull(await host.Services.GetRequiredService<SetupReader>().Snapshot(new HeatId(heat.GetProperty("id").GetString()!), CancellationToken.None));
        }
    }
}
