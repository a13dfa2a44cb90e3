using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting;
using Microsoft.AspNetCore.SignalR.Client;

namespace LiveHeat.Server.Heats;

/// <summary>Freeze, certify, reopen: laws 7 and design section 9.</summary>
public sealed class EndingTests(SharedFloor shared) : FloorTest(shared)
{
    [Fact]
    public async Task A_running_heat_is_not_frozen()
    {
        var heat = await Floor.Run(lanes: 1);

        await NothingIsRecorded(heat, async () =>
        {
            var answer = await heat.Command(Floor.Organiser, "freeze", new { head = (await heat.Frame()).Sequence });
            Assert.Equal((409, "heat-still-running", "The heat still runs. End it first."), (answer.Status, answer.Code, answer.Detail));
        });
    }

    [Fact]
    public async Task Freezing_what_has_moved_is_refused_with_what_is_new()
    {
        var heat = await Floor.Run(lanes: 2);
        await heat.Do(Floor.Organiser, "end");
        var seen = (await heat.Frame()).Sequence;
        await heat[2].SendOne(heat[2].Done(1));
        await heat[1].SendOne(heat[1].Tap("head-judge-called", ("note", "count")));

        await NothingIsRecorded(heat, async () =>
        {
            var answer = await heat.Command(Floor.Organiser, "freeze", new { head = seen });
            Assert.Equal((409, "head-moved"), (answer.Status, answer.Code));
            Assert.Equal($"Something came in that you have not seen: 2 new, up to number {seen + 2}. Look at it, then do it again.", answer.Detail);
            Assert.Equal(seen + 2, answer.Json.GetProperty("head").GetInt64());
            Assert.Equal(["lane 2: step done (10 wall balls)", "lane 1: head judge called"], News(answer));
            Assert.Equal(Phase.Ended, (await heat.Frame()).Phase);
        });

        await heat.Do(Floor.Organiser, "freeze", new { head = seen + 2 });
        Assert.Equal(Phase.Frozen, (await heat.Frame()).Phase);
    }

    [Fact]
    public async Task Freezing_over_taps_that_a_phone_still_holds_needs_a_reason()
    {
        var heat = await Floor.Run(lanes: 1);
        await using var phone = await HubViewer.Connect(heat[1].Phone);
        await phone.Hub.InvokeAsync("ReportPhone", new { lane = 1, heat = heat.Id, unsent = 3, onPhone = 3, clock = "good" });
        await heat.Do(Floor.Organiser, "end");
        var head = (await heat.Frame()).Sequence;

        await NothingIsRecorded(heat, async () =>
        {
            var answer = await heat.Command(Floor.Organiser, "freeze", new { head });
            Assert.Equal((409, "reason-needed"), (answer.Status, answer.Code));
            Assert.Matches("^Not all has arrived: lane 1: 3 taps still on the phone, last seen .+\\. Wait for it, or freeze over it with a reason\\.$", answer.Detail);
        });

        await heat.Do(Floor.Organiser, "freeze", new { head, over = "phone is broken" });
        var frozen = (HeatFact.Frozen)(await heat.Facts())[^1].Fact;
        Assert.Equal(("phone is broken", 1, 3), (frozen.Over, frozen.Missing!.Value.Single().Lane.Value, frozen.Missing.Value.Single().Taps));
    }

    [Fact]
    public async Task Two_signatures_of_two_roles_certify()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat.EndAndFreeze();
        var head = (await heat.Frame()).SignedHead;

        await heat.Do(Floor.HeadJudge, "certify", new { head });
        Assert.Equal((Phase.Frozen, "frozen"), await Status(heat));
        Assert.Equal([Role.HeadJudge], (await heat.Frame()).Signed);
        await heat.Do(Floor.Organiser, "certify", new { head });

