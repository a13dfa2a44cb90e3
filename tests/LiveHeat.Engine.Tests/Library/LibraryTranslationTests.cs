using System.Globalization;
using System.Text.RegularExpressions;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Library;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Library;

/// <summary>The library in every language says what it says in English, to the last sentence.</summary>
public sealed partial class LibraryTranslationTests
{
    private const int LongestFault = 28;
    private static readonly MovementLibrary English = LibraryFiles.In("en");

    public static TheoryData<string> Languages => [.. Tongue.All.Skip(1)];

    [Theory, MemberData(nameof(Languages))]
    public void All_movements_are_there_with_what_only_English_says(string language)
    {
        var library = LibraryFiles.In(language);

        Assert.Equal(language, library.Language);
        Assert.Equal(
            English.Movements.Select(movement => (movement.Id, movement.Unit, movement.SecondsPerUnit, movement.FastestSecondsPerUnit, Variants: movement.Variants.Select(variant => variant.Movement).ToItems())),
            library.Movements.Select(movement => (movement.Id, movement.Unit, movement.SecondsPerUnit, movement.FastestSecondsPerUnit, Variants: movement.Variants.Select(variant => variant.Movement).ToItems())));
        Assert.Equal(English.Movements.Select(Shape), library.Movements.Select(Shape));
        Assert.Equal(LibraryFiles.Added("en").Count, LibraryFiles.Added(language).Count);
    }

    [Theory, MemberData(nameof(Languages))]
    public void Nothing_is_empty_and_nothing_is_left_in_English(string language)
    {
        var names = English.Movements.Select(movement => movement.Name).ToHashSet();
        var pairs = English.Movements.SelectMany(LibraryTelling.Of).Concat(LibraryFiles.Added("en"))
            .Zip(LibraryFiles.In(language).Movements.SelectMany(LibraryTelling.Of).Concat(LibraryFiles.Added(language))).ToList();

        Assert.True(pairs.Count > 1000, $"{pairs.Count} texts.");
        Assert.All(pairs, pair => Assert.True(pair.Second.Trim() == pair.Second && pair.Second.Length > 1, $"\"{pair.Second}\" for \"{pair.First}\""));
        Assert.Equal([], pairs.Where(pair => pair.First == pair.Second && !names.Contains(pair.First)).Select(pair => pair.First));
    }

    [Theory, MemberData(nameof(Languages))]
    public void Sentences_are_whole_and_numbers_are_the_same(string language)
    {
        foreach (var (english, translated) in English.Movements.SelectMany(LibraryTelling.Of).Zip(LibraryFiles.In(language).Movements.SelectMany(LibraryTelling.Of)))
        {
            Assert.True(english.EndsWith('.') == translated.EndsWith('.') && (!english.EndsWith('.') || char.IsUpper(translated[0])), $"\"{translated}\" for \"{english}\"");
            Assert.Equal(Figures().Matches(english).Select(match => match.Value), Figures().Matches(translated).Select(match => match.Value.Replace(',', '.')));
        }
    }

    [Theory, MemberData(nameof(Languages))]
    public void Faults_fit_on_a_button_and_differ(string language)
    {
        foreach (var movement in LibraryFiles.In(language).Movements)
        {
            Assert.Equal(movement.Faults.Count, movement.Faults.Select(fault => fault.Name).Distinct().Count());
            Assert.All(movement.Faults, fault => Assert.InRange(fault.Name.Length, 4, LongestFault));
        }
    }

    [Fact]
    public void One_text_means_one_thing_in_all_movements_and_languages()
    {
        var languages = Tongue.All.Select(language => LibraryFiles.In(language).Movements.SelectMany(LibraryTelling.Of).Concat(LibraryFiles.Added(language)).ToList()).ToList();

        var torn = Enumerable.Range(0, languages[0].Count).SelectMany(place => languages.SelectMany(from => Tongue.All.Select((language, to) => (From: from[place], Language: language, Wanted: languages[to][place]))))
            .Where(one => LibraryTelling.Tell(one.From, one.Language) != one.Wanted).Select(one => $"\"{one.From}\" in {one.Language} is \"{LibraryTelling.Tell(one.From, one.Language)}\", here \"{one.Wanted}\"").Distinct();

        Assert.Equal([], torn);
    }

    [Theory]
    [InlineData("between")]
    [InlineData("faults")]
    [InlineData("caution")]
    [InlineData("movement")]
    [InlineData("unknown")]
    public void A_translation_that_is_not_whole_is_refused_by_a_sentence_that_says_where(string wrong)
    {
        var english = English with { Movements = [English.Movements[0]] };
        var deadlift = English.Movements[0];
        var words = new TranslatedMovement(
            "deadlift", deadlift.Name, deadlift.Start, deadlift.Finish, wrong == "between" ? [] : deadlift.Between, wrong == "faults" ? deadlift.Faults.With(new NamedFault("a", "b")) : deadlift.Faults,
            deadlift.Allowed, deadlift.Variants.Select(variant => new TranslatedVariant(variant.Name, variant.How)).ToItems(), wrong == "caution" ? null : deadlift.Caution);
        var file = new LibraryTranslation("xx", "nothing", [], wrong switch { "movement" => [], "unknown" => [words, words with { Id = "unknown" }], _ => [words] });

        var refused = Assert.Throws<FormatException>(() => file.Of(english));

        Assert.Contains(wrong == "movement" ? "deadlift" : wrong, refused.Message, StringComparison.Ordinal);
        Assert.StartsWith("movements.xx.json: ", refused.Message, StringComparison.Ordinal);
    }

    private static (int, int, int, int, bool) Shape(LibraryMovement movement) =>
        (movement.Between.Count, movement.Faults.Count, movement.Allowed.Count, movement.Variants.Count, movement.Caution is not null);

    [GeneratedRegex(@"\d+([.,]\d+)?")]
    private static partial Regex Figures();
}
