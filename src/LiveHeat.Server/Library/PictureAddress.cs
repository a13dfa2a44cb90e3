using System.Text.RegularExpressions;

namespace LiveHeat.Server.Library;

/// <summary>The address under which a movement's picture is served. It names the picture by its key, so it may be kept for ever.</summary>
internal static partial class PictureAddress
{
    public static string Of(string movement, string key) => $"/api/setup/movements/{movement}/picture?v={key}";

    /// <summary>The key in such an address; null when it is another address, or none.</summary>
    public static string? KeyOf(string? address) => address is not null && Form().Match(address) is { Success: true } match ? match.Groups[1].Value : null;

    [GeneratedRegex(@"^/api/setup/movements/[a-z0-9-]{1,40}/picture\?v=([0-9a-f]{32})\z", RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
