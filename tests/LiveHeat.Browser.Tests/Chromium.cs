using Microsoft.Playwright;

namespace LiveHeat.Browser;

/// <summary>One headless Chromium for all tests of a class: the one installed on this machine, never a downloaded one.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private static readonly string[] Places =
    [
        "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome", "/usr/bin/google-chrome-stable",
        "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
        @"C:\Program Files\Google\Chrome\Application\chrome.exe",
    ];

    // No sandbox: tests often run as root, where Chromium refuses one. The rest keeps it from asking the internet.
    private static readonly string[] Manners =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
        "--disable-background-networking", "--disable-component-update", "--disable-sync",
    ];

    private IPlaywright? playwright;
    private IBrowser? browser;

    /// <summary>A browser of somebody else: other cookies, other storage.</summary>
    public Task<IBrowserContext> NewContext(BrowserNewContextOptions? options = null) => browser!.NewContextAsync(options);

    public async Task<IPage> NewPage(BrowserNewContextOptions? options = null) => await (await NewContext(options)).NewPageAsync();

    /// <summary>A browser of its own that keeps what it stores in a folder, as a phone does; started again there, it goes on with it.</summary>
    public Task<IBrowserContext> Start(string profile, int width, int height) => playwright!.Chromium.LaunchPersistentContextAsync(
        profile,
        new BrowserTypeLaunchPersistentContextOptions
        {
            ExecutablePath = Find(),
            Args = Manners,
            Locale = "en-GB",
            TimezoneId = "UTC",
            ViewportSize = new ViewportSize { Width = width, Height = height },
            HasTouch = true,
            IsMobile = true,
        });

    public async Task InitializeAsync()
    {
        // A slow machine starts a WebAssembly page slowly; what is not there after so long is not coming.
        Assertions.SetDefaultExpectTimeout(30_000);
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Find(),
            Args = Manners,
        });
    }

    public async Task DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        playwright?.Dispose();
    }

    private static string Find() =>
        Environment.GetEnvironmentVariable("LIVEHEAT_CHROMIUM")
        ?? Array.Find(Places, File.Exists)
        ?? throw new FileNotFoundException(
            "No Chromium or Chrome found. Install one (Debian: apt-get install chromium) or set LIVEHEAT_CHROMIUM to its path.");
}
