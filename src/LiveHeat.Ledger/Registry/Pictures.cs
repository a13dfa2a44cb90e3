using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;

namespace LiveHeat.Ledger.Registry;

/// <summary>A picture as it is kept.</summary>
/// <param name="ContentType">Such as image/png.</param>
/// <param name="Bytes">As they came.</param>
public sealed record Picture(string ContentType, byte[] Bytes);

/// <summary>
/// Pictures by what is in them. They are never deleted and never change under their key: what judges were shown in a heat can be shown again, whatever
/// became of the standard since.
/// </summary>
public sealed class Pictures
{
    private const int KeyLength = 32;
    private readonly RegistryFile file;

    internal Pictures(RegistryFile file) => this.file = file;

    /// <summary>Keeps a picture; the same bytes once.</summary>
    /// <returns>Its key: 32 hexadecimal digits, half of its SHA-256.</returns>
    public Task<string> Put(Picture picture, CancellationToken cancellation)
    {
        var key = Convert.ToHexStringLower(SHA256.HashData(picture.Bytes))[..KeyLength];
        return file.Write(
            context =>
            {
                if (!context.Pictures.Any(row => row.Key == key))
                {
                    context.Pictures.Add(new PictureRow { Key = key, ContentType = picture.ContentType, Bytes = picture.Bytes, KeptAtMs = file.Now.UnixMs });
                }

                return key;
            },
            cancellation);
    }

    /// <summary>The picture of that key; null when there is none.</summary>
    public Task<Picture?> Get(string key, CancellationToken cancellation) => file.Read(
        context => context.Pictures.AsNoTracking().SingleOrDefault(row => row.Key == key) is { } row ? new Picture(row.ContentType, row.Bytes) : null, cancellation);

    /// <summary>Whether there is one, without reading it.</summary>
    public Task<bool> Has(string key, CancellationToken cancellation) => file.Read(context => context.Pictures.Any(row => row.Key == key), cancellation);
}
