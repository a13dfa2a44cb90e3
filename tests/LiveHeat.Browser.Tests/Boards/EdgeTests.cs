using System.Globalization;
using LiveHeat.Browser.Floor;
using LiveHeat.Browser.Halls;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Boards;

/// <summary>A television may cut off the edge of its picture (overscan): nothing but the ground is drawn there. Told from the pixels of pictures.</summary>
public sealed class EdgeTests(Hall hall) : ModuleTest(hall)
{
    private static readonly Entrant[] Teams = [new(1, "Harbour Anvils", "Joss", "Ilka"), new(2, "Tin Whistle Four", "Ravi", "Ansel")];

    [Theory]
    [InlineData("5", "0.05")]
    [InlineData("3,5", "0.035")]
    [InlineData("0", "0")]
    [InlineData("10", "0.1")]
    [InlineData("10.1", "null")]
    [InlineData("-1", "null")]
    [InlineData("", "null")]
    [InlineData("wide", "null")]
    [InlineData(null, "null")]
    public async Task The_margin_is_told_in_percent_up_to_a_tenth(string? wish, string edge) =>
        Assert.Equal(edge, await Run<string>(["/floor/edge.js"], "([edge], wish) => String(edge.edgeOf(wish))", wish));

    [Theory]
    [InlineData("", 3.5, 10, false, null)]
    [InlineData("edge=8", 8, 10, false, null)]
    [InlineData("edge=8", 8, 20, true, null)]
    [InlineData("edge=6", 6, 4, false, "third")]
    [InlineData("edge=6", 6, 4, false, "full")]
    public async Task Nothing_is_drawn_beyond_the_margin_in_any_scene(string options, double percent, int lanes, bool longNames, string? overlay)
    {
        var stage = new BoardStage(await Page(1920, 1080));
        await stage.Begin(Hall.Site, lanes, longNames, options: options, overlay: overlay);
        var faults = new List<string>();
        foreach (var scene in (await stage.Scenes()).Except(overlay is null ? [] : ["idle", "message", "programme", "standings"]))
        {
            await stage.Show(scene);
            faults.AddRange(await Beyond(stage.Page, scene, percent));
        }

        Assert.Empty(faults);
    }

    /// <summary>Each half has the margin of the whole picture at the edge that it shares with it.</summary>
    [Theory]
    [InlineData("left")]
    [InlineData("right")]
    public async Task One_of_two_heats_keeps_the_margin_of_the_whole_picture(string side)
    {
        var stage = new BoardStage(await Page(960, 1080));
        await stage.Begin(Hall.Site, 10, options: $"side={side}&edge=6");
        var faults = new List<string>();
        foreach (var scene in await stage.Scenes())
        {
            await stage.Show(scene);
            faults.AddRange(await Beyond(stage.Page, scene, 6, side == "left" ? (12, 6) : (6, 12)));
        }

        Assert.Empty(faults);
    }

    /// <summary>By its address, with the briefing's slides, which are a page of their own, and with the controls of a replay.</summary>
    [Fact]
    public async Task The_address_sets_the_margin_of_the_board_of_its_slides_and_of_a_replay()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        var page = await Page(1920, 1080);
        await page.Clock.InstallAsync();
        var board = new Pages.BigBoard(page, Hall.Site);
        await board.Open(heat.Id, "?edge=8&briefing=1&fit=1");
        await board.Shows("before");
        var slides = page.FrameLocator(".briefing");
        await Expect(slides.Locator("#slides[data-ready]")).ToBeAttachedAsync();
        var faults = new List<string>();
        faults.AddRange(await Beyond(page, "lanes", 8));
        await page.Clock.FastForwardAsync(21_000);
        await Expect(board.Main).ToHaveAttributeAsync("data-shows", "briefing");
        await Expect(slides.Locator(".slide[data-shown] h1")).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("f");
        await slides.Locator("body").EvaluateAsync("body => { body.style.backgroundImage = 'none'; }");
        faults.AddRange(await Beyond(page, "briefing", 8));

        await heat.RunsSince(30_000);
        await heat.Do("end");
        var desk = await Page(1920, 1080);
        await SignIn(desk);
        await desk.GotoAsync($"{Hall.Site}board/{heat.Id}?edge=8&replay=happened&at=5000");
        await Expect(desk.Locator("[data-act='seek']")).ToBeVisibleAsync();
        await desk.AddStyleTagAsync(new PageAddStyleTagOptions { Content = ".replay { background: none !important; border: 0 !important }" });
        faults.AddRange(await Beyond(desk, "replay", 8));
        Assert.Empty(faults);
    }

    private async Task SignIn(IPage page)
    {
        await page.GotoAsync($"{Hall.Site}health");
        await page.EvaluateAsync("passphrase => fetch('/api/sign-in', { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ passphrase, name: 'Ona' }) })", Hall.Passphrase);
    }

    /// <summary>What is drawn beyond the margins, in sentences; also when nothing is drawn at all.</summary>
    private async Task<IEnumerable<string>> Beyond(IPage page, string what, double percent, (double Left, double Right)? sides = null)
    {
        await page.AddStyleTagAsync(new PageAddStyleTagOptions { Content = "#board, .between > * { background-image: none !important }" });
        var picture = await page.ScreenshotAsync();
        var (left, right) = sides ?? (percent, percent);
        var quiet = await Hall.QuietPage();
        var told = await quiet.EvaluateAsync<string[]>(Pixels, new { picture = Convert.ToBase64String(picture), left = left / 100, right = right / 100, high = percent / 100 });
        return told.Select(fault => string.Create(CultureInfo.InvariantCulture, $"{what}: {fault}"));
    }

    /// <summary>Whatever has not the colour of the first pixel is drawn. A plate over a video may reach out of it by 0.4 % of the height, and letters are soft at their edge.</summary>
    private const string Pixels = """
        async ({ picture, left, right, high }) => {
          const image = new Image();
          image.src = `data:image/png;base64,${picture}`;
          await image.decode();
          const { width, height } = image, ink = Object.assign(document.createElement('canvas'), { width, height }).getContext('2d');
          ink.drawImage(image, 0, 0);
          const { data } = ink.getImageData(0, 0, width, height), box = { left: width, right: 0, top: height, bottom: 0 };
          for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) {
            const at = 4 * (y * width + x);
            if (Math.abs(data[at] - data[0]) + Math.abs(data[at + 1] - data[1]) + Math.abs(data[at + 2] - data[2]) < 24) continue;
            box.left = Math.min(box.left, x); box.right = Math.max(box.right, x + 1); box.top = Math.min(box.top, y); box.bottom = Math.max(box.bottom, y + 1);
          }
          const slack = 1.5 + 0.004 * height, faults = [];
          if (box.right - box.left < width * 0.2) faults.push(`hardly anything is drawn: ${JSON.stringify(box)}`);
          if (box.left < left * width - slack) faults.push(`${Math.round(left * width - box.left)} px beyond the left margin`);
          if (width - box.right < right * width - slack) faults.push(`${Math.round(right * width - width + box.right)} px beyond the right margin`);
          if (box.top < high * height - slack) faults.push(`${Math.round(high * height - box.top)} px beyond the upper margin`);
          if (height - box.bottom < high * height - slack) faults.push(`${Math.round(high * height - height + box.bottom)} px beyond the lower margin`);
          return faults;
        }
        """;
}
