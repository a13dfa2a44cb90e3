using System.Diagnostics;
using System.Text.Json;
using System.Text.Json.Nodes;
using LiveHeat.Contracts.Proof;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Integrity;
using LiveHeat.Testing.Hosting;
using Microsoft.Data.Sqlite;

namespace LiveHeat.Server.Proof;

public sealed class CertificateTests
{
    [Fact]
    public async Task A_certified_heat_is_sound_and_names_its_signer()
    {
        await using var floor = await TestFloor.Open();
        var (export, key) = await Certified(floor);

        Assert.True(Verification.Check(export, key).Sound);
        Assert.Contains("signer unknown", string.Join('\n', Verification.Check(export, null).Lines), StringComparison.Ordinal);
        var stranger = Verification.Check(export, new string('0', 64));
        Assert.False(stranger.Sound);
        Assert.Contains("signed by another key", string.Join('\n', stranger.Lines), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_changed_entry_is_named()
    {
        await using var floor = await TestFloor.Open();
        var (export, key) = await Certified(floor);
        var changed = JsonNode.Parse(export)!;
        var body = changed["entries"]![3]!["body"]!.GetValue<string>();
        changed["entries"]![3]!["body"] = body.Replace(":1", ":2", StringComparison.Ordinal);

        var report = Verification.Check(changed.ToJsonString(), key);

        Assert.False(report.Sound);
        Assert.StartsWith("Entry 4 does not fit", report.Lines[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_end_that_was_cut_off_is_found()
    {
        await using var floor = await TestFloor.Open();
        var (export, key) = await Certified(floor);
        var cut = JsonNode.Parse(export)!;
        var entries = cut["entries"]!.AsArray();
        entries.RemoveAt(entries.Count - 1);

        var report = Verification.Check(cut.ToJsonString(), key);

        Assert.False(report.Sound);
        Assert.Contains(report.Lines, line => line.Contains("its end was cut off", StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_export_signed_again_by_somebody_else_is_found()
    {
        await using var floor = await TestFloor.Open();
        var (export, key) = await Certified(floor);
        var folder = Directory.CreateTempSubdirectory("forger-").FullName;
        using var forger = SigningKey.Open(Path.Combine(folder, "key.pem"));
        var forged = JsonNode.Parse(export)!;
        var statement = forged["certificates"]![0]!["statement"]!;
        statement["key"] = forger.Fingerprint;
        forged["certificates"]![0]!["signature"] = Convert.ToBase64String(forger.Sign(CanonicalJson.Bytes(statement)));
        forged["certificates"]![0]!["publicKey"] = Convert.ToBase64String(forger.PublicKey);

        Assert.False(Verification.Check(forged.ToJsonString(), key).Sound);
        Assert.Contains("signer unknown", string.Join('\n', Verification.Check(forged.ToJsonString(), null).Lines), StringComparison.Ordinal);
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task A_result_that_does_not_follow_from_the_entries_is_found()
    {
        await using var floor = await TestFloor.Open();
        var (export, key) = await Certified(floor);
        var changed = JsonNode.Parse(export)!;
        changed["certificates"]![0]!["statement"]!["result"]!["title"] = "Another heat";

        var report = Verification.Check(changed.ToJsonString(), key);

        Assert.False(report.Sound);
        Assert.Contains(report.Lines, line => line.Contains("does not fit what it states", StringComparison.Ordinal));
        Assert.Contains(report.Lines, line => line.Contains("does not follow from the entries", StringComparison.Ordinal));
    }

    /// <summary>The outside check: ECDSA P-256 with SHA-256 as openssl reads it (FIPS 186-5).</summary>
    [Fact]
    public async Task Openssl_accepts_the_same_signature()
    {
        await using var floor = await TestFloor.Open();
        var (export, _) = await Certified(floor);
        var certificate = JsonSerializer.Deserialize<HeatExport>(export, WireJson.Options)!.Certificates[0];
        var folder = Directory.CreateTempSubdirectory("openssl-").FullName;
        await File.WriteAllBytesAsync(Path.Combine(folder, "statement"), CanonicalJson.Bytes(certificate.Statement));
        await File.WriteAllBytesAsync(Path.Combine(folder, "signature"), Convert.FromBase64String(certificate.Signature));
        await File.WriteAllTextAsync(
            Path.Combine(folder, "key.pem"), $"-----BEGIN PUBLIC KEY-----\n{Convert.ToBase64String(Convert.FromBase64String(certificate.PublicKey), Base64FormattingOptions.InsertLineBreaks)}\n-----END PUBLIC KEY-----\n");

        Assert.Equal(0, await Openssl(folder));
        await File.AppendAllTextAsync(Path.Combine(folder, "statement"), " ");
        Assert.NotEqual(0, await Openssl(folder));
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task One_changed_byte_on_the_disk_is_told_and_the_heat_cannot_be_frozen()
    {
        var folder = Directory.CreateTempSubdirectory("changed-").FullName;
        var floor = await TestFloor.Open(folder);
        var heat = await floor.Run();
        await heat.Do(floor.Organiser, "end");
        await floor.App.DisposeAsync();
        await using (var file = new SqliteConnection($"Data Source={Path.Combine(folder, "ledger.db")};Pooling=False"))
        {
            await file.OpenAsync();
            await using var change = file.CreateCommand();
            // Somebody who can write the file can also take its guard away.
            change.CommandText = "DROP TRIGGER facts_never_change; UPDATE facts SET body = replace(body, 'Ann', 'Amn') WHERE sequence = 1";
            Assert.Equal(1, await change.ExecuteNonQueryAsync());
        }

        var again = await floor.Restart();
        var frozen = await again.Organiser.Post("/api/heats/h1/commands", new { id = again.Organiser.NewId(), command = "freeze", head = 99 });

        Assert.Equal(409, frozen.Status);
        Assert.Equal("ledger-broken", frozen.Code);
        Assert.Contains("Entry 1", frozen.Detail, StringComparison.Ordinal);
        Assert.Contains("Entry 1", (await again.Organiser.Get("/result/h1")).Text, StringComparison.Ordinal);
        await again.DisposeAsync();
    }

    private static async Task<(string Export, string Key)> Certified(TestFloor floor)
    {
        var heat = await floor.Run();
        await heat.Do(floor.Organiser, "end");
        var head = (await floor.Organiser.Get("/api/heats/h1/frame")).Json.GetProperty("sequence").GetInt64();
        (await floor.Organiser.Post("/api/heats/h1/commands", new { id = floor.Organiser.NewId(), command = "freeze", head })).Fine();
        foreach (var signer in new[] { floor.Organiser, floor.HeadJudge })
        {
            var signedHead = (await signer.Get("/api/heats/h1/frame")).Json.GetProperty("signedHead").GetInt64();
            (await signer.Post("/api/heats/h1/commands", new { id = signer.NewId(), command = "certify", head = signedHead })).Fine();
        }

        var export = (await floor.HeadJudge.Get("/api/heats/h1/export")).Fine().Text;
        return (export, JsonNode.Parse(export)!["certificates"]![0]!["statement"]!["key"]!.GetValue<string>());
    }

    private static async Task<int> Openssl(string folder)
    {
        using var process = Process.Start(new ProcessStartInfo(
            "openssl", ["dgst", "-sha256", "-verify", "key.pem", "-signature", "signature", "statement"])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        await process.WaitForExitAsync();
        return process.ExitCode;
    }
}
