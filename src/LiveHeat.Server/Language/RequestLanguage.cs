using LiveHeat.Contracts.Language;
using Microsoft.Net.Http.Headers;

namespace LiveHeat.Server.Language;

/// <summary>The language that a request is answered in: the address's (<c>?lang=de</c>), else the first that the browser asks for and there is, else English.</summary>
internal static class RequestLanguage
{
    private const string Query = "lang";

    /// <summary>Files that are the same in every language: phones keep them, and nothing they keep may hang on a language.</summary>
    private static readonly string[] Files = ["/floor", "/pad", "/screens", "/hub"];

    /// <summary>Comes before all that answers in words.</summary>
    public static IApplicationBuilder UseRequestLanguage(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        Tongue.Speak(Of(context.Request));
        if (!Files.Any(folder => context.Request.Path.StartsWithSegments(folder, StringComparison.Ordinal)))
        {
            context.Response.Headers.Append(HeaderNames.Vary, HeaderNames.AcceptLanguage);
        }

        return next(context);
    });

    /// <summary>The address asked for, in another language; all else that it says stays.</summary>
    public static string Address(HttpRequest request, string language) =>
        $"?{string.Join('&', Others(request).Append($"{Query}={language}"))}";

    /// <summary>An address that this page leads to, in the language that its own address asked for.</summary>
    public static string Onward(HttpRequest request, string address) => Tongue.Known(request.Query[Query]) is { } asked
        ? $"{address}{(address.Contains('?', StringComparison.Ordinal) ? '&' : '?')}{Query}={asked}"
        : address;

    private static IEnumerable<string> Others(HttpRequest request) => request.QueryString.ToString().TrimStart('?').Split('&', StringSplitOptions.RemoveEmptyEntries)
        .Where(part => part.Split('=')[0] != Query);

    /// <summary>One of <see cref="Tongue.All"/>.</summary>
    public static string Of(HttpRequest request)
    {
        var wishes = request.GetTypedHeaders().AcceptLanguage.Where(wish => wish.Quality is not 0).OrderByDescending(wish => wish.Quality ?? 1).Select(wish => wish.Value.Value);
        return wishes.Prepend(request.Query[Query].ToString()).Select(Tongue.Known).FirstOrDefault(known => known is not null) ?? Tongue.All[0];
    }
}
