using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Time.Testing;

namespace LiveHeat.Ledger.Registry;

/// <summary>A test with a registry on a real file.</summary>
public abstract class RegistryTest : IAsyncLifetime
{
    protected static readonly CancellationToken Go = CancellationToken.None;

    protected const long StartMs = 1_795_600_000_000;

    protected TempFolder Folder { get; } = new();

    protected FakeTimeProvider Time { get; } = new(DateTimeOffset.FromUnixTimeMilliseconds(StartMs));

    protected HeatRegistry Registry { get; private set; } = null!;

    public async Task InitializeAsync() => Registry = await Open();

    public async Task DisposeAsync()
    {
        await Registry.DisposeAsync();
        Folder.Dispose();
    }

    protected async Task Reopen()
    {
        await Registry.DisposeAsync();
        Registry = await Open();
    }

    /// <summary>Every text and every byte string that is in the file, as somebody who stole it would read them.</summary>
    protected async Task<List<string>> EverythingStored()
    {
        await Registry.DisposeAsync();
        var found = new List<string>();
        await using (var connection = new SqliteConnection($"Data Source={Folder.File("registry.db")};Pooling=False"))
        {
            await connection.OpenAsync();
            foreach (var table in await Texts(connection, "SELECT name FROM sqlite_master WHERE type = 'table'"))
            {
                found.AddRange(await Texts(connection, $"SELECT * FROM \"{table}\""));
            }
        }

        Registry = await Open();
        return found;
    }

    private Task<HeatRegistry> Open() => HeatRegistry.Open(Folder.File("registry.db"), Time, Go);

    private static async Task<List<string>> Texts(SqliteConnection connection, string sql)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = sql;
        await using var rows = await command.ExecuteReaderAsync();
        var texts = new List<string>();
        while (await rows.ReadAsync())
        {
            for (var i = 0; i < rows.FieldCount; i++)
            {
                texts.Add(rows.GetValue(i) switch
                {
                    byte[] bytes => System.Text.Encoding.Latin1.GetString(bytes) + Convert.ToHexString(bytes),
                    var value => value.ToString() ?? "",
                });
            }
        }

        return texts;
    }
}
