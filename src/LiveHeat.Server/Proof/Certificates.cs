using System.Security.Cryptography;
using System.Text.Json;
using LiveHeat.Contracts.Proof;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Integrity;
using LiveHeat.Ledger.Facts;
using LiveHeat.Ledger.Registry;
using LiveHeat.Server.Heats;

namespace LiveHeat.Server.Proof;

/// <summary>Signs certified heats, and gives a heat out as a file.</summary>
/// <remarks>A certificate that is missing although the heat is certified (the process died in between) is made when it is next asked for.</remarks>
internal sealed class Certificates(HeatLedger ledger, HeatRegistry registry, SigningKey key) : IDisposable
{
    private readonly SemaphoreSlim turn = new(1, 1);

    /// <summary>The signing key's fingerprint.</summary>
    public string Fingerprint => key.Fingerprint;

    /// <summary>All certificates of a heat, oldest first; the newest is made if it is missing.</summary>
    public async Task<Items<SignedCertificate>> Of(HeatSession session, CancellationToken cancellation)
    {
        await turn.WaitAsync(cancellation);
        try
        {
            var state = session.State;
            var made = new List<SignedCertificate>();
            for (var revision = 1; revision <= state.Revision; revision++)
            {
                if (await registry.Settings.Get(Name(session.Heat, revision), cancellation) is { } stored)
                {
                    made.Add(JsonSerializer.Deserialize<SignedCertificate>(stored, WireJson.Options)!);
                }
                else if (revision == state.Revision && state.Told == Phase.Certified && session.BrokenAt is null)
                {
                    var certificate = Sign(session, state, made.LastOrDefault());
                    await registry.Settings.Put(Name(session.Heat, revision), JsonSerializer.Serialize(certificate, WireJson.Options), cancellation);
                    made.Add(certificate);
                }
            }

            return made.ToItems();
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>The heat as a file.</summary>
    public async Task<HeatExport> Export(HeatSession session, CancellationToken cancellation)
    {
        var certificates = await Of(session, cancellation);
        var lines = await ledger.Read(session.Heat, 0, cancellation);
        return new HeatExport(
            HeatExport.CurrentFormat, ledger.Epoch, session.Heat,
            lines.Select(line => new ExportedEntry(
                line.Sequence, line.Id, line.Sender, line.ReceivedAt, line.BodyHash, line.Body, line.PreviousHash, line.Hash)).ToItems(),
            certificates);
    }

    /// <inheritdoc/>
    public void Dispose() => turn.Dispose();

    /// <summary>The statement over the entries up to the second signature: what comes after it is not covered.</summary>
    private SignedCertificate Sign(HeatSession session, HeatState state, SignedCertificate? before)
    {
        var count = state.Entries.Last(entry => entry.Fact is HeatFact.Certified).Sequence;
        var covered = HeatState.Fold(session.Heat, state.Entries.Where(entry => entry.Sequence <= count));
        var headHash = session.HashAt(count);
        var statement = new CertificateStatement(
            session.Heat, state.Revision, count, headHash, ResultMaking.Signed(covered, headHash, covered.Entries[^1].ReceivedAt)!,
            before is null ? null : Convert.ToHexStringLower(SHA256.HashData(CanonicalJson.Bytes(before.Statement))), key.Fingerprint);
        var json = JsonSerializer.SerializeToElement(statement, WireJson.Options);
        return new SignedCertificate(json, Convert.ToBase64String(key.Sign(CanonicalJson.Bytes(json))), Convert.ToBase64String(key.PublicKey));
    }

    private static string Name(HeatId heat, int revision) => $"certificate/{heat}/{revision}";
}
