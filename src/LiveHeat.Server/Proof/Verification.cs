using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using LiveHeat.Contracts.Proof;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Integrity;

namespace LiveHeat.Server.Proof;

/// <summary>What a check of an exported heat came to.</summary>
/// <param name="Sound">Nothing was found that does not fit.</param>
/// <param name="Lines">What was found, a sentence each.</param>
internal sealed record VerificationReport(bool Sound, IReadOnlyList<string> Lines);

/// <summary>Checks an exported heat: the chain entry by entry, each certificate's signature, and that the result follows from the entries.</summary>
internal static class Verification
{
    /// <summary>The report. It needs no server and no network.</summary>
    /// <param name="json">The file's text.</param>
    /// <param name="fingerprint">The key that must have signed; null when the caller does not know it.</param>
    public static VerificationReport Check(string json, string? fingerprint)
    {
        HeatExport export;
        try
        {
            export = JsonSerializer.Deserialize<HeatExport>(json, WireJson.Options) ?? throw new JsonException();
        }
        catch (JsonException)
        {
            return new VerificationReport(false, ["This is no exported heat: it cannot be read."]);
        }

        if (export.Format != HeatExport.CurrentFormat)
        {
            return new VerificationReport(false, [$"The file is of the form {export.Format}; this program reads {HeatExport.CurrentFormat}."]);
        }

        var wrong = Chain(export).Concat(Facts(export)).ToList();
        if (wrong.Count > 0)
        {
            return new VerificationReport(false, wrong);
        }

        var said = new List<string> { Invariant($"{export.Entries.Count} entries fit together.") };
        wrong.AddRange(Certificates(export, fingerprint, said));
        return new VerificationReport(wrong.Count == 0, [.. said, .. wrong]);
    }

    private static IEnumerable<string> Chain(HeatExport export)
    {
        var bad = HashChain.Verify(export.Entries.Select(entry => new ChainLink(
            new ChainEntry(export.Heat, entry.Sequence, entry.Id, entry.Sender, entry.ReceivedAt, entry.BodyHash, entry.Body), entry.PreviousHash, entry.Hash)));
        if (bad is { } sequence)
        {
            yield return Invariant($"Entry {sequence} does not fit: it was changed, taken out or put in after it was written.");
        }
    }

    private static IEnumerable<string> Facts(HeatExport export)
    {
        foreach (var entry in export.Entries)
        {
            HeatFact? fact = null;
            try
            {
                fact = WireJson.ReadFact(entry.Body);
            }
            catch (JsonException)
            {
                // Told below: what cannot be read has no id.
            }

            if (fact is null || fact.Id != entry.Id)
            {
                yield return Invariant($"Entry {entry.Sequence} holds no fact of its id.");
                yield break;
            }
        }
    }

    private static IEnumerable<string> Certificates(HeatExport export, string? fingerprint, List<string> said)
    {
        if (export.Certificates.Count == 0)
        {
            yield return "The heat carries no certificate: it is not certified.";
            yield break;
        }

        string? before = null;
        foreach (var certificate in export.Certificates)
        {
            var statement = Read(certificate);
            if (statement is null || statement.Heat != export.Heat)
            {
                yield return "A certificate cannot be read, or is another heat's.";
                yield break;
            }

            var name = Invariant($"Certificate of revision {statement.Revision}");
            if (!SigningKey.Fits(Convert.FromBase64String(certificate.PublicKey), CanonicalJson.Bytes(certificate.Statement), Convert.FromBase64String(certificate.Signature)))
            {
                yield return $"{name}: the signature does not fit what it states.";
            }

            var signer = SigningKey.FingerprintOf(Convert.FromBase64String(certificate.PublicKey));
            if (signer != statement.Key)
            {
                yield return $"{name}: it names another key than the one that signed it.";
            }

            if (fingerprint is null)
            {
                said.Add($"{name}: signer unknown. Give the fingerprint with --key; this one says {signer}.");
            }
            else if (signer != Plain(fingerprint))
            {
                yield return $"{name}: signed by another key ({signer}).";
            }
            else
            {
                said.Add($"{name}: signed by the key you named.");
            }

            if (statement.PreviousCertificate != before)
            {
                yield return $"{name}: it does not follow the certificate before it.";
            }

            foreach (var line in Covers(export, statement, name))
            {
                yield return line;
            }

            before = Convert.ToHexStringLower(SHA256.HashData(CanonicalJson.Bytes(certificate.Statement)));
        }

        foreach (var line in Tail(export))
        {
            said.Add(line);
        }
    }

    private static IEnumerable<string> Covers(HeatExport export, CertificateStatement statement, string name)
    {
        if (statement.Count > export.Entries.Count)
        {
            yield return Invariant($"{name}: it covers {statement.Count} entries, the file has {export.Entries.Count}: its end was cut off.");
            yield break;
        }

        if (export.Entries[(int)statement.Count - 1].Hash != statement.HeadHash)
        {
            yield return Invariant($"{name}: entry {statement.Count} is not the one it covers.");
            yield break;
        }

        var entries = export.Entries.Take((int)statement.Count)
            .Select(entry => new Entry(entry.Sequence, entry.ReceivedAt, entry.Sender, WireJson.ReadFact(entry.Body))).ToList();
        var result = ResultMaking.Signed(HeatState.Fold(export.Heat, entries), statement.HeadHash, entries[^1].ReceivedAt);
        if (CanonicalJson.Text(JsonSerializer.SerializeToElement(result, WireJson.Options))
            != CanonicalJson.Text(JsonSerializer.SerializeToElement(statement.Result, WireJson.Options)))
        {
            yield return $"{name}: its result does not follow from the entries.";
        }
    }

    private static IEnumerable<string> Tail(HeatExport export)
    {
        var covered = export.Certificates.Select(Read).Max(statement => statement?.Count ?? 0);
        if (export.Entries.Count > covered)
        {
            yield return Invariant($"{export.Entries.Count - covered} entries came after the newest certificate and are not covered by it.");
        }
    }

    private static CertificateStatement? Read(SignedCertificate certificate)
    {
        try
        {
            return certificate.Statement.Deserialize<CertificateStatement>(WireJson.Options);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static string Plain(string fingerprint) => new([.. fingerprint.Where(char.IsAsciiHexDigit).Select(char.ToLowerInvariant)]);

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
