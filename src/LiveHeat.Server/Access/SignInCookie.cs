using System.Buffers.Text;
using System.Security.Cryptography;

namespace LiveHeat.Server.Access;

/// <summary>The two cookies: who is signed in, and which device it is. No script can read them, and no other site's form sends them.</summary>
internal static class SignInCookie
{
    public const string SignInName = "sign-in";
    public const string DeviceName = "device";

    /// <summary>How long a sign-in lasts: longer than any competition, not for ever on a borrowed phone.</summary>
    public static readonly TimeSpan Lifetime = TimeSpan.FromDays(30);

    private const int TokenLength = 43;    // 256 bits in base64url
    private const int DeviceLength = 22;   // 128 bits

    /// <summary>The token sent along; null when there is none or it cannot be one.</summary>
    public static string? Token(HttpRequest request) => Plain(request.Cookies[SignInName], TokenLength);

    public static void SetToken(HttpContext context, string token) => context.Response.Cookies.Append(SignInName, token, Options(context.Request, Lifetime));

    public static void Forget(HttpContext context) => context.Response.Cookies.Delete(SignInName, Options(context.Request, null));

    /// <summary>The device's own id: 128 random bits, given to it when it first tries to get in. It opens nothing; it only tells tries apart.</summary>
    public static string Device(HttpContext context)
    {
        if (Plain(context.Request.Cookies[DeviceName], DeviceLength) is { } known)
        {
            return known;
        }

        var made = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(16));
        context.Response.Cookies.Append(DeviceName, made, Options(context.Request, Lifetime));
        return made;
    }

    private static CookieOptions Options(HttpRequest request, TimeSpan? lifetime) => new()
    {
        HttpOnly = true,
        SameSite = SameSiteMode.Lax,
        Secure = request.IsHttps,
        Path = "/",
        MaxAge = lifetime,
        IsEssential = true,
    };

    private static string? Plain(string? value, int length) =>
        value is not null && value.Length == length && value.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_') ? value : null;
}
