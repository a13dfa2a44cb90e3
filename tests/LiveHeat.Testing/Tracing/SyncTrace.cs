using System.Text.RegularExpressions;

namespace LiveHeat.Testing.Tracing;

/// <summary>
/// What a process asked of its disk and told others, in the order it happened, as <c>strace</c> saw it: tells whether the ledger's log was
/// synchronised between the writing of a fact and its acknowledgement. A kill cannot tell that: what was written survives the process, not the power.
/// </summary>
public sealed partial class SyncTrace
{
    /// <summary>Characters of each write that are kept: a page of the log has 4,096 bytes, an escaped one more.</summary>
    private const string Kept = "8192";

    private readonly List<Call> writes = [];
    private readonly List<Call> syncs = [];
    private readonly List<Call> told = [];

    private SyncTrace(IEnumerable<Call> calls)
    {
        foreach (var call in calls)
        {
            (call switch
            {
                { Name: "fsync" or "fdatasync" } => call.OnLog && call.Done ? syncs : null,
                { OnLog: true } => writes,
                _ => call.ToOthers ? told : null,
            })?.Add(call);
        }
    }

    /// <summary>The words before a program's own that trace it into a file.</summary>
    public static string[] Before(string file) => File.Exists("/usr/bin/strace")
        ? ["strace", "-f", "--seccomp-bpf", "-y", "-s", Kept, "-e", "signal=none", "-e", "trace=write,writev,pwrite64,pwritev,sendto,sendmsg,fsync,fdatasync", "-o", file]
        : throw new InvalidOperationException("There is no strace here. Install it (Debian: apt-get install strace): without it nobody sees whether the disk was synchronised.");

    /// <summary>Reads what was traced so far.</summary>
    public static SyncTrace Read(string file)
    {
        using var lines = new StreamReader(new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite));
        return new SyncTrace(Calls(lines));
    }

    /// <summary>Null when the log was synchronised after this fact was written and before anybody was told; otherwise what was wrong.</summary>
    /// <param name="id">The fact's id, as it stands in its body and in its receipt.</param>
    public string? WhyNotSafe(string id)
    {
        var quoted = id + "\\\"";      // as strace writes the id and the quotation mark behind it: "….1" is not "….17"
        if (told.Find(call => call.Text.Contains(quoted, StringComparison.Ordinal)) is not { } answer)
        {
            return $"{id} was acknowledged to nobody";
        }

        if (writes.Find(call => call.Text.Contains(quoted, StringComparison.Ordinal)) is not { } write || write.Began > answer.Began)
        {
            return $"{id} was acknowledged before it was written";
        }

        return syncs.Exists(sync => sync.Began > write.Ended && sync.Ended < answer.Began) ? null : $"{id} was acknowledged before the file was synchronised";
    }

    private static IEnumerable<Call> Calls(StreamReader lines)
    {
        var unfinished = new Dictionary<string, Call>();
        for (var at = 0; lines.ReadLine() is { } line; at++)
        {
            if (Resumed().Match(line) is { Success: true } end)
            {
                if (unfinished.Remove(end.Groups["thread"].Value, out var begun))
                {
                    yield return begun with { Ended = at, Text = begun.Text + end.Groups["rest"].Value };
                }
            }
            else if (Begun().Match(line) is { Success: true } begin)
            {
                var call = new Call(begin.Groups["name"].Value, begin.Groups["rest"].Value, at, at);
                if (call.Text.EndsWith("<unfinished ...>", StringComparison.Ordinal))
                {
                    unfinished[begin.Groups["thread"].Value] = call;
                }
                else
                {
                    yield return call;
                }
            }
        }
    }

    [GeneratedRegex(@"^(?<thread>\d+)\s+(?<name>\w+)\((?<rest>.*)$", RegexOptions.Singleline)]
    private static partial Regex Begun();

    [GeneratedRegex(@"^(?<thread>\d+)\s+<\.\.\. \w+ resumed>(?<rest>.*)$", RegexOptions.Singleline)]
    private static partial Regex Resumed();

    /// <param name="Name">The system call.</param>
    /// <param name="Text">Its arguments and result.</param>
    /// <param name="Began">The line at which it was asked.</param>
    /// <param name="Ended">The line at which it was answered.</param>
    private sealed record Call(string Name, string Text, int Began, int Ended)
    {
        /// <summary>On SQLite's write-ahead log.</summary>
        public bool OnLog => On().EndsWith("-wal", StringComparison.Ordinal);

        /// <summary>To a connection, or to whoever reads the standard output.</summary>
        public bool ToOthers => Name.StartsWith("send", StringComparison.Ordinal) || On().StartsWith("pipe:", StringComparison.Ordinal) || On().StartsWith("socket:", StringComparison.Ordinal);

        public bool Done => Text.TrimEnd().EndsWith("= 0", StringComparison.Ordinal);

        /// <summary>What the first argument stands for: <c>13&lt;/data/ledger.db-wal&gt;</c>.</summary>
        private string On() => Text.IndexOf('<') is >= 0 and var from && Text.IndexOf('>', from) is >= 0 and var to ? Text[(from + 1)..to] : "";
    }
}
