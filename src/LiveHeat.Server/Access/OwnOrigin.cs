using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.AspNetCore.SignalR;

namespace LiveHeat.Server.Access;

/// <summary>
/// What changes something, and every hub connection, must come from our own pages; what changes something must be JSON of a bearable size.
/// A foreign page can make a browser send a form or open a socket with our cookie, but it can neither forge its Origin nor send JSON unasked.
/// </summary>
internal sealed class OwnOrigin(RequestDelegate next)
{
    /// <summary>Most bytes of a body where the endpoint says nothing else.</summary>
    public const long MostBytes = 1024 * 1024;

    public Task Invoke(HttpContext context)
    {
        var request = context.Request;
        var endpoint = context.GetEndpoint();
        var isHub = endpoint?.Metadata.GetMetadata<HubMetadata>() is not null;
        var isWrite = !(HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method) || HttpMethods.IsOptions(request.Method));
        if ((isWrite || isHub || IsWebSocket(request)) && !IsOwn(request))
        {
            return new Problem(
                StatusCodes.Status403Forbidden, "wrong-origin",
                AccessRefusals.WrongOrigin).ExecuteAsync(context);
        }

        if (isWrite && !isHub && MustBeJson(request) && !request.HasJsonContentType() && !(HttpMethods.IsPut(request.Method) && endpoint?.Metadata.GetMetadata<TakesBytes>() is not null))
        {
            return new Problem(
                StatusCodes.Status415UnsupportedMediaType, "not-json", AccessRefusals.NotJson).ExecuteAsync(context);
        }

        return Limit(context, endpoint) ? next(context) : TooLarge().ExecuteAsync(context);
    }

    public static Problem TooLarge() => new(
        StatusCodes.Status413PayloadTooLarge, "too-large", AccessRefusals.TooLarge);

    private static bool IsOwn(HttpRequest request) =>
        request.Headers.Origin is [{ } origin]
        && Uri.TryCreate(origin, UriKind.Absolute, out var from)
        && Uri.TryCreate($"{request.Scheme}://{request.Host}", UriKind.Absolute, out var here)
        && Uri.Compare(from, here, UriComponents.SchemeAndServer, UriFormat.SafeUnescaped, StringComparison.OrdinalIgnoreCase) == 0;

    private static bool IsWebSocket(HttpRequest request) =>
        request.Headers.Upgrade.Any(value => value?.Contains("websocket", StringComparison.OrdinalIgnoreCase) == true);

    private static bool MustBeJson(HttpRequest request) =>
        !HttpMethods.IsDelete(request.Method) || request.ContentLength > 0 || request.ContentType is not null;

    private static bool Limit(HttpContext context, Endpoint? endpoint)
    {
        var most = endpoint?.Metadata.GetMetadata<IRequestSizeLimitMetadata>()?.MaxRequestBodySize ?? MostBytes;
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
        {
            limit.MaxRequestBodySize = most;   // for a body that does not say its length before it comes
        }

        return !(context.Request.ContentLength > most);
    }
}
