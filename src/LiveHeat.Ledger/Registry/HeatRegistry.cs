namespace LiveHeat.Ledger.Registry;

/// <summary>What is set up and who may do what: all that is not a fact of a heat. A file of its own, so that an import never holds up a tap.</summary>
public sealed class HeatRegistry : IAsyncDisposable
{
    private readonly RegistryFile file;

    private HeatRegistry(RegistryFile file, JoinCodes joinCodes)
    {
        this.file = file;
        JoinCodes = joinCodes;
        Setup = new Setup(file);
        SignIns = new SignIns(file);
        Passphrase = new Passphrase(file);
        Settings = new Settings(file);
        Pictures = new Pictures(file);
    }

    /// <summary>Competition, divisions, workouts, teams, heats and the organiser's own movements.</summary>
    public Setup Setup { get; }

    /// <summary>Who is signed in, with what role.</summary>
    public SignIns SignIns { get; }

    /// <summary>The codes by which phones and screens join.</summary>
    public JoinCodes JoinCodes { get; }

    /// <summary>The organiser's way in.</summary>
    public Passphrase Passphrase { get; }

    /// <summary>Small choices by name: the heat pinned to the board and the like.</summary>
    public Settings Settings { get; }

    /// <summary>The pictures of movements.</summary>
    public Pictures Pictures { get; }

    internal RegistryFile File => file;

    /// <summary>Opens the registry in a file, which it makes when there is none.</summary>
    /// <exception cref="Sqlite.FileInUse">Another process has it open.</exception>
    /// <exception cref="Sqlite.NotDurable">The file system cannot keep what is committed.</exception>
    /// <exception cref="Sqlite.MadeByNewerVersion">The file is from a later version.</exception>
    /// <exception cref="Sqlite.FileDamaged">The file cannot be read.</exception>
    public static async Task<HeatRegistry> Open(string path, TimeProvider time, CancellationToken cancellation)
    {
        var file = await Task.Run(() => RegistryFile.Open(Path.GetFullPath(path), time), cancellation).ConfigureAwait(false);
        try
        {
            return new HeatRegistry(file, await JoinCodes.Open(file, cancellation).ConfigureAwait(false));
        }
        catch
        {
            await file.DisposeAsync().ConfigureAwait(false);
            throw;
        }
    }

    /// <summary>Lets the last write finish, closes the file and lets go of it.</summary>
    public async ValueTask DisposeAsync()
    {
        await file.DisposeAsync().ConfigureAwait(false);
        Passphrase.Dispose();
    }
}
