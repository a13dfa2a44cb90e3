using System.Security.Cryptography;
using System.Text.Json;
using LiveHeat.Contracts.Wire;
using Microsoft.Net.Http.Headers;

namespace LiveHeat.Server.Heats;

/// <summary>JSON with a tag of what it says, and 304 for whoever knows the tag.</summary>
/// <remarks>
/// The tag is weak (RFC 9110, 8.8.1): the same may be said in other bytes, made at another moment or compressed. Every answer says that it differs by the encoding
/// asked for, 304 too (RFC 9110, 15.4.5), so that nobody between gives what is compressed to somebody who cannot read it.
/// </remarks>
internal static class TaggedJson
{
    /// <summary>The answer.</summary>
    /// <param name="context">Where it goes.</param>
    /// <param name="value">All of it.</param>
    /// <param name="unchanging">The same without what changes though nothing has: the moment it was made.</param>
    public static IResult Of<T>(HttpContext context, T value, T unchanging)
    {
        var tag = TagOf(JsonSerializer.SerializeToUtf8Bytes(unchanging, WireJson.Options));
        context.Response.GetTypedHeaders().ETag = tag;
        context.Response.Headers.Append(HeaderNames.Vary, HeaderNames.AcceptEncoding);
        return context.Request.GetTypedHeaders().IfNoneMatch.Any(known => known.Compare(tag, useStrongComparison: false))
            ? Results.StatusCode(StatusCodes.Status304NotModified)
            : Results.Json(value, WireJson.Options);
    }

    /// <summary>The tag of what is said.</summary>
    public static EntityTagHeaderValue TagOf(byte[] json) => new($"\"{Convert.ToHexStringLower(SHA256.HashData(json))[..32]}\"", isWeak: true);
}
