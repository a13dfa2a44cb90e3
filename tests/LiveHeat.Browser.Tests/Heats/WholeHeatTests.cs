using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Pages;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Heats;

/// <summary>The main job, on real input: two judges' phones, the big screen, the announcer and the desk, from join codes to a certified result.</summary>
[Collection(OneAtATime.Name)]
public sealed class WholeHeatTests(Hall hall) : HallTest(hall)
{
    private static readonly Entrant[] Teams = [new(1, "Harbour Anvils", "Joss", "Ilka"), new(2, "Tin Whistle Four", "Ravi", "Ansel")];

    [Fact]
    public async Task A_heat_is_run_from_join_codes_to_a_certified_result()
    {
        var heat = await Hall.Plan(QuickWork.Sets(), Teams);
        var desk = new DeskScreen(await Page(1440, 900), Hall.Site);
        await desk.SignIn(Hall.Passphrase, "Ona");
        var codes = await desk.MakeCodes(1, 2);
        await desk.OpenHeat(heat.Id);
        await desk.Press("call");
        await desk.IsIn("called");
        await Expect(desk.Act("go")).ToBeDisabledAsync();

        var board = await Board();
        await board.Shows("before");
        var mara = await Joins(codes.Lanes[1], "Mara");
        var odd = await Joins(codes.Lanes[2], "Odd");
        await Expect(board.Lane(1)).ToHaveAttributeAsync("data-ready", "yes");
        await Expect(desk.InLane(1, "ready")).ToHaveTextAsync("ready");
        await Expect(desk.InLane(2, "ready")).ToHaveTextAsync("ready");
        var headJudge = new HeadJudgeScreen(await Page(390, 844, phone: true), Hall.Site);
        await headJudge.Join(codes.HeadJudge, "Hedda", "head-judge");
        var announcer = new AnnouncerScreen(await Page(1280, 800), Hall.Site);
        await announcer.Open("screens/announcer", "announcer");

        await desk.Press("count-down-10");
        await desk.Press("go");
        await Task.WhenAll(mara.IsAt("countdown"), odd.IsAt("countdown"), board.Shows("count-down"), announcer.IsIn("countingdown"));
        await Task.WhenAll(mara.IsAt("heat"), odd.IsAt("heat"), board.Shows("running"), desk.IsIn("running"), announcer.IsIn("running"));

        await Judge(heat, mara, odd, board, announcer);
        await headJudge.IsIn("running");

        await desk.PressAndConfirm("end");
        await Task.WhenAll(desk.IsIn("ended"), board.Shows("result"), headJudge.IsIn("ended"));
        await Expect(board.Clock).ToHaveTextAsync("unofficial");
        await Certify(desk, headJudge);
        await Expect(board.Clock).ToHaveTextAsync("certified");
        await announcer.IsIn("certified");
        await TheResultIs(heat);
    }

    /// <summary>Lane 1 goes ahead; lane 2 has a no-rep and a tap taken back; both finish and hear their time.</summary>
    private static async Task Judge(HallHeat heat, JudgePhone mara, JudgePhone odd, BigBoard board, AnnouncerScreen announcer)
    {
        await mara.RecordAll("step-done 1", "step-done 2");
        await odd.Press("no-rep");
        await odd.Record("step-done", 1);
        await Task.WhenAll(board.HasPlace(1, 1), board.HasPlace(2, 2), announcer.OrderIs("Harbour Anvils", "Tin Whistle Four"));
        await odd.Record("step-done", 2);
        await odd.Carries("tag-made", 3);
        await odd.Undo("step-done", 2);
        await mara.Record("tag-made", 3);
        await Task.WhenAll(board.Tells(1, "Ilka"), Expect(announcer.Lane(1)).ToContainTextAsync("Ilka"));
        await odd.RecordAll("step-done 2", "tag-made 3");
        await Expect(board.Beside(2)).ToContainTextAsync(" s");

        await mara.RecordAll("step-done 4", "step-done 5", "step-done 6");
        await odd.RecordAll("step-done 4", "step-done 5", "step-done 6");
        foreach (var (phone, lane, captain) in new[] { (mara, 1, "Ilka"), (odd, 2, "Ravi") })
        {
            await phone.IsAt("finish");
            await phone.Act("captain-name").Filter(new() { HasText = captain }).TapAsync();
            await phone.Touch("agree");
            await Expect(phone.Act("read-back")).ToContainTextAsync(captain);
            await phone.IsAllSafe();
            await board.HasStatus(lane, "finished");
        }

        Assert.Equal(["step-done 1", "step-done 2", "tag-made 3", "step-done 4", "step-done 5", "step-done 6", "score-read-back"], await heat.Told(1));
        Assert.Equal(
            ["no-rep 1", "step-done 1", "step-done 2", "undone", "step-done 2", "tag-made 3", "step-done 4", "step-done 5", "step-done 6", "score-read-back"],
            await heat.Told(2));
        await announcer.OrderIs("Harbour Anvils", "Tin Whistle Four");
    }

    /// <summary>Freeze by the desk; then two signatures, each in its own sign-in.</summary>
    private static async Task Certify(DeskScreen desk, HeadJudgeScreen headJudge)
    {
        await desk.Press("freeze");
        await desk.Press("freeze-yes");
        await Task.WhenAll(desk.IsIn("frozen"), headJudge.IsIn("frozen"));
        await desk.Press("sign");
        await desk.Press("sign-yes");
        await Expect(headJudge.Act("signature-organiser")).ToHaveClassAsync("yes");
        await headJudge.Press("sign");
        await headJudge.Press("sign-yes");
        await Task.WhenAll(desk.IsIn("certified"), headJudge.IsIn("certified"));
    }

    private async Task TheResultIs(HallHeat heat)
    {
        var lanes = (await heat.Result()).Lanes;
        var page = new ResultPage(await Page(1024, 1400), Hall.Site);
        await page.Open(heat.Id);
        await Expect(page.Status).ToContainTextAsync("Certified");
        foreach (var (lane, place) in new[] { (1, "1st"), (2, "2nd") })
        {
            await Expect(page.Cell(lane, "place")).ToHaveTextAsync(place);
            await Expect(page.Cell(lane, "score")).ToContainTextAsync(Engine.Timing.TimeText.Of(lanes.Single(one => one.Lane.Value == lane).OfficialMs!.Value));
        }

        await Expect(page.Cell(2, "number")).ToHaveTextAsync("1");
        await Expect(page.Signatures).ToContainTextAsync("Signed: Ona, organiser");
        await Expect(page.Signatures).ToContainTextAsync("Signed: Hedda, head judge");
    }

    private async Task<JudgePhone> Joins(string address, string judge)
    {
        var phone = await Phone();
        await phone.Join(new Uri(address).Fragment.TrimStart('#'), judge);
        await phone.GetReady();
        return phone;
    }
}
