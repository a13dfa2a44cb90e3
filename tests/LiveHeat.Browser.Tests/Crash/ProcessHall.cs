using LiveHeat.Browser.Pages;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting.Faults;
using LiveHeat.Testing.Hosting.Torture;
using Microsoft.Playwright;

namespace LiveHeat.Browser.Crash;

/// <summary>A <see cref="FaultFloor"/> with real browsers on it: pads and a board, each through a network of its own or a shared one.</summary>
internal sealed class ProcessHall : IAsyncDisposable
{
    private const string ReadTaps = """
        () => new Promise((done, fail) => {
          const open = indexedDB.open('pad', 1);
          open.onerror = fail;
          open.onsuccess = () => {
            const all = open.result.transaction('taps').objectStore('taps').getAll();
            all.onsuccess = () => { open.result.close(); done(all.result.map(({ fact }) => fact.id)); };
          };
        })
        """;

    private readonly Chromium chromium = new();
    private readonly List<IBrowserContext> contexts = [];
    private readonly Dictionary<string, JudgePhone> pads = [];

    private ProcessHall(FaultFloor floor) => Floor = floor;

    public FaultFloor Floor { get; }

    public TortureDesk Desk => Floor.Desk;

    public static async Task<ProcessHall> Open(int lanes, int rounds = 24, params string[] before)
    {
        var hall = new ProcessHall(await FaultFloor.Open(lanes, rounds, before));
        try
        {
            await hall.chromium.InitializeAsync();
            return hall;
        }
        catch
        {
            await hall.DisposeAsync();
            throw;
        }
    }

    /// <summary>A judge's phone with the pad on it, ready on its lane.</summary>
    public async Task<JudgePhone> Pad(int lane, FaultProxy link, string? script = null)
    {
        var context = await chromium.NewContext(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = 390, Height = 844 },
            HasTouch = true,
            IsMobile = true,
            Locale = "en-GB",
            TimezoneId = "UTC",
        });
        contexts.Add(context);
        if (script is not null)
        {
            await context.AddInitScriptAsync(script);
        }

        var pad = new JudgePhone(await context.NewPageAsync(), link.Address);
        pads[$"pad {lane}"] = pad;
        await pad.Join(await Desk.Code(lane), $"Pad {lane}");
        await pad.GetReady();
        return pad;
    }

    public async Task<BigBoard> Board(FaultProxy link)
    {
        var context = await chromium.NewContext(new BrowserNewContextOptions { ViewportSize = new ViewportSize { Width = 1280, Height = 720 } });
        contexts.Add(context);
        var board = new BigBoard(await context.NewPageAsync(), link.Address);
        await board.Open(TortureDesk.Heat);
        return board;
    }

    /// <summary>The organiser's desk, signed in.</summary>
    public async Task<DeskScreen> DeskScreen()
    {
        var context = await chromium.NewContext(new BrowserNewContextOptions { ViewportSize = new ViewportSize { Width = 1280, Height = 800 } });
        contexts.Add(context);
        var desk = new DeskScreen(await context.NewPageAsync(), Floor.Hub.Address);
        await desk.SignIn(Floor.Hub.Passphrase!, "Ona");
        return desk;
    }

    /// <summary>What the phones have stored: the browsers on their disks, the simulated ones in their outboxes.</summary>
    public async Task<IReadOnlyDictionary<string, IReadOnlyList<FactId>>> Stored()
    {
        var stored = Floor.OnPhones();
        foreach (var (name, pad) in pads)
        {
            stored[name] = [.. (await pad.Page.EvaluateAsync<string[]>(ReadTaps)).Select(text => FactId.TryParse(text, out var id) ? id : throw new FormatException(text))];
        }

        return stored;
    }

    /// <summary>Every tap that a phone stored is on the ledger once, each phone's in its order.</summary>
    public async Task<IReadOnlyList<string>> Broken(bool inOrder = true) => TapsOnce.Broken(await Desk.Facts(), await Stored(), inOrder);

    public async ValueTask DisposeAsync()
    {
        foreach (var context in contexts)
        {
            await context.DisposeAsync();
        }

        await chromium.DisposeAsync();
        await Floor.DisposeAsync();
    }
}