        Assert.Equal((Phase.Certified, "certified"), await Status(heat));
        Assert.Equal(["Hedda", "Ona"], (await Result(heat)).Signatures.Select(signature => signature.Name));
    }

    [Fact]
    public async Task What_is_not_frozen_is_not_signed()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat.Do(Floor.Organiser, "end");

        await NothingIsRecorded(heat, async () =>
        {
            var answer = await heat.Command(Floor.HeadJudge, "certify", new { head = (await heat.Frame()).SignedHead });
            Assert.Equal((409, "not-frozen", "Freeze the heat first: what is signed must stand still."), (answer.Status, answer.Code, answer.Detail));
        });
    }

    [Fact]
    public async Task The_same_role_signs_once_and_the_same_sign_in_once()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat.EndAndFreeze();
        var head = (await heat.Frame()).SignedHead;
        await heat.Do(Floor.HeadJudge, "certify", new { head });
        var second = await Floor.Join(Role.HeadJudge, null, "Hanno");

        await NothingIsRecorded(heat, async () =>
        {
            foreach (var who in new[] { Floor.HeadJudge, second })
            {
                var answer = await heat.Command(who, "certify", new { head });
                Assert.Equal((409, "already-signed", "The head judge has signed already; the other signature is missing."), (answer.Status, answer.Code, answer.Detail));
            }
        });
        await heat.Do(Floor.Organiser, "certify", new { head });
        Assert.Equal((409, "already-signed"), await Told(heat.Command(Floor.Organiser, "certify", new { head })));
    }

    [Fact]
    public async Task Signing_what_has_moved_is_refused_and_a_ruling_makes_the_first_signature_lapse()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat.EndAndFreeze();
        var head = (await heat.Frame()).SignedHead;
        await heat.Do(Floor.Organiser, "certify", new { head });
        await heat.Do(Floor.HeadJudge, "penalise", new { lane = 1, addMs = 5000, reason = "no tag" });

        await NothingIsRecorded(heat, async () =>
        {
            var answer = await heat.Command(Floor.HeadJudge, "certify", new { head });
            Assert.Equal((409, "head-moved"), (answer.Status, answer.Code));
            Assert.Equal(head + 2, answer.Json.GetProperty("head").GetInt64());
            Assert.Equal(["lane 1: penalised"], News(answer));
        });
        Assert.Empty((await heat.Frame()).Signed);
        await heat.Certify();
        Assert.Equal((Phase.Certified, "certified"), await Status(heat));
    }

    [Fact]
    public async Task Both_sign_at_once_and_it_is_certified()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat.EndAndFreeze();
        var head = (await heat.Frame()).SignedHead;

        await Task.WhenAll(heat.Do(Floor.Organiser, "certify", new { head }), heat.Do(Floor.HeadJudge, "certify", new { head }));

        Assert.Equal((Phase.Certified, "certified"), await Status(heat));
    }

    [Fact]
    public async Task Reopening_needs_a_reason_and_gives_a_new_revision()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat[1].Finish(1);
        await heat.EndAndFreeze();
        await heat.Certify();

        await NothingIsRecorded(heat, async () =>
        {
            var answer = await heat.Command(Floor.Organiser, "reopen", new { reason = "" });
            Assert.Equal((409, "reason-needed"), (answer.Status, answer.Code));
            Assert.Equal((409, "wrong-phase"), await Told(heat.Command(Floor.HeadJudge, "penalise", new { lane = 1, addMs = 1000 })));
        });
        await heat.Do(Floor.Organiser, "reopen", new { reason = "video shows a no-rep" });

        Assert.Equal((Phase.Ended, "provisional"), await Status(heat));
        Assert.Equal((2, 0), ((await Result(heat)).Revision, (await Result(heat)).Signatures.Count));
        await heat.Do(Floor.Organiser, "freeze", new { head = (await heat.Frame()).Sequence });
        await heat.Certify();
        Assert.Equal((2, "certified"), ((await Result(heat)).Revision, (await Result(heat)).Status));
        Assert.Equal(4, (await heat.Facts()).Count(line => line.Fact is HeatFact.Certified));
    }

    [Fact]
    public async Task The_next_heat_does_not_wait_for_the_review_of_the_last()
    {
        var first = await Floor.Run(lanes: 1);
        await first.Do(Floor.Organiser, "end");

        var second = await Floor.Run(lanes: 1);

        Assert.Equal((Phase.Ended, Phase.Running), ((await first.Frame()).Phase, (await second.Frame()).Phase));
        Assert.Equal(TapOutcome.Accepted, (await second[1].Finish(1)).Outcome);
        await first.Do(Floor.Organiser, "freeze", new { head = (await first.Frame()).Sequence });
        await first.Certify();
        Assert.Equal(Phase.Running, (await second.Frame()).Phase);
    }

    private static IEnumerable<string?> News(Reply answer) => answer.Json.GetProperty("news").EnumerateArray().Select(item => item.GetString());

    private static async Task<(Phase, string)> Status(TestHeat heat) => ((await heat.Frame()).Phase, (await Result(heat)).Status);

    private static async Task<ResultTable> Result(TestHeat heat) => (await heat.Floor.Visitor().Get($"{heat.Path}/result")).Read<ResultTable>();

    private static async Task<(int, string)> Told(Task<Reply> answer) => ((await answer).Status, (await answer).Code);
}
