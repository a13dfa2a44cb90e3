namespace LiveHeat.Screens.Setup;

public sealed class SetupIdTests
{
    [Theory]
    [InlineData("Blechflöten Süd", "blechfloeten-sued")]
    [InlineData("Les Équipières", "les-equipieres")]
    [InlineData("Żółte Łódki", "zolte-lodki")]
    [InlineData("Þór & Æsir", "thor-aesir")]
    [InlineData("  Moss & Iron!  ", "moss-iron")]
    [InlineData("فريق", "team")]
    public void An_id_is_made_of_the_plain_letters_of_a_name(string name, string id) => Assert.Equal(id, SetupId.For(name, [], "team"));

    [Fact]
    public void An_id_that_is_taken_gets_a_number() => Assert.Equal("moss-3", SetupId.For("Moss", ["moss", "moss-2"], "team"));
}
