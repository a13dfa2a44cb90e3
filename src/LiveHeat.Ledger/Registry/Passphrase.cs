using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;

namespace LiveHeat.Ledger.Registry;

/// <summary>The organiser's passphrase: made here, told once, kept only as a salted hash (PBKDF2 with SHA-256).</summary>
public sealed class Passphrase : IDisposable
{
    /// <summary>Characters without the hyphens: 100 bits.</summary>
    private const int Length = 20;

    /// <summary>
    /// A hundred random bits cannot be guessed even at one iteration; the count only adds to that, and is held low enough that a
    /// check on a slow machine does not take a processor from a running heat. Stored with the hash, so it may change.
    /// </summary>
    private const int Iterations = 100_000;

    private readonly RegistryFile file;
    private readonly SemaphoreSlim oneCheck = new(1, 1);

    internal Passphrase(RegistryFile file) => this.file = file;

    /// <summary>At the first start: makes the passphrase and tells it. Null when there is one already.</summary>
    public Task<string?> MakeFirst(CancellationToken cancellation) =>
        file.Write(context => context.Passphrases.Any() ? null : Set(context), cancellation);

    /// <summary>For an organiser who lost it and has the machine: a new one, told once; the old one is void.</summary>
    public Task<string> Renew(CancellationToken cancellation) => file.Write(Set, cancellation);

    /// <summary>Whether this is it, however it was typed: any case, with or without the hyphens. Takes the same time right or wrong.</summary>
    /// <remarks>One check at a time, so that a crowd of guesses costs one processor at most.</remarks>
    public async Task<bool> Verify(string? typed, CancellationToken cancellation)
    {
        var text = CodeText.Normalise(typed, Length) ?? "";
        var stored = await file.Read(context => context.Passphrases.AsNoTracking().SingleOrDefault(), cancellation).ConfigureAwait(false);
        if (stored is null)
        {
            return false;
        }

        await oneCheck.WaitAsync(cancellation).ConfigureAwait(false);
        try
        {
            var hash = await Task.Run(() => HashOf(text, stored.Salt, stored.Iterations), cancellation).ConfigureAwait(false);
            return CryptographicOperations.FixedTimeEquals(hash, stored.Hash);
        }
        finally
        {
            oneCheck.Release();
        }
    }

    /// <summary>The registry's to call.</summary>
    public void Dispose() => oneCheck.Dispose();

    private string Set(RegistryContext context)
    {
        var text = CodeText.Random(Length);
        var salt = RandomNumberGenerator.GetBytes(16);
        context.Passphrases.Where(p => p.Id == PassphraseRow.OnlyId).ExecuteDelete();
        context.Passphrases.Add(new PassphraseRow
        {
            Id = PassphraseRow.OnlyId,
            Salt = salt,
            Iterations = Iterations,
            Hash = HashOf(text, salt, Iterations),
            SetAtMs = file.Now.UnixMs,
        });
        return string.Join('-', text.Chunk(5).Select(part => new string(part)));
    }

    private static byte[] HashOf(string text, byte[] salt, int iterations) =>
        Rfc2898DeriveBytes.Pbkdf2(Encoding.ASCII.GetBytes(text), salt, iterations, HashAlgorithmName.SHA256, 32);
}
