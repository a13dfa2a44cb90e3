using System.IO.Compression;
using Microsoft.AspNetCore.ResponseCompression;

namespace LiveHeat.Server.Hosting;

/// <summary>Small answers over a gym's WiFi, published or not.</summary>
internal static class BestCompression
{
    public static void AddBestCompression(this IServiceCollection services)
    {
        services.AddSingleton<IResponseCompressionProvider, AnswerCompression>();
        services.AddResponseCompression(compression =>
        {
            compression.EnableForHttps = true;
            compression.MimeTypes = ["text/javascript", "text/css", "text/html", "application/manifest+json", "image/svg+xml", AnswerCompression.Json];
        });
        services.Configure<BrotliCompressionProviderOptions>(brotli => brotli.Level = CompressionLevel.SmallestSize);
    }

    /// <summary>Compresses with Brotli wherever it is understood.</summary>
    /// <remarks>
    /// A build that is not published stands its files beside gzip files that are stored and not compressed, and a browser that names gzip first gets those.
    /// A published one has Brotli files of its own.
    /// </remarks>
    public static void UseBestCompression(this WebApplication app)
    {
        app.Use((context, next) =>
        {
            if (context.Request.Headers.AcceptEncoding.ToString().Contains("br", StringComparison.Ordinal))
            {
                context.Request.Headers.AcceptEncoding = "br";
            }

            context.Response.OnStarting(LeaveOut, context.Response.Headers);
            return next(context);
        });
        app.UseResponseCompression();
        app.UseRouting();
    }

    /// <summary>A file's tag says whether it changed, and nobody asks for a part of one: 70 bytes of each file of the pad.</summary>
    private static Task LeaveOut(object headers)
    {
        if (headers is IHeaderDictionary { ETag.Count: > 0 } told)
        {
            told.Remove("Accept-Ranges");
            told.Remove("Last-Modified");
        }

        return Task.CompletedTask;
    }
}
