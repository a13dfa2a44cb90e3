using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace LiveHeat.Testing.Hosting.Faults;

/// <summary>The real server in a process of its own, on a folder of its own: it can be killed as a power cut would, and started again.</summary>
internal sealed class HubProcess : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private readonly int port = FreePort();
    private readonly List<string> said = [];
    private readonly string[] before;
    private Process? process;

    /// <param name="folder">Ledger and registry.</param>
    /// <param name="before">A program that starts it, such as a tracer; empty for none.</param>
    public HubProcess(string folder, params string[] before) => (Folder, this.before) = (folder, before);

    public string Folder { get; }

    public Uri Address => new($"http://127.0.0.1:{port}/");

    /// <summary>The organiser's passphrase, told at the first start.</summary>
    public string? Passphrase { get; private set; }

    /// <summary>Its number among the machine's processes.</summary>
    public int Id => process!.Id;

    /// <summary>Everything it printed.</summary>
    public string Said
    {
        get
        {
            lock (said)
            {
                return string.Join('\n', said);
            }
        }
    }

    /// <summary>Starts it and waits until it serves.</summary>
    public async Task Start(params string[] more)
    {
        var dll = Path.Combine(AppContext.BaseDirectory, "LiveHeat.Server.dll");
        string[] words = [.. before, "dotnet", "exec", dll, "serve", "--data", Folder, "--urls", Address.ToString().TrimEnd('/'), .. more];
        var start = new ProcessStartInfo(words[0]) { RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = Folder };
        foreach (var word in words[1..])
        {
            start.ArgumentList.Add(word);
        }

        process = Process.Start(start)!;
        process.OutputDataReceived += (_, line) => Hear(line.Data);
        process.ErrorDataReceived += (_, line) => Hear(line.Data);
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        await Serving();
    }

    /// <summary>SIGKILL: no goodbye, nothing flushed.</summary>
    public async Task Kill()
    {
        if (process is { HasExited: false })
        {
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync();
        }
    }

    public async ValueTask DisposeAsync()
    {
        await Kill();
        process?.Dispose();
    }

    private async Task Serving()
    {
        using var client = new HttpClient { BaseAddress = Address, Timeout = TimeSpan.FromSeconds(5) };
        var since = Stopwatch.GetTimestamp();
        while (Stopwatch.GetElapsedTime(since) < Patience)
        {
            if (process!.HasExited)
            {
                throw new InvalidOperationException($"The server ended with {process.ExitCode}:\n{Said}");
            }

            try
            {
                using var answer = await client.GetAsync("health");
                if (answer.IsSuccessStatusCode)
                {
                    return;
                }
            }
            catch (Exception notYet) when (notYet is HttpRequestException or OperationCanceledException)
            {
                // A process has no signal for "serving"; it is asked.
            }

            await Task.Delay(20);
        }

        throw new TimeoutException($"The server did not serve within {Patience}:\n{Said}");
    }

    private void Hear(string? line)
    {
        if (line is null)
        {
            return;
        }

        lock (said)
        {
            said.Add(line);
        }

        var word = line.Trim();
        if (word.Length == 23 && word.Count(c => c == '-') == 3)
        {
            Passphrase = word;
        }
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
