using LiveHeat.Server.Proof;

namespace LiveHeat.Server.Hosting;

/// <summary>The command that checks an exported heat.</summary>
internal static class Verify
{
    /// <summary>0 when all fits, 1 when something does not, 2 when the command is not understood.</summary>
    public static async Task<int> Run(string[] args)
    {
        var (file, key) = args switch
        {
            [var only] => (only, (string?)null),
            [var first, "--key", var fingerprint] => (first, fingerprint),
            ["--key", var fingerprint, var last] => (last, fingerprint),
            _ => (null, null),
        };
        if (file is null || !File.Exists(file))
        {
            await Console.Error.WriteLineAsync(file is null ? "Name the file: verify FILE [--key FINGERPRINT]" : $"There is no file {file}.");
            return 2;
        }

        var report = Verification.Check(await File.ReadAllTextAsync(file), key);
        foreach (var line in report.Lines)
        {
            Console.WriteLine(line);
        }

        Console.WriteLine(report.Sound ? "All fits." : "NOT SOUND: see above.");
        return report.Sound ? 0 : 1;
    }
}
