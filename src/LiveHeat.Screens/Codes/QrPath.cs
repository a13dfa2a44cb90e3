using System.Globalization;
using System.Text;
using QRCoder;

namespace LiveHeat.Screens.Codes;

/// <summary>An address as a QR code, drawn as one SVG path: a unit square for each dark module.</summary>
/// <param name="Size">Modules a side, with the quiet zone of four that a reader needs (ISO/IEC 18004).</param>
/// <param name="Path">The path's data.</param>
public sealed record QrPath(int Size, string Path)
{
    /// <summary>With a quarter of it able to be lost (level Q): paper gets wet and creased.</summary>
    public static QrPath Of(string text)
    {
        using var data = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.Q);
        var path = new StringBuilder();
        for (var y = 0; y < data.ModuleMatrix.Count; y++)
        {
            for (var x = 0; x < data.ModuleMatrix[y].Count; x++)
            {
                if (data.ModuleMatrix[y][x])
                {
                    path.Append(CultureInfo.InvariantCulture, $"M{x} {y}h1v1h-1z");
                }
            }
        }

        return new QrPath(data.ModuleMatrix.Count, path.ToString());
    }
}
