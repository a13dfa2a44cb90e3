using System.Diagnostics;
using System.Globalization;

namespace LiveHeat.Testing.Hosting.Faults;

/// <summary>
/// A disk that refuses: the system lets a process write no file any further (setrlimit's RLIMIT_FSIZE), so that every write fails with an error of the system
/// itself, and lets it again.
/// </summary>
internal static class RefusingDisk
{
    /// <summary>The words before the server's own: a refused write is an error to it, as on a full disk, and not a signal that ends it.</summary>
    public static readonly string[] Before = ["env", "--ignore-signal=XFSZ"];

    /// <summary>From now on every write is refused.</summary>
    public static Task Refuse(HubProcess hub) => Limit(hub, "0");

    /// <summary>It takes writes again.</summary>
    public static Task Accept(HubProcess hub) => Limit(hub, "unlimited");

    private static async Task Limit(HubProcess hub, string bytes)
    {
        // The soft limit only: the hard one stays, so that it can be lifted by anybody.
        using var prlimit = Process.Start("prlimit", ["--pid", hub.Id.ToString(CultureInfo.InvariantCulture), $"--fsize={bytes}:"])!;
        await prlimit.WaitForExitAsync();
        if (prlimit.ExitCode != 0)
        {
            throw new InvalidOperationException($"prlimit ended with {prlimit.ExitCode}.");
        }
    }
}
