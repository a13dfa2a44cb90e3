using Microsoft.EntityFrameworkCore;

namespace LiveHeat.Ledger.Registry;

public class RegistryFileTests : RegistryTest
{
    [Fact]
    public async Task A_disk_that_refuses_is_told_and_changes_nothing()
    {
        await Registry.Setup.Put(SetupKind.Team, "t1", "{}", Go);
        await Registry.File.Write(context => context.Database.ExecuteSqlRaw("PRAGMA query_only = 1"), Go);

        var refused = await Assert.ThrowsAsync<RegistryUnavailable>(() => Registry.Setup.Put(SetupKind.Team, "t1", "[]", Go));
        Assert.Contains("Nothing was changed", refused.Message, StringComparison.Ordinal);
        Assert.Equal([new SetupDocument("team", "t1", "{}", 1)], await Registry.Setup.List(Go));

        // The switch was the failed connection's own: the next write goes through.
        Assert.Equal(2, (await Registry.Setup.Put(SetupKind.Team, "t1", "[]", Go)).Version);
    }

    [Fact]
    public async Task Work_that_fails_half_way_leaves_nothing()
    {
        await Assert.ThrowsAsync<InvalidOperationException>(() => Registry.File.Write<bool>(
            context =>
            {
                context.Settings.Add(new SettingRow { Key = "half", Value = "done" });
                context.SaveChanges();
                throw new InvalidOperationException("Half way.");
            },
            Go));
        Assert.Null(await Registry.Settings.Get("half", Go));
    }
}
