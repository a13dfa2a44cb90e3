using LiveHeat.Engine.Heats;
using LiveHeat.Ledger.Registry;
using LiveHeat.Server.Setup;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http.Connections;
using Microsoft.AspNetCore.SignalR;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;

namespace LiveHeat.Server.Access;

/// <summary>Access and setup alone, on a registry of their own and a clock that stands still until it is told.</summary>
internal sealed class SmallHost : IAsyncDisposable
{
    /// <summary>A new registry, made once: its tables take longer to make than most tests to run.</summary>
    private static readonly Lazy<Task<byte[]>> NewRegistry = new(async () =>
    {
        var folder = Directory.CreateTempSubdirectory("access-").FullName;
        var file = Path.Combine(folder, FileName);
        await (await HeatRegistry.Open(file, TimeProvider.System, CancellationToken.None)).DisposeAsync();
        var bytes = await File.ReadAllBytesAsync(file);
        Directory.Delete(folder, recursive: true);
        return bytes;
    });

    private const string FileName = "registry.db";

    private readonly WebApplication app;
    private readonly string folder;
    private readonly bool ownsFolder;
    private readonly List<HttpClient> clients = [];

    private SmallHost(WebApplication app, string folder, bool ownsFolder, HeatRegistry registry, FakeTimeProvider time)
    {
        (this.app, this.folder, this.ownsFolder) = (app, folder, ownsFolder);
        (Registry, Time) = (registry, time);
    }

    public HeatRegistry Registry { get; }

    public FakeTimeProvider Time { get; }

    /// <summary>The heats that count as called.</summary>
    public HashSet<HeatId> Called { get; } = [];

    public string Folder => folder;

    public IServiceProvider Services => app.Services;

    public TestServer Server => app.GetTestServer();

    /// <summary>Where it listens when it was started on a port.</summary>
    public Uri Address => new(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single());

    /// <param name="folder">An existing one, to start again on what was left there.</param>
    /// <param name="map">More endpoints.</param>
    /// <param name="onPort">On a free port of this machine instead of in memory.</param>
    public static async Task<SmallHost> Start(FakeTimeProvider? time = null, string? folder = null, Action<WebApplication>? map = null, bool onPort = false)
    {
        time ??= new FakeTimeProvider(new DateTimeOffset(2026, 11, 21, 9, 0, 0, TimeSpan.Zero));
        var home = folder ?? Directory.CreateTempSubdirectory("access-").FullName;
        if (folder is null)
        {
            await File.WriteAllBytesAsync(Path.Combine(home, FileName), await NewRegistry.Value);
        }

        var registry = await HeatRegistry.Open(Path.Combine(home, FileName), time, CancellationToken.None);
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        if (onPort)
        {
            builder.WebHost.UseUrls("http://127.0.0.1:0");
        }
        else
        {
            builder.WebHost.UseTestServer();
        }

        SmallHost? host = null;
        builder.Services.AddSingleton<TimeProvider>(time);
        builder.Services.AddSingleton(_ => registry);
        builder.Services.AddSingleton(new CalledHeats(heat => host!.Called.Contains(heat)));
        builder.Services.AddAccess().AddSetup().AddSignalR(hub => hub.AddFilter<WhoMayFilter>());
        var app = builder.Build();
        app.UseAccess();
        app.MapAccess();
        app.MapSetup();
        app.MapHub<SmallHub>("/hub", transport => transport.Transports = HttpTransportType.WebSockets).AnyoneMay();
        map?.Invoke(app);
        host = new SmallHost(app, home, folder is null, registry, time);
        await app.StartAsync();
        return host;
    }

    /// <summary>A browser without cookies.</summary>
    public Browser Browser(string address = "http://hall.test")
    {
        var client = new HttpClient(Server.CreateHandler()) { BaseAddress = new Uri(address) };
        clients.Add(client);
        return new Browser(client, address);
    }

    /// <summary>A browser with the organiser signed in, without the slow way through the passphrase.</summary>
    public async Task<Browser> Organiser()
    {
        var browser = Browser();
        browser.Cookies[SignInCookie.SignInName] = (await Registry.SignIns.Make("desk", "Orla", Role.Organiser, null, CancellationToken.None)).Token;
        return browser;
    }

    /// <summary>A browser that joined with a new code.</summary>
    public async Task<Browser> Joined(Role role, int? lane = null, string name = "Mara")
    {
        var code = await Registry.JoinCodes.Make(role, lane is { } number ? new LaneNumber(number) : null, TimeSpan.FromHours(1), CancellationToken.None);
        var browser = Browser();
        var answer = await browser.Post("/api/join", new { code = code.Text, name });
        Assert.Equal(200, answer.Status);
        return browser;
    }

    public async ValueTask DisposeAsync()
    {
        clients.ForEach(client => client.Dispose());
        await app.DisposeAsync();   // and with it the registry
        if (ownsFolder)
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
