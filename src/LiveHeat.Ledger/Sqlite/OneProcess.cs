namespace LiveHeat.Ledger.Sqlite;

/// <summary>Keeps a second process from a database file, with an operating-system lock on a file beside it.</summary>
/// <remarks>
/// The system lets go of the lock when the process ends, however it ends. The lock file itself stays: deleting it would let two
/// processes hold two files of the same name.
/// </remarks>
internal sealed class OneProcess : IDisposable
{
    private readonly FileStream held;

    private OneProcess(FileStream held) => this.held = held;

    internal static OneProcess Take(string databasePath)
    {
        try
        {
            return new(new FileStream(databasePath + ".lock", FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None));
        }
        catch (IOException e) when (e is not (DirectoryNotFoundException or FileNotFoundException or PathTooLongException))
        {
            throw new FileInUse(databasePath, e);
        }
    }

    public void Dispose() => held.Dispose();
}

/// <summary>Another process has the file open. Two servers over one file would each believe in their own state.</summary>
public sealed class FileInUse : IOException
{
    internal FileInUse(string path, Exception cause)
        : base($"{path} is in use by another LiveHeat server on this machine. Stop that one first, or give this one another data folder.", cause)
    {
    }
}
