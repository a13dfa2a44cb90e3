using System.Buffers;
using System.Buffers.Text;
using System.Security.Cryptography;

namespace LiveHeat.Engine.Integrity;

/// <summary>Each line of a heat holds the hash of the line before: whoever knows the last hash can tell whether any line was changed.</summary>
/// <remarks>
/// A line's hash is the SHA-256 of the canonical JSON (RFC 8785) of
/// <c>{body, bodyHash, heat, id, previousHash, receivedAt, sender, sequence}</c>. The chain alone does not show a tail that was cut off;
/// a certificate does, for it names the head.
/// </remarks>
public static class HashChain
{
    /// <summary>What stands in the place of a previous hash in a heat's first line: 64 zeros.</summary>
    public const string Start = "0000000000000000000000000000000000000000000000000000000000000000";

    // One buffer a thread, written anew for every line.
    [ThreadStatic]
    private static ArrayBufferWriter<byte>? scratch;

    /// <summary>The hash of an entry that follows the line with <paramref name="previousHash"/>: 64 hex digits, lower case.</summary>
    public static string Next(string previousHash, ChainEntry entry)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(Canonical(previousHash, entry).WrittenSpan, hash);
        return Convert.ToHexStringLower(hash);
    }

    /// <summary>The first sequence of a heat at which the lines do not fit, or null when all do.</summary>
    /// <param name="lines">The lines of one heat as they are stored, in order, from its first.</param>
    /// <remarks>A missing line is named by the sequence that should have been there.</remarks>
    public static long? Verify(IEnumerable<ChainLink> lines)
    {
        ChainLink? before = null;
        foreach (var line in lines)
        {
            var due = (before?.Entry.Sequence ?? 0) + 1;
            if (line.Entry.Sequence != due
                || (before is { } last && line.Entry.Heat != last.Entry.Heat)
                || line.PreviousHash != (before?.Hash ?? Start)
                || line.Hash != Next(line.PreviousHash, line.Entry))
            {
                return due;
            }

            before = line;
        }

        return null;
    }

    /// <summary>The bytes that are hashed.</summary>
    /// <remarks>
    /// Written out here, names in canonical order, and not through a JSON tree: this runs for every tap between the phone and its
    /// receipt. A test holds it to <see cref="CanonicalJson"/>.
    /// </remarks>
    private static ArrayBufferWriter<byte> Canonical(string previousHash, ChainEntry entry)
    {
        var output = scratch ??= new ArrayBufferWriter<byte>(4096);
        output.ResetWrittenCount();
        output.Write("{\"body\":"u8);
        CanonicalString.Write(output, entry.Body);
        output.Write(",\"bodyHash\":"u8);
        CanonicalString.Write(output, entry.BodyHash);
        output.Write(",\"heat\":"u8);
        CanonicalString.Write(output, entry.Heat.Value);
        output.Write(",\"id\":"u8);
        CanonicalString.Write(output, entry.Id.ToString());
        output.Write(",\"previousHash\":"u8);
        CanonicalString.Write(output, previousHash);
        output.Write(",\"receivedAt\":"u8);
        Write(output, entry.ReceivedAt.UnixMs);
        output.Write(",\"sender\":"u8);
        CanonicalString.Write(output, entry.Sender);
        output.Write(",\"sequence\":"u8);
        Write(output, entry.Sequence);
        output.Write("}"u8);
        return output;
    }

    private static void Write(ArrayBufferWriter<byte> output, long value)
    {
        // Up to 2^53 a double holds every whole number, and its canonical form is the plain digits.
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, 1L << 53);
        ArgumentOutOfRangeException.ThrowIfLessThan(value, -(1L << 53));
        Utf8Formatter.TryFormat(value, output.GetSpan(20), out var written);
        output.Advance(written);
    }
}
