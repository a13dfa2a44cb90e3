using LiveHeat.Ledger.Facts;
using LiveHeat.Ledger.Registry;
using LiveHeat.Server.Time;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;

namespace LiveHeat.Testing.Hosting;

/// <summary>The real server, as the tests start it: in memory, or on a port of its own for a browser; on a data folder of its own.</summary>
/// <param name="folder">A folder to start on that its owner deletes; null for a new one, deleted with the server.</param>
/// <param name="time">The clock of the server's timebase; null for the machine's.</param>
internal sealed class LiveHeatApp(string? folder = null, TimeProvider? time = null) : WebApplicationFactory<Program>
{
    private readonly LastToClose files = new();

    /// <summary>Where ledger and registry are.</summary>
    public string Data { get; } = folder ?? Directory.CreateTempSubdirectory("liveheat-test-").FullName;

    /// <summary>Whether it listens on a port instead of in memory.</summary>
    public bool OnPort { get; private set; }

    /// <summary>Starts the server on a free port of 127.0.0.1 and gives its address, with a slash at the end.</summary>
    public Uri Open()
    {
        OnPort = true;
        UseKestrel();
        StartServer();
        return ClientOptions.BaseAddress;
    }

    /// <inheritdoc/>
    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        // As a venue runs it: a development host adds addresses of its own.
        builder.UseEnvironment("Production");
        builder.UseSetting("Data", Data);
        if (OnPort)
        {
            // As a setting, known before the program starts: UseKestrel(port) writes it into a server that another thread may have started already.
            builder.UseSetting(WebHostDefaults.ServerUrlsKey, "http://127.0.0.1:0");
        }

        builder.UseSetting("Serilog:MinimumLevel:Default", "Warning");
        builder.ConfigureTestServices(services =>
        {
            files.Outlive<HeatLedger>(services);
            files.Outlive<HeatRegistry>(services);
            if (time is not null)
            {
                services.AddSingleton(new Timebase(time));
            }
        });
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        // The program's own end runs beside this one: another server may not have the folder before it is through.
        files.Wait();
        if (disposing && folder is null && Directory.Exists(Data))
        {
            Directory.Delete(Data, recursive: true);
        }
    }
}
