using LiveHeat.Contracts.Language;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Screens.Words;

/// <summary>A freeze over what was missing: new ones name it as data, told in the reader's language; older ones have it in their reason.</summary>
public sealed class FrozenWordsTests
{
    [Theory]
    [InlineData("en", "frozen over what was missing: phone is dead (lane 2: 3 taps still on the phone, last seen ", "; lane 1: no tiebreak time)")]
    [InlineData("de", "trotz Fehlendem eingefroren: phone is dead (Bahn 2: 3 Tipps noch auf dem Telefon, zuletzt gesehen um ", "; Bahn 1: keine Tiebreak-Zeit)")]
    public void What_was_missing_is_told_beside_the_reason(string language, string begins, string ends)
    {
        Tongue.Speak(language);
        var words = Of([new(new(2), 3, HeatScript.At("11:00"))], [new(1)]);
        Assert.StartsWith(begins, words, StringComparison.Ordinal);
        Assert.EndsWith(ends, words, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void An_older_freeze_is_shown_as_it_stands() => Assert.Equal("frozen over missing taps: phone is dead (lane 2: 3 taps)", Of(null, null, "phone is dead (lane 2: 3 taps)"));

    private static string Of(Items<MissingTaps>? missing, Items<LaneNumber>? untold, string over = "phone is dead") => FactWords.Of(
        new HeatFact.Frozen { Id = Some.Id("asks", 1), Instant = HeatScript.At("12:00"), By = Some.Organiser, Head = 9, Over = over, Missing = missing, NoTiebreak = untold }, null, FactBook.Empty);
}
