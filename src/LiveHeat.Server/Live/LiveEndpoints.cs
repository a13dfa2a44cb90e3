using LiveHeat.Contracts.Live;
using LiveHeat.Engine.Timing;
using LiveHeat.Server.Access;
using LiveHeat.Server.Heats;

namespace LiveHeat.Server.Live;

/// <summary>
/// A heat at an address that never changes, for pages of other origins: reading only, without cookies, a second old at most. It is the one address that other
/// origins may read; what it tells is made for that (<see cref="LiveHeatFrame"/>).
/// </summary>
internal static class LiveEndpoints
{
    /// <summary>The live heat, else the one called last.</summary>
    private const string Current = "current";

    private const int PreflightSeconds = 600;

    public static void MapLive(this IEndpointRouteBuilder app)
    {
        app.MapGet("/api/live/{heat}", Read).AnyoneMay().Produces<LiveHeatFrame>().ProducesProblem(404).WithName("Live");
        app.MapMethods("/api/live/{heat}", ["OPTIONS"], Preflight).AnyoneMay().ExcludeFromDescription();
    }

    private static async Task<IResult> Read(string heat, HttpContext context, FindHeat heats)
    {
        var response = context.Response;
        Open(response.Headers);
        var session = heat == Current ? await heats.Current() : await heats.Called(heat);
        if (session?.Sheet() is not { } sheet)
        {
            return Problems.Of(404, "no-such-heat", heat == Current ? HeatRefusals.NoHeatYet : HeatRefusals.NoSuchHeat(heat));
        }

        var live = LiveMaking.Of(session.Frame(), sheet);
        response.Headers.CacheControl = "public, max-age=1";
        return TaggedJson.Of(context, live, live with { MadeAt = new Instant(0) });
    }

    /// <summary>A page that sends the tag it knows is asked for by its browser first.</summary>
    private static IResult Preflight(HttpContext context)
    {
        var headers = context.Response.Headers;
        Open(headers);
        headers.AccessControlAllowMethods = "GET";
        headers.AccessControlAllowHeaders = "If-None-Match";
        headers.AccessControlMaxAge = PreflightSeconds.ToString(System.Globalization.CultureInfo.InvariantCulture);
        return Results.NoContent();
    }

    /// <summary>Any page may read it, and its tag; none with our cookies, which "*" does not allow.</summary>
    private static void Open(IHeaderDictionary headers)
    {
        headers.AccessControlAllowOrigin = "*";
        headers.AccessControlExposeHeaders = "ETag";
    }
}
