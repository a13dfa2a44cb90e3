using System.Collections.Concurrent;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.RegularExpressions;
using Microsoft.Extensions.FileProviders;
using Microsoft.Net.Http.Headers;

namespace LiveHeat.Server.Files;

/// <summary>
/// The scripts of pad and board as phones get them: without their comments, which are for whoever reads the code and are a twelfth of what a phone in a hall would have
/// to fetch; compressed once as far as Brotli goes.
/// </summary>
internal sealed partial class FloorScripts(IWebHostEnvironment environment)
{
    private readonly ConcurrentDictionary<(string Path, DateTimeOffset Changed, long Length), Script> kept = new();

    /// <summary>Answers for /pad/*.js and /floor/*.js; whatever else there is goes on.</summary>
    public async Task Invoke(HttpContext context, RequestDelegate next)
    {
        var (request, response) = (context.Request, context.Response);
        if (!(HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method)) || !Address().IsMatch(request.Path) || environment.WebRootFileProvider.GetFileInfo(request.Path) is not { Exists: true } file)
        {
            await next(context);
            return;
        }

        var script = kept.GetOrAdd((request.Path, file.LastModified, file.Length), _ => Read(file));
        response.Headers.ETag = script.Tag;
        response.Headers.CacheControl = "no-cache";
        if (request.Headers.IfNoneMatch.Any(tags => tags?.Contains(script.Tag, StringComparison.Ordinal) == true))
        {
            response.StatusCode = StatusCodes.Status304NotModified;
            return;
        }

        var small = request.GetTypedHeaders().AcceptEncoding.Any(way => way.Value == "br" && way.Quality is not 0);
        response.ContentType = "text/javascript";
        response.Headers.Vary = HeaderNames.AcceptEncoding;
        if (small)
        {
            response.Headers.ContentEncoding = "br";
        }

        var body = small ? script.Brotli : script.Plain;
        response.ContentLength = body.Length;
        if (HttpMethods.IsGet(request.Method))
        {
            await response.Body.WriteAsync(body, context.RequestAborted);
        }
    }

    /// <summary>Takes out comments that have lines of their own.</summary>
    internal static string WithoutComments(string script) => Comment().Replace(script, "");

    private static Script Read(IFileInfo file)
    {
        using var reader = new StreamReader(file.CreateReadStream());
        var plain = System.Text.Encoding.UTF8.GetBytes(WithoutComments(reader.ReadToEnd()));
        using var small = new MemoryStream();
        using (var brotli = new BrotliStream(small, CompressionLevel.SmallestSize))
        {
            brotli.Write(plain);
        }

        return new Script(plain, small.ToArray(), $"\"{Convert.ToHexStringLower(SHA256.HashData(plain))[..16]}\"");
    }

    [GeneratedRegex(@"^/(pad|floor)/[a-z/-]+\.js\z")]
    private static partial Regex Address();

    [GeneratedRegex(@"^[ ]*(//[^\n]*|/\*\*(?:(?!\*/).)*\*/[ ]*)\n", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Comment();

    private sealed record Script(byte[] Plain, byte[] Brotli, string Tag);
}
