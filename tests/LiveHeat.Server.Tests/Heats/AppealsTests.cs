using System.Net;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Scoring;
using LiveHeat.Server.Proof;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Heats;

/// <summary>An appeal from the desk to the certified revision, and a disqualification, as everybody reads them.</summary>
public sealed class AppealsTests(SharedFloor shared) : FloorTest(shared)
{
    [Fact]
    public async Task The_window_is_fifteen_minutes_from_the_freeze_and_the_refusal_says_until_when()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat.EndAndFreeze();
        var until = (await heat.Frame()).AppealsUntil!.Value;

        Floor.Time.Advance(TimeSpan.FromMinutes(15));
        await heat.Do(Floor.Organiser, "file-appeal", Appeal(1));
        Floor.Time.Advance(TimeSpan.FromSeconds(1));

        await NothingIsRecorded(heat, async () =>
        {
            var answer = await heat.Command(Floor.Organiser, "file-appeal", Appeal(1));
            Assert.Equal((409, "appeal-window-over"), (answer.Status, answer.Code));
            var local = DateTimeOffset.FromUnixTimeMilliseconds(until.UnixMs).ToLocalTime();
            Assert.Equal("appeal-window-over", (await heat.Command(Floor.Organiser, "file-appeal", new { lane = 1, member = "Ann", grounds = "a rep", reason = "was with the medics" })).Code);
            Assert.StartsWith($"Appeals were possible until {local:HH:mm}, 15 minutes after the provisional result was posted.", answer.Detail, StringComparison.Ordinal);
        });

        await heat.Do(Floor.HeadJudge, "file-appeal", new { lane = 1, member = "Ann", grounds = "a rep", reason = "was with the medics" });
        Assert.Equal("was with the medics", (await Result(heat)).Lanes[0].Appeals[1].Late);
    }

    [Fact]
    public async Task An_appeal_is_signed_as_pending_and_settled_by_the_next_revision_whose_certificate_names_the_one_before()
    {
        var heat = await Through();
        var answer = await heat.Do(Floor.Organiser, "file-appeal", Appeal(2));
        var appeal = (await heat.Facts()).Single(line => line.Sequence == answer.Sequence).Fact.Id;

        var head = (await heat.Frame()).SignedHead;
        var untold = await heat.Command(Floor.Organiser, "certify", new { head });
        Assert.Equal((409, "appeal-open"), (untold.Status, untold.Code));
        await heat.Do(Floor.Organiser, "certify", new { head, pending = new[] { 2 } });
        await heat.Do(Floor.HeadJudge, "certify", new { head, pending = new[] { 2 } });

        Assert.Contains("Pending: lane 2. An appeal is open; a later revision settles it.", await Page(heat), StringComparison.Ordinal);
        Assert.Contains("(2nd) pending", await Page(heat), StringComparison.Ordinal);
        var decide = new { target = appeal, outcome = "seconds", addMs = -200_000, reason = "seen on video" };
        Assert.Equal("wrong-phase", (await heat.Command(Floor.HeadJudge, "decide-appeal", decide)).Code);

        await heat.Do(Floor.Organiser, "reopen", new { reason = "appeal" });
        await heat.Do(Floor.HeadJudge, "decide-appeal", decide);
        await heat.Do(Floor.Organiser, "freeze", new { head = (await heat.Frame()).Sequence });
        await heat.Certify();

        var settled = await Result(heat);
        Assert.Equal((2, 1), (settled.Lanes[0].Lane.Value, settled.Lanes[0].Place));
        Assert.False(settled.Lanes[0].Pending);
        Assert.Contains("Appeal by Ann about two reps not counted: decided, −3:20.0: seen on video", await Page(heat), StringComparison.Ordinal);
        var export = (await Floor.Organiser.Get($"{heat.Path}/export")).Fine().Text;
        var report = Verification.Check(export, null);
        Assert.True(report.Sound, string.Join('\n', report.Lines));
        Assert.Equal(2, System.Text.Json.JsonDocument.Parse(export).RootElement.GetProperty("certificates").GetArrayLength());
    }

    [Fact]
    public async Task A_disqualified_team_is_so_on_every_screen_at_once_and_last_with_its_reason()
    {
        var heat = await Through();

        await heat.Do(Floor.HeadJudge, "disqualify", new { lane = 1, reason = "left the floor" });

        var frame = await heat.Frame();
        Assert.Equal((LaneStatus.Disqualified, (int?)null), (frame.Lanes[0].Status, frame.Lanes[0].Place));
        Assert.Equal(1, frame.Lanes[1].Place);
        var last = (await Result(heat)).Lanes[^1];
        Assert.Equal((1, Outcome.Disqualified, (int?)null, "left the floor"), (last.Lane.Value, last.Outcome, last.Place, last.Disqualified));
        Assert.Matches("disqualified\\s*<span class=\"how\">left the floor</span>", await Page(heat));
        Assert.Contains("disqualified", (await Floor.Visitor().Get("/standings")).Fine().Text, StringComparison.Ordinal);
        Assert.Contains(",left the floor,", (await Floor.Visitor().Get($"{heat.Path}/result.csv")).Fine().Text, StringComparison.Ordinal);
        Assert.Contains(",disqualified,1,", (await Floor.Organiser.Get($"{heat.Path}/facts.csv")).Fine().Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_captains_answer_by_name_stands_on_the_page()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat[1].SendOne(heat[1].Tap("score-read-back", ("agreed", false), ("name", "Bo")));

        Assert.Contains("disputed by Bo", await Page(heat), StringComparison.Ordinal);
    }

    private static object Appeal(int lane) => new { lane, member = "Ann", grounds = "two reps not counted" };

    /// <summary>Two lanes through all their work, the first at 3:00 and the second at 6:00, the heat frozen.</summary>
    private async Task<TestHeat> Through()
    {
        var heat = await Floor.Run(lanes: 2);
        foreach (var lane in new[] { 1, 2 })
        {
            for (var step = 1; step <= 9; step++)
            {
                await heat[lane].Finish(step);
            }
        }

        await heat.EndAndFreeze();
        return heat;
    }

    private async Task<ResultTable> Result(TestHeat heat) => (await Floor.Visitor().Get($"{heat.Path}/result")).Read<ResultTable>();

    private async Task<string> Page(TestHeat heat) => WebUtility.HtmlDecode((await Floor.Visitor().Get($"/result/{heat.Id}")).Fine().Text);
}
