using System.Globalization;
using LiveHeat.Contracts.Wire;
using LiveHeat.Ledger.Facts;
using LiveHeat.Ledger.Registry;
using LiveHeat.Server.Access;
using LiveHeat.Server.Board;
using LiveHeat.Server.Briefing;
using LiveHeat.Server.Cards;
using LiveHeat.Server.Exports;
using LiveHeat.Server.Files;
using LiveHeat.Server.Forecasts;
using LiveHeat.Server.Heats;
using LiveHeat.Server.Hubs;
using LiveHeat.Server.Judging;
using LiveHeat.Server.Language;
using LiveHeat.Server.Library;
using LiveHeat.Server.Live;
using LiveHeat.Server.Overlay;
using LiveHeat.Server.Phones;
using LiveHeat.Server.Proof;
using LiveHeat.Server.Result;
using LiveHeat.Server.Setup;
using LiveHeat.Server.Standings;
using LiveHeat.Server.Time;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Http.Connections;
using Microsoft.AspNetCore.SignalR;
using Serilog;
using Serilog.Events;

namespace LiveHeat.Server.Hosting;

/// <summary>Puts the hub together.</summary>
internal static class Hub
{
    private static readonly TimeSpan KeepAlive = TimeSpan.FromSeconds(5);
    private static readonly TimeSpan Silence = TimeSpan.FromSeconds(12);

    /// <summary>A hub on the data of a folder, ready to run.</summary>
    public static async Task<WebApplication> Build(string[] args, Func<IConfiguration, ServeOptions> read)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            Args = args,
            // The published files stand beside the program, whatever folder it is started from.
            ContentRootPath = AppContext.BaseDirectory,
        });
        // Without it "dotnet run" outside Development does not find the files of the other projects.
        builder.WebHost.UseStaticWebAssets();
        var options = read(builder.Configuration);
        Directory.CreateDirectory(options.Data);
        if (string.IsNullOrEmpty(builder.Configuration[WebHostDefaults.ServerUrlsKey]))
        {
            builder.WebHost.UseUrls(options.Urls);
        }

        builder.WebHost.ConfigureKestrel(kestrel => kestrel.AddServerHeader = false);
        builder.Services.AddSerilog(log => Logging(log, builder.Configuration, options));
        await AddStores(builder, options);
        AddHeats(builder.Services, options);

        var app = builder.Build();
        app.Use(next => context => app.Services.GetRequiredService<FloorScripts>().Invoke(context, next));
        app.UseBestCompression();
        app.UseRequestLanguage();
        app.UseAccess();
        app.MapOpenApi().AnyoneMay();
        app.MapAccess();
        app.MapSetup();
        app.MapLibrary();
        app.MapHeatWriting();
        app.MapHeatReading();
        app.MapLive();
        app.MapHub<HeatHub>("/hub", transport => transport.Transports = HttpTransportType.WebSockets).AnyoneMay();
        app.MapBoardPages();
        app.MapBoardMessage();
        app.MapOverlay();
        app.MapBriefingPages();
        app.MapCardPages();
        app.MapResultPages();
        app.MapStandings();
        app.MapExports();
        app.MapJudging();
        app.MapServedFiles();
        return app;
    }

    private static async Task AddStores(WebApplicationBuilder builder, ServeOptions options)
    {
        TimeProvider time = options.Speed == 1 ? TimeProvider.System : new FastTime(options.Speed);
        var log = Microsoft.Extensions.Logging.Abstractions.NullLogger.Instance;
        var ledger = await HeatLedger.Open(options.LedgerFile, time, log, CancellationToken.None);
        var registry = await HeatRegistry.Open(options.RegistryFile, time, CancellationToken.None);
        builder.Services.AddSingleton(time);
        builder.Services.AddSingleton(services => new Timebase(services.GetRequiredService<TimeProvider>(), options.Speed));
        builder.Services.AddSingleton(_ => ledger);
        builder.Services.AddSingleton(_ => registry);
    }

    private static void AddHeats(IServiceCollection services, ServeOptions options)
    {
        services.AddAccess();
        services.AddSetup();
        services.AddOpenApi();
        services.AddBestCompression();
        services.AddRazorComponents();
        services.AddDataProtection().PersistKeysToFileSystem(new DirectoryInfo(Path.Combine(options.Data, "keys")));
        services.ConfigureHttpJsonOptions(json => WireJson.Apply(json.SerializerOptions));
        services.AddSignalR(hub =>
        {
            hub.KeepAliveInterval = KeepAlive;
            hub.ClientTimeoutInterval = Silence;
            hub.MaximumReceiveMessageSize = 16 * 1024;
            hub.AddFilter<WhoMayFilter>();
        }).AddJsonProtocol(json => WireJson.Apply(json.PayloadSerializerOptions));
        services.AddSingleton<HeatSessions>();
        services.AddSingleton(_ => SigningKey.Open(options.KeyFile));
        services.AddSingleton<Certificates>();
        services.AddSingleton<FindHeat>();
        services.AddSingleton<ProgramReader>();
        services.AddSingleton<PadReader>();
        services.AddSingleton<FloorPhones>();
        services.AddSingleton<FloorScripts>();
        services.AddSingleton<BoardWords>();
        services.AddSingleton<BoardPageMaking>();
        services.AddSingleton<BoardMessages>();
        services.AddSingleton<Viewers>();
        services.AddSingleton<Forecasting>();
        services.AddSingleton<OverallNewsroom>();
        services.AddSingleton(provider => new CalledHeats(heat =>
            provider.GetRequiredService<HeatSessions>().Open().Any(session => session.Heat == heat && session.State.Snapshot is not null)));
        services.AddHostedService<FramePublisher>();
        services.AddSingleton<LedgerWatch>();
        services.AddHostedService(provider => provider.GetRequiredService<LedgerWatch>());
        services.AddSingleton(options);
    }

    private static void Logging(LoggerConfiguration log, IConfiguration configuration, ServeOptions options)
    {
        log.ReadFrom.Configuration(configuration)
            .WriteTo.Console(options.Quiet ? LogEventLevel.Warning : LogEventLevel.Information, formatProvider: CultureInfo.InvariantCulture)
            .WriteTo.File(
                Path.Combine(options.Data, "logs", "hub-.log"), formatProvider: CultureInfo.InvariantCulture,
                rollingInterval: RollingInterval.Day, retainedFileCountLimit: 14);
    }
}
