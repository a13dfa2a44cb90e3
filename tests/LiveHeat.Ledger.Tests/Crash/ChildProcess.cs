using System.Diagnostics;
using System.Runtime.InteropServices;
using LiveHeat.Engine.Heats;
using LiveHeat.Ledger.Facts;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging.Abstractions;

namespace LiveHeat.Ledger.Crash;

/// <summary>This assembly as a program: a process that holds a ledger and can be killed.</summary>
/// <remarks>
/// <c>append FILE NAME LINES</c> appends and prints each line once it is acknowledged; after so many lines it kills itself, which is
/// sooner after the acknowledgement than anybody else could. <c>acknowledge FILE LINES full|off</c> appends so many lines, each in a commit of
/// its own, and prints the id of each, in quotation marks; <c>off</c> leaves out the disk's synchronisation, as no server may.
/// <c>open FILE</c> opens it and waits for the end of its input.
/// </remarks>
public static class ChildProcess
{
    private const int Heats = 3;
    private const int WritersPerHeat = 4;

    private const int Sigkill = 9;

    private static int printed;

    public static async Task<int> Main(string[] arguments)
    {
        try
        {
            await using var ledger = await HeatLedger.Open(arguments[1], TimeProvider.System, NullLogger.Instance, CancellationToken.None);
            Console.WriteLine("open");
            _ = Signal(Environment.ProcessId, 0);   // bound and compiled now, so that the real one takes microseconds
            if (arguments[0] == "append")
            {
                await Task.WhenAll(Enumerable.Range(0, Heats * WritersPerHeat).Select(n => AppendForEver(ledger, n, arguments[2], int.Parse(arguments[3]))));
            }
            else if (arguments[0] == "acknowledge")
            {
                await Acknowledge(ledger, int.Parse(arguments[2]), arguments[3]);
            }
            else
            {
                await Console.In.ReadToEndAsync();
            }

            return 0;
        }
        catch (IOException e)
        {
            Console.WriteLine(e.Message);
            return 1;
        }
    }

    /// <summary>Starts it in a process of its own.</summary>
    internal static Process Start(params string[] arguments) => Start([], arguments);

    /// <param name="before">A program that starts it, such as a tracer.</param>
    /// <param name="arguments">See above.</param>
    internal static Process Start(string[] before, params string[] arguments)
    {
        string[] words = [.. before, Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet", "exec", typeof(ChildProcess).Assembly.Location, .. arguments];
        var start = new ProcessStartInfo(words[0]) { RedirectStandardInput = true, RedirectStandardOutput = true };
        foreach (var word in words[1..])
        {
            start.ArgumentList.Add(word);
        }

        return Process.Start(start)!;
    }

    // Process.Kill takes milliseconds on its first call, long enough for a commit that should have come before.
    [DllImport("libc", EntryPoint = "kill")]
    private static extern int Signal(int process, int signal);

    private static async Task Acknowledge(HeatLedger ledger, int lines, string synchronous)
    {
        // Not within a transaction: there SQLite leaves the setting as it is.
        var setting = synchronous == "off" ? "COMMIT; PRAGMA synchronous = OFF; BEGIN IMMEDIATE" : "COMMIT; PRAGMA synchronous = FULL; BEGIN IMMEDIATE";
        await ledger.OnWriter(context => context.Database.ExecuteSqlRaw(setting));
        for (var counter = 1; counter <= lines; counter++)
        {
            var id = new FactId(Some.Outbox("traced"), counter);
            await ledger.TryAppend(Some.Heat1, counter - 1, [Some.Line(counter, "traced", $$"""{"fact":"no-rep","id":"{{id}}"}""")], CancellationToken.None);
            Console.WriteLine($"\"{id}\"");
        }
    }

    private static async Task AppendForEver(HeatLedger ledger, int writer, string name, int killAfter)
    {
        var heat = new HeatId($"h{writer % Heats}");
        var after = 0L;
        for (var counter = 1; ;)
        {
            switch (await ledger.TryAppend(heat, after, Some.Lines(counter, 1 + (counter % 3), $"{name} {writer}"), CancellationToken.None))
            {
                case Append.Done done:
                    foreach (var line in done.Lines)
                    {
                        Console.WriteLine($"{line.Heat} {line.Sequence} {line.Id} {line.Hash}");
                        if (Interlocked.Increment(ref printed) == killAfter)
                        {
                            _ = Signal(Environment.ProcessId, Sigkill);   // nothing is flushed, closed or finished
                        }
                    }

                    counter += done.Lines.Count;
                    after = done.Lines[^1].Sequence;
                    break;
                case Append.Behind behind:
                    after = behind.Head;
                    break;
                case var other:
                    throw new InvalidOperationException($"{other}");
            }
        }
    }
}
