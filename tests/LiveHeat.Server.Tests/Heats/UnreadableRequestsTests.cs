using System.Text.Json.Nodes;
using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Heats;

/// <summary>Requests that are wrong as a whole: nothing of them is recorded, and the answer says what to do.</summary>
public sealed class UnreadableRequestsTests(SharedFloor shared) : FloorTest(shared)
{
    [Theory]
    [InlineData("taps", "", "it breaks off or goes wrong at line 1")]
    [InlineData("taps", "{\"taps\":[", "it breaks off or goes wrong at line 1")]
    [InlineData("taps", "{\n\"taps\":[}", "at line 2, byte 9")]
    [InlineData("taps", "[]", "it is not a JSON object")]
    [InlineData("taps", "null", "it is not a JSON object")]
    [InlineData("taps", "{}", "it has no list of taps")]
    [InlineData("taps", "{\"taps\":null}", "it has no list of taps")]
    [InlineData("taps", "{\"taps\":{}}", "it has no list of taps")]
    [InlineData("taps", "{\"taps\":7}", "it has no list of taps")]
    [InlineData("taps", "{\"taps\":[],\"epoch\":7}", "it has no list of taps")]
    [InlineData("commands", "", "it breaks off or goes wrong at line 1")]
    [InlineData("commands", "\"ready\"", "it is not a JSON object")]
    [InlineData("commands", "{}", "this is no command")]
    [InlineData("commands", "{\"command\":\"ready\"}", "a field of it is missing")]
    [InlineData("commands", "{\"command\":\"begin\",\"id\":\"ID\"}", "is no command")]
    [InlineData("commands", "{\"command\":7,\"id\":\"ID\"}", "is no command")]
    [InlineData("commands", "{\"id\":\"ID\",\"lane\":1,\"seat\":\"s\"}", "this is no command")]
    [InlineData("commands", "{\"command\":\"ready\",\"id\":\"ID\",\"lane\":\"1\",\"seat\":\"s\"}", "its field lane is not as it should be")]
    [InlineData("commands", "{\"command\":\"ready\",\"id\":\"ID\",\"lane\":0,\"seat\":\"s\"}", "its field lane is not as it should be")]
    [InlineData("commands", "{\"command\":\"ready\",\"id\":17,\"lane\":1,\"seat\":\"s\"}", "its field id is not as it should be")]
    [InlineData("commands", "{\"command\":null,\"id\":\"ID\"}", "its field command is not as it should be")]
    [InlineData("commands", "{\"command\":\"ready\",\"id\":\"ID\",\"lane\":null,\"seat\":\"s\"}", "its field lane is not as it should be")]
    [InlineData("commands", "{\"command\":\"give-up-seat\",\"id\":\"ID\",\"lane\":1,\"seat\":\"s\",\"reason\":null}", "its field reason is not as it should be")]
    [InlineData("commands", "{\"command\":\"send-back\",\"id\":\"ID\",\"lane\":1,\"step\":2147483648}", "its field step is not as it should be")]
    [InlineData("commands", "{\"command\":\"freeze\",\"id\":\"ID\",\"head\":9223372036854775808}", "its field head is not as it should be")]
    [InlineData("commands", "{\"command\":\"add\",\"id\":\"ID\",\"source\":\"paper\",\"tap\":{\"id\":\"ID\",\"lane\":1,\"step\":1}}", "cannot be read")]
    [InlineData("commands", "{\"command\":\"add\",\"id\":\"ID\",\"source\":\"paper\",\"tap\":{\"fact\":\"heat-ended\",\"id\":\"ID\"}}", "its field tap")]
    [InlineData("commands", "{\"command\":\"ready\",\"id\":\"ID\",\"lane\":1,\"lane\":1,\"seat\":\"s\"}", "cannot be read")]
    [InlineData("commands", "{\"command\":\"give-up-seat\",\"id\":\"ID\",\"lane\":1,\"seat\":\"s\",\"reason\":\"\\ud800\"}", "its field reason is not as it should be")]
    [InlineData("commands", "{\"command\":\"give-up-seat\",\"id\":\"ID\",\"lane\":1,\"seat\":\"s\",\"x\":1e999}", "cannot be read")]
    public async Task A_body_that_cannot_be_read_is_told_where(string address, string body, string why)
    {
        var heat = await Floor.Run(lanes: 1);
        var text = body.Replace("ID", heat[1].Phone.NewId(), StringComparison.Ordinal);

        await NothingIsRecorded(heat, async () =>
        {
            var answer = await heat[1].Phone.PostText($"{heat.Path}/{address}", text);
            Assert.Equal((400, "unreadable"), (answer.Status, answer.Code));
            Assert.Contains(why, answer.Detail, StringComparison.Ordinal);
            Assert.EndsWith("Nothing was recorded; it is kept where it was made.", answer.Detail, StringComparison.Ordinal);
        });
    }

    [Fact]
    public async Task A_number_that_cannot_be_kept_is_told()
    {
        var heat = await Floor.Run(lanes: 1);
        var tap = heat[1].Tap("value-entered", ("step", 1), ("value", decimal.MaxValue));

        await NothingIsRecorded(heat, async () =>
        {
            var answer = await heat.Command(Floor.Organiser, "add", new { source = "paper", tap, reason = "" });
            Assert.Equal((400, "unreadable"), (answer.Status, answer.Code));
            Assert.Contains("a number in it is too large to be kept", answer.Detail, StringComparison.Ordinal);
        });
    }

