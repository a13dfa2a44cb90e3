using Microsoft.AspNetCore.Mvc.Testing;

namespace LiveHeat.Testing.Hosting;

/// <summary>The real server, as the tests start it: in memory, or on a port of its own for a browser.</summary>
internal sealed class LiveHeatApp : WebApplicationFactory<Program>
{
    /// <summary>Starts the server on a free port of 127.0.0.1 and gives its address, with a slash at the end.</summary>
    public Uri Open()
    {
        UseKestrel(port: 0);
        StartServer();
        return ClientOptions.BaseAddress;
    }
}
