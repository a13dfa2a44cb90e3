using LiveHeat.Server.Access;

namespace LiveHeat.Server.Files;

/// <summary>The files of the other projects: /screens/ (LiveHeat.Screens), /floor/ and /pad/ (LiveHeat.Floor).</summary>
internal static class ServedFiles
{
    // Without it a browser may keep last month's start page, and with it last month's pages.
    private static readonly StaticFileOptions AskEachTime = new()
    {
        OnPrepareResponse = file => file.Context.Response.Headers.CacheControl = "no-cache",
    };

    public static void MapServedFiles(this WebApplication app)
    {
        // The pad's service worker answers for what is below /pad/, and /pad is not.
        app.Use((context, next) =>
        {
            if (context.Request.Path != "/pad")
            {
                return next(context);
            }

            context.Response.Redirect("/pad/");
            return Task.CompletedTask;
        });
        app.MapStaticAssets().AnyoneMay();
        // An address inside the screens (/screens/desk/heat-3) is no file; the Blazor application reads it.
        app.MapFallbackToFile("/screens/{*path:nonfile}", "screens/index.html", AskEachTime).AnyoneMay();
        app.MapFallbackToFile("/pad/{*path:nonfile}", "pad/index.html", AskEachTime).AnyoneMay();
        // The code stands behind the #, which a browser keeps through a redirect and no server sees.
        app.MapGet("/join", () => Results.Redirect("/screens/join")).AnyoneMay().ExcludeFromDescription();
    }
}
