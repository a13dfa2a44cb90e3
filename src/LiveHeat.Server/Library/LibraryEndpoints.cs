using System.Collections.Concurrent;
using System.Text.Json;
using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Wire;
using LiveHeat.Server.Access;
using LiveHeat.Server.Heats;
using Microsoft.Net.Http.Headers;

namespace LiveHeat.Server.Library;

/// <summary>The movement library, for anyone: it says what judges are held to.</summary>
internal static class LibraryEndpoints
{
    private static readonly ConcurrentDictionary<string, (byte[] Json, EntityTagHeaderValue Tag)> Written = [];

    public static IEndpointRouteBuilder MapLibrary(this IEndpointRouteBuilder app)
    {
        app.MapGet("/api/library", (string? language, HttpContext context) =>
            {
                var library = LibraryFiles.In(language);
                var (json, tag) = Written.GetOrAdd(library.Language, _ => Write(library));
                context.Response.Headers.CacheControl = "no-cache";
                context.Response.Headers.Append(HeaderNames.Vary, HeaderNames.AcceptEncoding);
                return Results.Bytes(json, "application/json", entityTag: tag);
            })
            .AnyoneMay().Produces<MovementLibrary>().WithName("Library")
            .WithSummary("The movements of the trade with their standards, faults, easier variants and expected pace. language: such as es; English where there is no translation.");
        return app;
    }

    private static (byte[] Json, EntityTagHeaderValue Tag) Write(MovementLibrary library)
    {
        var json = JsonSerializer.SerializeToUtf8Bytes(library, WireJson.Options);
        return (json, TaggedJson.TagOf(json));
    }
}
