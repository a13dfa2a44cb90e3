using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing.Language;

namespace LiveHeat.Engine.Language;

/// <summary>Signs and quotation marks are those of Unicode CLDR, from memory.</summary>
public sealed class SentencesTests
{
    private static string In(string language, Telling telling)
    {
        Tongue.Speak(language);
        return telling.Sentence();
    }

    private static string Show(string language, Part part) => In(language, new Telling(null, "", [part]));

    [Fact]
    public void Everything_that_the_engine_can_tell_has_a_sentence_in_every_language()
    {
        Assert.Empty(TellingFaults.Of(typeof(Telling).Assembly));
        Assert.True(TellingFaults.Looked(typeof(Telling).Assembly) > 150, "The engine was to tell of many things.");
        Assert.Empty(TranslationFaults.Of(typeof(Telling).Assembly));
    }

    [Theory]
    [InlineData("en", "12,345", "12,345.5", "1, 3 and 12", "\"Low Tide\"", "(nothing)", "a head judge or a lane judge")]
    [InlineData("es", "12\u00a0345", "12\u00a0345,5", "1, 3 y 12", "«Low Tide»", "(nada)", "juez principal o juez de calle")]
    [InlineData("fr", "12\u202f345", "12\u202f345,5", "1, 3 et 12", "«\u00a0Low Tide\u00a0»", "(rien)", "juge principal ou juge de couloir")]
    [InlineData("de", "12.345", "12.345,5", "1, 3 und 12", "„Low Tide“", "(nichts)", "Hauptrichter oder Bahnrichter")]
    public void Parts_are_written_as_the_language_writes_them(string language, string whole, string amount, string lanes, string quoted, string nothing, string either)
    {
        Items<LaneNumber> three = [new(1), new(3), new(12)];
        Assert.Equal(
            [whole, amount, lanes, quoted, nothing],
            [Show(language, 12345), Show(language, 12345.5m), Show(language, three), Show(language, new Part.Quoted("Low Tide")), Show(language, new Part.Quoted(null))]);
        Assert.Equal(either, Show(language, new Part.AnyOf([Refusals.Somebody(Role.HeadJudge), Refusals.Somebody(Role.Judge)])), ignoreCase: true);
    }

    [Fact]
    public void What_is_very_long_is_cut_within_its_quotation_marks() =>
        Assert.Equal($"\"{new string('a', 60)}…\"", Show("en", new Part.Quoted(new string('a', 61))));

    [Theory]
    [InlineData(0, false, "10:07")]
    [InlineData(120, true, "12:07:09")]
    [InlineData(-660, false, "23:07")]
    public void A_time_of_day_is_by_the_clocks_of_the_venue(int offsetMinutes, bool seconds, string shown) =>
        Assert.Equal(shown, Show("en", new Part.TimeOfDay(new Instant(DateTimeOffset.Parse("2026-11-28T10:07:09Z", System.Globalization.CultureInfo.InvariantCulture).ToUnixTimeMilliseconds()), offsetMinutes, seconds)));

    [Theory]
    [InlineData("en", "Not ready yet: lane 2. Wait for its judge, or count it as ready by name.", "Not ready yet: lanes 2 and 3. Wait for their judges, or count them as ready by name.")]
    [InlineData("de", "Noch nicht bereit: Bahn 2. Auf den Bahnrichter warten oder sie namentlich als bereit zählen.", "Noch nicht bereit: Bahnen 2 und 3. Auf die Bahnrichter warten oder sie namentlich als bereit zählen.")]
    public void A_sentence_that_counts_has_the_form_of_its_number(string language, string one, string two) =>
        Assert.Equal((one, two), (In(language, Refusals.LanesNotReady([new(2)])), In(language, Refusals.LanesNotReady([new(2), new(3)]))));

    [Fact]
    public void Equal_tellings_are_equal_and_several_are_told_one_after_the_other()
    {
        Assert.Equal(Refusals.LanesNotReady([new(2), new(3)]), Refusals.LanesNotReady([new(2), new(3)]));
        Assert.NotEqual(Refusals.LanesNotReady([new(2)]), Refusals.LanesNotReady([new(3)]));
        Assert.Equal(
            "Der Lauf ist nicht angehalten. Blau: Das Zeitlimit ist null. Minuten und Sekunden über 0:00 angeben.",
            In("de", Telling.Several([Refusals.NotHalted, WorkoutRefusals.CapIsZero("Blau")])));
    }
}
