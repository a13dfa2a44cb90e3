using System.Globalization;
using System.Runtime.InteropServices;

namespace LiveHeat.Browser.Crash;

/// <summary>All processes of one browser, known by the folder it keeps its things in.</summary>
internal static class BrowserProcesses
{
    private const int Sigkill = 9;

    /// <summary>Those that run now, the browser itself first.</summary>
    public static IReadOnlyList<int> Of(string profile)
    {
        var all = Directory.EnumerateDirectories("/proc")
            .Select(path => int.TryParse(Path.GetFileName(path), NumberStyles.None, CultureInfo.InvariantCulture, out var id) ? id : 0)
            .Where(id => id > 0)
            .Select(id => (Id: id, Parent: Parent(id), Words: Read(id, "cmdline")))
            .ToList();
        var found = all.Where(process => process.Words.Contains($"--user-data-dir={profile}", StringComparison.Ordinal))
            .OrderBy(process => process.Words.Contains("--type=", StringComparison.Ordinal)).Select(process => process.Id).ToList();
        Assert.NotEmpty(found);
        for (var i = 0; i < found.Count; i++)
        {
            found.AddRange(all.Where(process => process.Parent == found[i] && !found.Contains(process.Id)).Select(process => process.Id).ToList());
        }

        return found;
    }

    /// <summary>SIGKILL for all of them: no goodbye, nothing flushed.</summary>
    public static void Kill(IReadOnlyList<int> processes)
    {
        foreach (var id in processes)
        {
            _ = Signal(id, Sigkill);
        }
    }

    /// <summary>Waits until the last of them is gone, so that another browser may have the folder.</summary>
    public static async Task Gone(IReadOnlyList<int> processes)
    {
        using var late = new CancellationTokenSource(TimeSpan.FromSeconds(30));
        while (processes.Any(id => Read(id, "stat") is { Length: > 0 } stat && After(stat)[0] != "Z"))
        {
            await Task.Delay(20, late.Token);
        }
    }

    private static int Parent(int id) => Read(id, "stat") is { Length: > 0 } stat ? int.Parse(After(stat)[1], CultureInfo.InvariantCulture) : 0;

    /// <summary>State and parent stand behind the name, which may hold anything but ends with the last bracket (proc(5), from memory).</summary>
    private static string[] After(string stat) => stat[(stat.LastIndexOf(')') + 2)..].Split(' ');

    private static string Read(int id, string file)
    {
        try
        {
            return File.ReadAllText($"/proc/{id}/{file}");
        }
        catch (IOException)
        {
            return "";      // it ended meanwhile
        }
    }

    [DllImport("libc", EntryPoint = "kill")]
    private static extern int Signal(int process, int signal);
}
