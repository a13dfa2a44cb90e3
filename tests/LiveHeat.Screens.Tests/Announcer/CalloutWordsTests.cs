using System.Globalization;
using LiveHeat.Contracts.Language;
using LiveHeat.Engine;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Screens.Announcer;

/// <summary>Callouts as sentences, in every language of the screen.</summary>
public sealed class CalloutWordsTests : IDisposable
{
    private static readonly IReadOnlyList<LaneView> Lanes = SomeHeat.Lanes("start\nlane 1 step 1 done at 0:30\nlane 2 step 2 done at 0:38");
    private static readonly CalloutWords Words = new();
    private readonly CultureInfo before = CultureInfo.CurrentUICulture;

    private static Callout Of(CalloutKind kind, params int[] lanes) =>
        new("id", kind, 50, Some.Go + 38_000, CalloutGrounds.Confirmed, (lanes.Length == 0 ? [2, 1] : lanes).Select(Some.Lane).ToItems());

    public void Dispose() => CultureInfo.CurrentUICulture = before;

    [Theory]
    [InlineData("en", "Team 2 take the lead from Team 1.")]
    [InlineData("es", "Team 2 se ponen en cabeza por delante de Team 1.")]
    [InlineData("fr", "Team 2 prennent la tête devant Team 1.")]
    [InlineData("de", "Team 2 übernehmen die Führung von Team 1.")]
    public void A_lead_is_said_in_the_language_of_the_screen(string language, string sentence) => Assert.Equal(sentence, Said(language, Of(CalloutKind.Lead)));

    [Theory]
    [InlineData("en", "Team 2: 10 wall balls in 21.3 s, the fastest of the day.")]
    [InlineData("de", "Team 2: 10 wall balls in 21,3 s, die schnellste Zeit des Tages.")]
    public void A_time_has_the_languages_decimal_sign_and_no_more_digits_than_taps_know(string language, string sentence) =>
        Assert.Equal(sentence, Said(language, Of(CalloutKind.FastestSet, 2) with { Step = 1, Ms = 21_333, OfDay = true }));

    [Theory]
    [InlineData("en", 1_000, "Team 2 are catching Team 1: perhaps past them in 1 second.")]
    [InlineData("en", 12_400, "Team 2 are catching Team 1: perhaps past them in 12 seconds.")]
    [InlineData("fr", 1_000, "Team 2 reviennent sur Team 1 : peut-être devant dans 1 seconde.")]
    [InlineData("es", 12_400, "Team 2 se acercan a Team 1: quizá los adelanten en 12 segundos.")]
    public void What_is_to_come_says_in_how_many_seconds_and_has_its_plural(string language, int inMs, string sentence) =>
        Assert.Equal(sentence, Said(language, Of(CalloutKind.CatchToCome) with { Due = Some.Go + 60_000 + inMs, Chance = 0.6 }));

    [Fact]
    public void A_finish_whose_place_is_open_says_so_and_names_none()
    {
        Assert.Equal("Team 2 are through in place 1: 5:00.3.", Said("en", Of(CalloutKind.Finish, 2) with { Ms = 300_300, Place = 1 }));
        Assert.Equal("Team 2 are through: 5:00.3. The place is still open.", Said("en", Of(CalloutKind.Finish, 2) with { Ms = 300_300 }));
        Assert.Equal("Team 2 sind fertig: 5:00,3. Der Platz ist noch offen.", Said("de", Of(CalloutKind.Finish, 2) with { Ms = 300_300 }));
    }

    [Fact]
    public void A_tag_names_who_comes_in_and_one_to_come_who_is_next()
    {
        Assert.Equal("Team 2: Bo is tagged in.", Said("en", Of(CalloutKind.Tag, 2) with { Step = 3 }));
        Assert.Equal("Team 2: Bo is next, in about 8 seconds.", Said("en", Of(CalloutKind.TagToCome, 2) with { Step = 3, Due = Some.Go + 68_000 }));
        Assert.Equal("Team 2: Bo is next, any moment now.", Said("en", Of(CalloutKind.TagToCome, 2) with { Step = 3, Due = Some.Go + 61_000 }));
    }

    [Fact]
    public void A_near_tie_says_what_not_to_name()
    {
        CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");
        Assert.Equal("Team 1 and Team 2: too close to measure. Name no order.", Words.Sentence(new NotYet(NotYetWhy.NearTie, [Some.Lane(1), Some.Lane(2)]), Lanes));
        Assert.Equal("Team 1 are through, but 2 teams may still have the better time.", Words.Sentence(new NotYet(NotYetWhy.MayBeBeaten, [Some.Lane(1), Some.Lane(2), Some.Lane(3)]), Lanes));
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    [InlineData("fr")]
    [InlineData("de")]
    public void Every_kind_and_every_open_question_has_its_sentence(string language)
    {
        foreach (var kind in Enum.GetValues<CalloutKind>())
        {
            var callout = Of(kind) with { Step = 3, Place = 2, Ms = 61_000, Due = Some.Go + 70_000, Chance = 0.5 };
            Assert.Contains("Team", Said(language, kind == CalloutKind.LastMinute ? callout with { Lanes = [Some.Lane(1)] } : callout).Replace("equip", "Team", StringComparison.Ordinal).Replace("équip", "Team", StringComparison.Ordinal).Replace("team", "Team", StringComparison.Ordinal), StringComparison.Ordinal);
            Assert.DoesNotMatch(@"\{\d\}|^[a-z]+\.[a-z]+$", Said(language, callout));
            Assert.DoesNotMatch(@"^[a-z]+\.[a-z]+$", Words.Reason(callout, Lanes));
        }

        Assert.All(Enum.GetValues<NotYetWhy>(), why => Assert.Contains("Team 1", Words.Sentence(new NotYet(why, [Some.Lane(1), Some.Lane(2)]), Lanes), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("de-AT", "de")]
    [InlineData("fr_CA", "fr")]
    [InlineData("ES", "es")]
    [InlineData("nl-NL", "en")]
    [InlineData("", "en")]
    [InlineData(null, "en")]
    public void The_language_is_the_devices_where_we_have_it(string? device, string language) => Assert.Equal(language, Tongue.Of(device));

    private string Said(string language, Callout callout)
    {
        CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(language);
        return Words.Sentence(callout, Lanes, Some.Go + 60_000);
    }
}
