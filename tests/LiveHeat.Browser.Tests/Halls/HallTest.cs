using System.Globalization;
using System.Runtime.ExceptionServices;
using LiveHeat.Browser.Pages;
using LiveHeat.Testing.Hosting.Faults;
using Microsoft.Playwright;

namespace LiveHeat.Browser.Halls;

/// <summary>A test with screens and phones in a hall. When it fails, what they showed is kept under .artifacts/browser-failures.</summary>
public abstract class HallTest(Hall hall) : HallTest<Hall>(hall);

/// <summary>The same in a hall of another kind.</summary>
public abstract class HallTest<THall>(THall hall) : IClassFixture<THall>, IAsyncLifetime
    where THall : Hall
{
    /// <summary>How long a test waits for what must come to the screen: long, since the machine may be slow, and only a broken test waits so long.</summary>
    private const float PatienceMs = 15_000;

    private readonly List<IBrowserContext> contexts = [];
    private readonly List<string> told = [];
    private readonly List<string> errors = [];
    private bool failed;

    private protected THall Hall => hall;

    public Task InitializeAsync()
    {
        Assertions.SetDefaultExpectTimeout(PatienceMs);
        AppDomain.CurrentDomain.FirstChanceException += Notice;
        return hall.ClearFloor();
    }

    public async Task DisposeAsync()
    {
        AppDomain.CurrentDomain.FirstChanceException -= Notice;
        if (failed || errors.Count > 0)
        {
            await KeepPictures();
        }

        foreach (var context in contexts)
        {
            await context.DisposeAsync();
        }

        Assert.Empty(errors);    // no script may break, whatever the test looked at
    }

    /// <summary>A page in a browser of its own: other cookies, other storage.</summary>
    /// <param name="inReach">No service worker stands between the page and the test, which means to change answers: it would take requests past the page's routes.</param>
    /// <param name="locale">The language that the device is set to.</param>
    private protected async Task<IPage> Page(int width, int height, bool phone = false, ReducedMotion motion = ReducedMotion.NoPreference, bool inReach = false, string locale = "en-GB")
    {
        var context = await hall.Chromium.NewContext(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = width, Height = height },
            HasTouch = phone,
            IsMobile = phone,
            ReducedMotion = motion,
            Locale = locale,
            TimezoneId = "UTC",
            ServiceWorkers = inReach ? ServiceWorkerPolicy.Block : ServiceWorkerPolicy.Allow,
        });
        context.SetDefaultTimeout(PatienceMs);
        contexts.Add(context);
        context.Page += (_, page) => Listen(page);
        return await context.NewPageAsync();
    }

    /// <summary>A judge's phone.</summary>
    /// <param name="link">Its network; null: straight to the server.</param>
    private protected async Task<JudgePhone> Phone(FaultProxy? link = null, int width = 390, int height = 844, bool inReach = false) =>
        new(await Page(width, height, phone: true, inReach: inReach), link?.Address ?? hall.Site);

    /// <summary>A judge's phone that has joined, and is ready on its lane of a heat that was called.</summary>
    private protected async Task<JudgePhone> ReadyPhone(int lane, string judge = "Mara", FaultProxy? link = null, bool inReach = false)
    {
        var phone = await Phone(link, inReach: inReach);
        await phone.Join(await hall.CodeOf(lane), judge);
        await phone.GetReady();
        return phone;
    }

    /// <summary>The same, and the heat runs.</summary>
    private protected async Task<JudgePhone> WorkingPhone(HallHeat heat, int lane, FaultProxy? link = null, bool inReach = false)
    {
        var phone = await ReadyPhone(lane, link: link, inReach: inReach);
        await heat.RunsSince(1_000);
        await phone.IsAt("heat");
        return phone;
    }

    private protected async Task<BigBoard> Board(HallHeat? heat = null, int width = 1920, int height = 1080)
    {
        var board = new BigBoard(await Page(width, height), hall.Site);
        await board.Open(heat?.Id);
        return board;
    }

    private void Listen(IPage page)
    {
        page.PageError += (_, error) => errors.Add($"{page.Url}: {error}");
        page.Console += (_, line) => told.Add($"{page.Url} {line.Type}: {line.Text}");
    }

    /// <summary>xunit does not tell a test class how its test ended; an exception of an assertion tells it.</summary>
    private void Notice(object? sender, FirstChanceExceptionEventArgs thrown) => failed |= thrown.Exception is Xunit.Sdk.XunitException or PlaywrightException or TimeoutException;

    private async Task KeepPictures()
    {
        var artifacts = AppContext.BaseDirectory[..(AppContext.BaseDirectory.IndexOf(".artifacts", StringComparison.Ordinal) + ".artifacts".Length)];
        var folder = Directory.CreateDirectory(Path.Combine(
            artifacts, "browser-failures", $"{GetType().Name}-{DateTime.Now.ToString("HHmmss.fff", CultureInfo.InvariantCulture)}")).FullName;
        foreach (var (page, i) in contexts.SelectMany(context => context.Pages).Select((page, i) => (page, i + 1)))
        {
            try
            {
                await page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(folder, $"{i}.png"), Timeout = 5_000 });
                await File.WriteAllTextAsync(Path.Combine(folder, $"{i}.html"), await page.ContentAsync());
            }
            catch (Exception gone) when (gone is PlaywrightException or TimeoutException)
            {
                told.Add($"{page.Url}: no picture, {gone.Message}");
            }
        }

        await File.WriteAllLinesAsync(Path.Combine(folder, "console.txt"), [.. errors, .. told]);
    }
}
