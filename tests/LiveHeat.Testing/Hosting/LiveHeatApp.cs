using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;

namespace LiveHeat.Testing.Hosting;

/// <summary>The real server, as the tests start it: in memory, or on a port of its own for a browser; on a data folder of its own.</summary>
internal sealed class LiveHeatApp : WebApplicationFactory<Program>
{
    private readonly string data = Directory.CreateTempSubdirectory("liveheat-test-").FullName;

    /// <summary>Starts the server on a free port of 127.0.0.1 and gives its address, with a slash at the end.</summary>
    public Uri Open()
    {
        UseKestrel(port: 0);
        StartServer();
        return ClientOptions.BaseAddress;
    }

    /// <inheritdoc/>
    protected override void ConfigureWebHost(IWebHostBuilder builder) => builder.UseSetting("Data", data);

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && Directory.Exists(data))
        {
            Directory.Delete(data, recursive: true);
        }
    }
}
