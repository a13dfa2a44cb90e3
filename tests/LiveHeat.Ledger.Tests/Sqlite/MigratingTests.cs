using LiveHeat.Ledger.Facts;
using LiveHeat.Ledger.Registry;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging.Abstractions;

namespace LiveHeat.Ledger.Sqlite;

public sealed class MigratingTests : IDisposable
{
    // As EF Core 10 writes it before it migrates, and as a killed process leaves it.
    private const string AbandonedLock = """
        CREATE TABLE "__EFMigrationsLock" ("Id" INTEGER NOT NULL CONSTRAINT "PK___EFMigrationsLock" PRIMARY KEY, "Timestamp" TEXT NOT NULL);
        INSERT INTO "__EFMigrationsLock" VALUES (1, '2026-11-25 14:02:10');
        """;

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_migrations_of_the_ledger_make_the_tables_of_its_model()
    {
        using var context = new LedgerContext(SqliteFile.Options<LedgerContext>("Data Source=:memory:"));
        Assert.NotEmpty(context.Database.GetMigrations());
        Assert.False(context.Database.HasPendingModelChanges());
    }

    [Fact]
    public void The_migrations_of_the_registry_make_the_tables_of_its_model()
    {
        using var context = new RegistryContext(SqliteFile.Options<RegistryContext>("Data Source=:memory:"));
        Assert.NotEmpty(context.Database.GetMigrations());
        Assert.False(context.Database.HasPendingModelChanges());
    }

    [Fact]
    public async Task A_ledger_whose_first_start_was_killed_opens()
    {
        var path = folder.File("ledger.db");
        Execute(path, AbandonedLock);
        await using var ledger = await HeatLedger.Open(path, TimeProvider.System, NullLogger.Instance, CancellationToken.None).WaitAsync(TimeSpan.FromSeconds(30));
        Assert.IsType<Append.Done>(await ledger.TryAppend(Some.Heat1, 0, [Some.Line(1)], CancellationToken.None));
    }

    [Fact]
    public async Task A_registry_whose_first_start_was_killed_opens()
    {
        var path = folder.File("registry.db");
        Execute(path, AbandonedLock);
        await using var registry = await HeatRegistry.Open(path, TimeProvider.System, CancellationToken.None).WaitAsync(TimeSpan.FromSeconds(30));
        Assert.Empty(await registry.Setup.List(CancellationToken.None));
    }

    [Fact]
    public async Task A_file_of_a_newer_version_is_refused_untouched()
    {
        var path = folder.File("ledger.db");
        await (await HeatLedger.Open(path, TimeProvider.System, NullLogger.Instance, CancellationToken.None)).DisposeAsync();
        Execute(path, "INSERT INTO \"__EFMigrationsHistory\" VALUES ('29991231000000_FromLater', '99.0.0')");
        var refused = await Assert.ThrowsAsync<MadeByNewerVersion>(
            () => HeatLedger.Open(path, TimeProvider.System, NullLogger.Instance, CancellationToken.None));
        Assert.Contains("29991231000000_FromLater", refused.Message, StringComparison.Ordinal);
    }

    private static void Execute(string path, string sql)
    {
        using var connection = new SqliteConnection(SqliteFile.ForMaking(path));
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
