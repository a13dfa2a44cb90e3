using System.IO.Compression;
using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.Extensions.Options;

namespace LiveHeat.Server.Hosting;

/// <summary>What is compressed on its way, and how hard: pages and files as far as Brotli goes, JSON quickly, since each answer of it is made anew.</summary>
/// <remarks>
/// JSON is compressed where it was asked for with GET, and no further. An answer to a POST is a receipt of a few bytes, or a code that is told once beside a name that
/// somebody typed: the length of what is secret and chosen text, compressed together, tells of the secret (BREACH). No answer to a GET holds a token, a code or a
/// passphrase. Problems are as small, and repeat what was sent.
/// </remarks>
internal sealed class AnswerCompression(IServiceProvider services, IOptions<ResponseCompressionOptions> options) : ResponseCompressionProvider(services, options)
{
    /// <summary>What JSON is sent as.</summary>
    public const string Json = "application/json";

    /// <summary>A sheet of 80 kB is 3 kB after a quarter of a millisecond; as far as Brotli goes it would be 2 kB after 50.</summary>
    private readonly BrotliCompressionProvider quick = new(Options.Create(new BrotliCompressionProviderOptions { Level = CompressionLevel.Optimal }));

    public override bool ShouldCompressResponse(HttpContext context) => (HttpMethods.IsGet(context.Request.Method) || !IsJson(context)) && base.ShouldCompressResponse(context);

    public override ICompressionProvider? GetCompressionProvider(HttpContext context) =>
        base.GetCompressionProvider(context) is var usual && usual is BrotliCompressionProvider && IsJson(context) ? quick : usual;

    private static bool IsJson(HttpContext context) => context.Response.ContentType?.StartsWith(Json, StringComparison.OrdinalIgnoreCase) == true;
}
