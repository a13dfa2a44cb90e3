namespace LiveHeat.Server.Library;

/// <summary>Tells a picture by its first bytes, whatever it is said to be.</summary>
internal static class PictureBytes
{
    public const string Png = "image/png";
    public const string Jpeg = "image/jpeg";
    public const string WebP = "image/webp";

    /// <summary>Most bytes of a picture.</summary>
    public const int Most = 512 * 1024;

    /// <summary>Where a WebP file says that it is one, behind the length of the file.</summary>
    private const int WebPMarkAt = 8;

    /// <summary>The kinds that are taken.</summary>
    public static readonly IReadOnlyList<string> Types = [Png, Jpeg, WebP];

    /// <summary>The content type; null when it is none of these pictures.</summary>
    public static string? TypeOf(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith<byte>([0x89, (byte)'P', (byte)'N', (byte)'G', (byte)'\r', (byte)'\n', 0x1A, (byte)'\n']) ? Png
        : bytes.StartsWith<byte>([0xFF, 0xD8, 0xFF]) ? Jpeg
        : bytes.StartsWith("RIFF"u8) && bytes.Length > WebPMarkAt && bytes[WebPMarkAt..].StartsWith("WEBP"u8) ? WebP
        : null;
}
