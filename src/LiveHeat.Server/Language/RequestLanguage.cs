using LiveHeat.Contracts.Language;
using Microsoft.Net.Http.Headers;

namespace LiveHeat.Server.Language;

/// <summary>The language that a request is answered in: the address's (<c>?lang=de</c>), else the first that the browser asks for and there is, else English.</summary>
internal static class RequestLanguage
{
    /// <summary>Comes before all that answers in words.</summary>
    public static IApplicationBuilder UseRequestLanguage(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        Tongue.Speak(Of(context.Request));
        return next(context);
    });

    /// <summary>One of <see cref="Tongue.All"/>.</summary>
    public static string Of(HttpRequest request)
    {
        var wishes = request.GetTypedHeaders().AcceptLanguage.Where(wish => wish.Quality is not 0).OrderByDescending(wish => wish.Quality ?? 1).Select(wish => wish.Value.Value);
        return wishes.Prepend(request.Query["lang"].ToString()).Select(Tongue.Known).FirstOrDefault(known => known is not null) ?? Tongue.All[0];
    }
}
