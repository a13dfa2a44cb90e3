namespace LiveHeat.Ledger.Registry;

public class SettingsTests : RegistryTest
{
    [Fact]
    public async Task A_choice_is_kept_changed_and_taken_back()
    {
        Assert.Null(await Registry.Settings.Get("board-pin", Go));
        await Registry.Settings.Put("board-pin", null, Go);
        await Registry.Settings.Put("board-pin", "h1", Go);
        await Registry.Settings.Put("board-pin", "h2", Go);
        await Reopen();
        Assert.Equal("h2", await Registry.Settings.Get("board-pin", Go));
        await Registry.Settings.Put("board-pin", null, Go);
        Assert.Null(await Registry.Settings.Get("board-pin", Go));
    }
}
