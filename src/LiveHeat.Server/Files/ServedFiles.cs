namespace LiveHeat.Server.Files;

/// <summary>The files of the other projects: /screens/ (LiveHeat.Screens), /floor/ and /pad/service-worker.js (LiveHeat.Floor).</summary>
internal static class ServedFiles
{
    public static void MapServedFiles(this WebApplication app)
    {
        app.MapStaticAssets();
        // An address inside the screens (/screens/desk/heat-3) is no file; the Blazor application reads it.
        app.MapFallbackToFile("/screens/{*path:nonfile}", "screens/index.html", new StaticFileOptions
        {
            // Without it a browser may keep last month's start page, and with it last month's screens.
            OnPrepareResponse = file => file.Context.Response.Headers.CacheControl = "no-cache",
        });
    }
}
