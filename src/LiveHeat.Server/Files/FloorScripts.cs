using System.Collections.Concurrent;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.RegularExpressions;
using Microsoft.Extensions.FileProviders;
using Microsoft.Net.Http.Headers;

namespace LiveHeat.Server.Files;

/// <summary>
/// The scripts of pad and board, and the words of their languages, as phones get them: scripts without comments and indents, which are for whoever reads the code and
/// are a tenth of what a phone in a hall would have to fetch; compressed once as far as Brotli goes.
/// </summary>
internal sealed partial class FloorScripts(IWebHostEnvironment environment)
{
    private readonly ConcurrentDictionary<(string Path, DateTimeOffset Changed, long Length), Script> kept = new();

    /// <summary>Answers for /pad/*.js, /floor/*.js and /floor/words/*.json; whatever else there is goes on.</summary>
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
        response.ContentType = script.Type;
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

    /// <summary>Takes out comments that have lines of their own, those behind code that hold no quotation mark, and the spaces that lines begin with.</summary>
    internal static string WithoutComments(string script) => Indent().Replace(Remark().Replace(Comment().Replace(script, ""), ""), "");

    private static Script Read(IFileInfo file)
    {
        using var reader = new StreamReader(file.CreateReadStream());
        var (text, isScript) = (reader.ReadToEnd(), file.Name.EndsWith(".js", StringComparison.Ordinal));
        var plain = System.Text.Encoding.UTF8.GetBytes(isScript ? WithoutComments(text) : text);
        using var small = new MemoryStream();
        using (var brotli = new BrotliStream(small, CompressionLevel.SmallestSize))
        {
            brotli.Write(plain);
        }

        return new Script(isScript ? "text/javascript" : "application/json", plain, small.ToArray(), $"\"{Convert.ToHexStringLower(SHA256.HashData(plain))[..16]}\"");
    }

    [GeneratedRegex(@"^/(?:(?:pad|floor)/[a-z/-]+\.js|floor/words/[a-z]+\.[a-z]{2}\.json)\z")]
    private static partial Regex Address();

    [GeneratedRegex(@"^[ ]*(//[^\n]*|/\*\*(?:(?!\*/).)*\*/[ ]*)\n", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"(?<=\S)[ ]+//[ ][^'""`\n]*$", RegexOptions.Multiline)]
    private static partial Regex Remark();

    [GeneratedRegex(@"^[ ]+", RegexOptions.Multiline)]
    private static partial Regex Indent();

    private sealed record Script(string Type, byte[] Plain, byte[] Brotli, string Tag);
}
