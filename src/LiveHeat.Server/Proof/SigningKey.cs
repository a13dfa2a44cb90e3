using System.Security.Cryptography;

namespace LiveHeat.Server.Proof;

/// <summary>The competition's signing key: ECDSA on P-256, made once, kept in a file of its own that no backup of the data takes along.</summary>
/// <remarks>Whoever has the file can sign; whoever has its fingerprint can tell whether a certificate was signed with it.</remarks>
internal sealed class SigningKey : IDisposable
{
    private readonly ECDsa key;

    private SigningKey(ECDsa key)
    {
        this.key = key;
        PublicKey = key.ExportSubjectPublicKeyInfo();
        Fingerprint = FingerprintOf(PublicKey);
    }

    /// <summary>SHA-256 of the public key (SubjectPublicKeyInfo), hex.</summary>
    public string Fingerprint { get; }

    /// <summary>SubjectPublicKeyInfo.</summary>
    public byte[] PublicKey { get; }

    /// <summary>Reads the key, or makes it.</summary>
    public static SigningKey Open(string path)
    {
        var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        if (File.Exists(path))
        {
            key.ImportFromPem(File.ReadAllText(path));
            return new SigningKey(key);
        }

        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        using var file = new StreamWriter(path, options);
        file.Write(key.ExportPkcs8PrivateKeyPem());
        return new SigningKey(key);
    }

    /// <summary>SHA-256 of a public key, hex.</summary>
    public static string FingerprintOf(byte[] publicKey) => Convert.ToHexStringLower(SHA256.HashData(publicKey));

    /// <summary>The signature in DER, as openssl reads it.</summary>
    public byte[] Sign(byte[] data) => key.SignData(data, HashAlgorithmName.SHA256, DSASignatureFormat.Rfc3279DerSequence);

    /// <summary>Whether a signature fits a public key; false for a key or signature that is none.</summary>
    public static bool Fits(byte[] publicKey, byte[] data, byte[] signature)
    {
        try
        {
            using var key = ECDsa.Create();
            key.ImportSubjectPublicKeyInfo(publicKey, out _);
            return key.VerifyData(data, signature, HashAlgorithmName.SHA256, DSASignatureFormat.Rfc3279DerSequence);
        }
        catch (CryptographicException)
        {
            return false;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => key.Dispose();
}
