using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Timing;
using LiveHeat.Server.Access;
using LiveHeat.Server.Heats;
using LiveHeat.Server.Language;
using LiveHeat.Server.Proof;
using LiveHeat.Server.Setup;
using LiveHeat.Server.Time;
using Microsoft.AspNetCore.Http.HttpResults;

namespace LiveHeat.Server.Result;

/// <summary>The result of a heat as a page: to read on any screen, and to print on A4.</summary>
internal static class ResultPages
{
    public static void MapResultPages(this IEndpointRouteBuilder app) =>
        app.MapGet("/result/{heat}", Page).AnyoneMay().ExcludeFromDescription();

    private static async Task<IResult> Page(string heat, HttpRequest request, FindHeat heats, SetupReader setup, Certificates certificates, Timebase time, CancellationToken cancellation)
    {
        var session = await heats.Called(heat);
        var table = session is null ? null : ResultMaking.Of(session.State, session.HeadHash, time.Now);
        var seen = session?.Seen;
        var planned = table is null && (await setup.Heats(cancellation)).Any(one => one.Id == heat);
        return new RazorComponentResult<ResultPage>(new Dictionary<string, object?>
        {
            [nameof(ResultPage.Table)] = table,
            [nameof(ResultPage.Fingerprint)] = certificates.Fingerprint,
            [nameof(ResultPage.Broken)] = session?.BrokenAt is { } at ? HeatRefusals.Broken(at).Sentence() : null,
            [nameof(ResultPage.BriefingAddress)] = planned ? RequestLanguage.Onward(request, $"/briefing/{Uri.EscapeDataString(heat)}") : null,
            [nameof(ResultPage.AppealWindow)] = AppealLines.Window(session?.State.AppealsUntil, time.Now, Local),
            [nameof(ResultPage.Strips)] = seen is { } now ? HowFar.Of(now.State, now.Placings, time.Now) : null,
            [nameof(ResultPage.PrintedAt)] = Local(time.Now),
        })
        {
            StatusCode = table is null ? StatusCodes.Status404NotFound : StatusCodes.Status200OK,
        };
    }

    /// <summary>On the venue's clocks, which are this computer's.</summary>
    private static DateTimeOffset Local(Instant at) => DateTimeOffset.FromUnixTimeMilliseconds(at.UnixMs).ToLocalTime();
}
