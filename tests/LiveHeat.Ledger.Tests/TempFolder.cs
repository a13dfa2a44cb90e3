namespace LiveHeat.Ledger;

/// <summary>A folder of its own for each test, on the disk where real files are.</summary>
public sealed class TempFolder : IDisposable
{
    private readonly string path = Directory.CreateTempSubdirectory("liveheat-").FullName;

    public string File(string name) => Path.Combine(path, name);

    public void Dispose() => Directory.Delete(path, recursive: true);
}
