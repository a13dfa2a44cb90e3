namespace LiveHeat.Ledger.Registry;

public class SetupTests : RegistryTest
{
    private Setup Setup => Registry.Setup;

    [Fact]
    public async Task A_document_is_read_back_and_counts_its_versions()
    {
        Assert.Null(await Setup.Get(SetupKind.Team, "t1", Go));
        var first = await Setup.Put(SetupKind.Team, "t1", """{"name":"Harbour Anvils"}""", Go);
        Assert.Equal(new SetupDocument("team", "t1", """{"name":"Harbour Anvils"}""", 1), first);
        var second = await Setup.Put(SetupKind.Team, "t1", """{"name":"Tidal Anvils"}""", Go);
        Assert.Equal(2, second.Version);

        await Reopen();
        Assert.Equal(second, await Setup.Get(SetupKind.Team, "t1", Go));
    }

    [Fact]
    public async Task Lists_are_by_kind_and_in_order()
    {
        await Setup.Put(SetupKind.Team, "b", "{}", Go);
        await Setup.Put(SetupKind.Heat, "a", "{}", Go);
        await Setup.Put(SetupKind.Team, "a", "{}", Go);
        Assert.Equal(["a", "b"], (await Setup.List(SetupKind.Team, Go)).Select(d => d.Id));
        Assert.Equal(["heat a", "team a", "team b"], (await Setup.List(Go)).Select(d => $"{d.Kind} {d.Id}"));
        Assert.Empty(await Setup.List(SetupKind.Workout, Go));
    }

    [Fact]
    public async Task What_was_deleted_is_gone_and_its_versions_go_on_when_it_returns()
    {
        Assert.False(await Setup.Delete(SetupKind.Team, "t1", Go));
        await Setup.Put(SetupKind.Team, "t1", "{}", Go);
        Assert.True(await Setup.Delete(SetupKind.Team, "t1", Go));
        Assert.False(await Setup.Delete(SetupKind.Team, "t1", Go));
        Assert.Null(await Setup.Get(SetupKind.Team, "t1", Go));
        Assert.Empty(await Setup.List(Go));

        // Else whoever holds version 1 would take the new document for the one it knows.
        Assert.Equal(3, (await Setup.Put(SetupKind.Team, "t1", "{}", Go)).Version);
    }

    [Fact]
    public async Task Many_are_taken_together_or_not_at_all()
    {
        await Setup.Put(SetupKind.Team, "t1", "{}", Go);
        await Assert.ThrowsAnyAsync<ArgumentException>(
            () => Setup.PutAll([(SetupKind.Team, "t1", "[]"), (SetupKind.Team, "t2", "[]"), (SetupKind.Team, "", "[]")], Go));
        Assert.Equal([new SetupDocument("team", "t1", "{}", 1)], await Setup.List(Go));

        var taken = await Setup.PutAll([(SetupKind.Team, "t1", "[]"), (SetupKind.Team, "t2", "[]")], Go);
        Assert.Equal([2L, 1L], taken.Select(d => d.Version));
        Assert.Equal(taken, await Setup.List(Go));
    }

    [Fact]
    public async Task The_same_document_twice_in_one_import_is_taken_in_order()
    {
        await Setup.PutAll([(SetupKind.Team, "t1", "1"), (SetupKind.Team, "t1", "2")], Go);
        Assert.Equal(new SetupDocument("team", "t1", "2", 2), await Setup.Get(SetupKind.Team, "t1", Go));
    }

    [Fact]
    public async Task A_hundred_at_once_lose_no_version()
    {
        await Task.WhenAll(Enumerable.Range(0, 100).Select(n => Task.Run(() => Setup.Put(SetupKind.Heat, $"h{n % 4}", $"{n}", Go))));
        Assert.Equal([25L, 25L, 25L, 25L], (await Setup.List(Go)).Select(d => d.Version));
    }
}
