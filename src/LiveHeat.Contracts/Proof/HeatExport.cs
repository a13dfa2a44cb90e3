using System.Text.Json;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Proof;

/// <summary>A heat as a file: all its ledger entries to the byte, and its certificates. Checked without a server.</summary>
/// <param name="Format">Names the shape: <see cref="CurrentFormat"/>.</param>
/// <param name="Epoch">The ledger's id.</param>
/// <param name="Heat">The heat.</param>
/// <param name="Entries">In sequence, from 1.</param>
/// <param name="Certificates">Oldest first; none while the heat is not certified.</param>
public sealed record HeatExport(string Format, string Epoch, HeatId Heat, Items<ExportedEntry> Entries, Items<SignedCertificate> Certificates)
{
    /// <summary>This version of the shape.</summary>
    public const string CurrentFormat = "relay-heat/1";
}

/// <summary>One ledger entry with its place in the hash chain.</summary>
/// <param name="Sequence">From 1 without gaps.</param>
/// <param name="Id">The fact's own id.</param>
/// <param name="Sender">The sign-in it came from.</param>
/// <param name="ReceivedAt">When the server had it.</param>
/// <param name="BodyHash">SHA-256 of what the sender sent, hex.</param>
/// <param name="Body">The fact as stored: a text, so that every byte is covered.</param>
/// <param name="PreviousHash">The hash of the entry before.</param>
/// <param name="Hash">This entry's hash.</param>
public sealed record ExportedEntry(
    long Sequence, FactId Id, string Sender, Instant ReceivedAt, string BodyHash, string Body, string PreviousHash, string Hash);

/// <summary>What a certificate states. Signed as canonical JSON (RFC 8785).</summary>
/// <param name="Heat">The heat.</param>
/// <param name="Revision">From 1; a reopened heat gets a new one.</param>
/// <param name="Count">How many ledger entries it covers.</param>
/// <param name="HeadHash">The hash of the last of them.</param>
/// <param name="Result">The result table.</param>
/// <param name="PreviousCertificate">SHA-256 of the certificate before, as canonical JSON, hex; null for the first.</param>
/// <param name="Key">The signing key's fingerprint.</param>
public sealed record CertificateStatement(
    HeatId Heat, int Revision, long Count, string HeadHash, Results.ResultTable Result, string? PreviousCertificate, string Key);

/// <summary>A certificate with its signature.</summary>
/// <param name="Statement">What is stated, as JSON.</param>
/// <param name="Signature">ECDSA P-256 with SHA-256 over the statement's canonical JSON, DER, base64.</param>
/// <param name="PublicKey">The signer's key, SubjectPublicKeyInfo, base64.</param>
public sealed record SignedCertificate(JsonElement Statement, string Signature, string PublicKey);
