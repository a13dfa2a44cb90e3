using System.Globalization;
using LiveHeat.Contracts.Language;

namespace LiveHeat.Engine.Language;

/// <summary>Signs, places and plural forms are those of Unicode CLDR, from memory.</summary>
public sealed class NumbersTests
{
    [Theory]
    [InlineData("en", "12,345.5", "1st", "2nd", "11th", "7:02.4", "35%")]
    [InlineData("es", "12\u00a0345,5", "1.º", "2.º", "11.º", "7:02,4", "35\u00a0%")]
    [InlineData("fr", "12\u202f345,5", "1er", "2e", "11e", "7:02,4", "35\u00a0%")]
    [InlineData("de", "12.345,5", "1.", "2.", "11.", "7:02,4", "35\u00a0%")]
    [InlineData("pt-BR", "12,345.5", "1st", "2nd", "11th", "7:02.4", "35%")]
    public void Numbers_places_times_and_shares_are_written_as_the_language_does(string wish, string number, string first, string second, string eleventh, string time, string share)
    {
        Tongue.Speak(wish);
        Assert.Equal(
            [number, first, second, eleventh, time, share],
            [Numbers.Of(12345.5m), Numbers.Place(1), Numbers.Place(2), Numbers.Place(11), Numbers.Time(422_400), Numbers.Percent(0.35)]);
    }

    [Theory]
    [InlineData("en", 0, "other")]
    [InlineData("en", 1, "one")]
    [InlineData("es", 0, "other")]
    [InlineData("fr", 0, "one")]
    [InlineData("fr", 2, "other")]
    [InlineData("de", 1, "one")]
    public void A_count_has_its_plural_form(string language, int count, string form)
    {
        Tongue.Speak(language);
        Assert.Equal(form, Numbers.Form(count));
        Assert.Equal(form, Numbers.Form((decimal)count));
    }

    /// <summary>Unicode CLDR, plural rules (from memory): French has the singular up to below 2, the others only at 1 itself.</summary>
    [Theory]
    [InlineData("en", "other")]
    [InlineData("es", "other")]
    [InlineData("fr", "one")]
    [InlineData("de", "other")]
    public void One_and_a_half_is_singular_in_French_alone(string language, string form)
    {
        Tongue.Speak(language);
        Assert.Equal((form, "other"), (Numbers.Form(1.5m), Numbers.Form(2.5m)));
    }

    [Theory]
    [InlineData("en", "a, b and c")]
    [InlineData("es", "a, b y c")]
    [InlineData("fr", "a, b et c")]
    [InlineData("de-AT", "a, b und c")]
    public void Lists_are_joined_in_the_language(string language, string list)
    {
        Tongue.Speak(language);
        Assert.Equal((list, "a", ""), (Lists.And(["a", "b", "c"]), Lists.And(["a"]), Lists.And([])));
    }

    [Fact]
    public async Task A_language_holds_for_its_own_flow_of_work_only()
    {
        Tongue.Speak("en");
        await Task.Run(() => Tongue.Speak("fr"));
        Assert.Equal("en", Tongue.Current);
        Assert.Equal("en", CultureInfo.CurrentUICulture.Name);
    }
}
