namespace LiveHeat.Server.Hosting;

/// <summary>How the hub is started.</summary>
/// <param name="Data">The folder of ledger and registry.</param>
/// <param name="Urls">Where it listens.</param>
/// <param name="Speed">Times as fast as real time; 1 but in a rehearsal.</param>
/// <param name="Quiet">Only warnings on the console.</param>
internal sealed record ServeOptions(string Data, string Urls, double Speed = 1, bool Quiet = false)
{
    /// <summary>Where it listens when nobody says otherwise: on this machine only.</summary>
    public const string DefaultUrls = "http://localhost:5280";

    /// <summary>The ledger's file.</summary>
    public string LedgerFile => Path.Combine(Data, "ledger.db");

    /// <summary>The competition's signing key: not for the backups.</summary>
    public string KeyFile => Path.Combine(Data, "signing", "key.pem");

    /// <summary>The registry's file.</summary>
    public string RegistryFile => Path.Combine(Data, "registry.db");
}