    [Theory]
    [InlineData("taps")]
    [InlineData("commands")]
    public async Task A_body_that_is_not_marked_as_json_is_not_read(string address)
    {
        var heat = await Floor.Run(lanes: 1);

        await NothingIsRecorded(heat, async () =>
        {
            var answer = await heat[1].Phone.PostText($"{heat.Path}/{address}", Body(heat, address), "text/plain");
            Assert.Equal((415, "not-json"), (answer.Status, answer.Code));
        });
    }

    [Theory]
    [InlineData("taps", null)]
    [InlineData("taps", "http://elsewhere.test")]
    [InlineData("commands", null)]
    [InlineData("commands", "http://elsewhere.test")]
    public async Task A_page_of_another_site_writes_nothing(string address, string? origin)
    {
        var heat = await Floor.Run(lanes: 1);
        heat[1].Phone.Origin = origin;

        await NothingIsRecorded(heat, async () =>
        {
            var answer = await heat[1].Phone.PostText($"{heat.Path}/{address}", Body(heat, address));
            Assert.Equal((403, "wrong-origin"), (answer.Status, answer.Code));
            Assert.StartsWith("This was not sent by a page of this server, so nothing was done.", answer.Detail, StringComparison.Ordinal);
        });
    }

    [Theory]
    [InlineData("taps", 4_200_000)]
    [InlineData("commands", 70_000)]
    public async Task A_body_that_is_too_large_is_not_read(string address, int size)
    {
        var heat = await Floor.Run(lanes: 1);

        await NothingIsRecorded(heat, async () =>
        {
            var answer = await heat[1].Phone.PostText($"{heat.Path}/{address}", $$"""{"taps":[],"reason":"{{new string('x', size)}}"}""");
            Assert.Equal((413, "too-large"), (answer.Status, answer.Code));
            Assert.EndsWith("Send less at a time.", answer.Detail, StringComparison.Ordinal);
        });
    }

    [Fact]
    public async Task Whoever_is_not_a_judge_sends_no_taps()
    {
        var heat = await Floor.Run(lanes: 1);
        var announcer = await Floor.Join(Role.Announcer, null, "Ada");
        var body = TestHeat.Batch(heat[1].Done(1));

        await NothingIsRecorded(heat, async () =>
        {
            var nobody = await Floor.Visitor().Post($"{heat.Path}/taps", body);
            Assert.Equal((401, "not-signed-in", "This is for a lane judge. Sign in, or join with a code, first."), (nobody.Status, nobody.Code, nobody.Detail));
            foreach (var (other, word) in new[] { (announcer, "the announcer"), (Floor.HeadJudge, "the head judge"), (Floor.Organiser, "the organiser") })
            {
                var answer = await other.Post($"{heat.Path}/taps", body);
                Assert.Equal((403, "not-yours", $"This is for a lane judge. You are signed in as {word}."), (answer.Status, answer.Code, answer.Detail));
            }
        });
    }

    [Fact]
    public async Task A_phone_that_signed_out_sends_no_taps_and_is_not_told_that_it_did()
    {
        var heat = await Floor.Run(lanes: 1);
        var copied = Floor.Visitor();
        copied.Cookies.Add(heat[1].Phone.Cookies.GetCookies(heat[1].Phone.Site));
        (await heat[1].Phone.Post("/api/sign-out", new { })).Fine();

        await NothingIsRecorded(heat, async () =>
        {
            Assert.Equal("not-signed-in", (await heat[1].Post(heat[1].Done(1))).Code);
            Assert.Equal("not-signed-in", (await copied.Post($"{heat.Path}/taps", TestHeat.Batch(heat[1].Done(1)))).Code);
        });
    }

    [Fact]
    public async Task A_stale_code_lets_nobody_in_and_the_judge_who_came_in_with_it_keeps_the_seat()
    {
        var heat = await Floor.Call(lanes: 1);
        var code = await Floor.Code(Role.Judge, 1);
        var judge = await heat.Seat(1, ready: true, phone: await Floor.Join(code, "Mara"));
        await heat.Go();
        await Floor.Code(Role.Judge, 1);
        var late = Floor.Visitor();

        await NothingIsRecorded(heat, async () =>
        {
            var refused = await late.Post("/api/join", new { code, name = "Lou" });
            Assert.Equal((403, "code-expired"), (refused.Status, refused.Code));
            Assert.Equal("This code is over: its time has passed, or a new one was made. Ask the organiser for the new one.", refused.Detail);
            Assert.Equal("not-signed-in", (await late.Post($"{heat.Path}/taps", TestHeat.Batch(judge.Done(1)))).Code);
        });
        Assert.Equal((TapOutcome.Accepted, FactFlags.None), ((await judge.Finish(1)).Outcome, (await judge.Finish(2)).Flags));
    }

    private static string Body(TestHeat heat, string address) => address == "taps"
        ? TestHeat.Batch(heat[1].Done(1)).ToJsonString()
        : new JsonObject { ["command"] = "give-up-seat", ["id"] = heat[1].Phone.NewId(), ["lane"] = 1, ["seat"] = heat[1].Seat }.ToJsonString();
}
