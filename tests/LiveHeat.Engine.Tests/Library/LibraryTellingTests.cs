using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Library;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Library;

public sealed class LibraryTellingTests : IDisposable
{
    /// <inheritdoc/>
    public void Dispose() => Tongue.Speak("en");

    [Fact]
    public void What_stands_as_in_the_library_is_told_in_the_language_of_whoever_reads()
    {
        foreach (var (written, read) in Tongue.All.SelectMany(written => Tongue.All.Select(read => (written, read))))
        {
            Tongue.Speak(read);
            foreach (var (from, to) in LibraryFiles.In(written).Movements.Zip(LibraryFiles.In(read).Movements))
            {
                Assert.Equal(to.ToMovement("m"), LibraryTelling.Tell(from.ToMovement("m")));
            }
        }
    }

    [Fact]
    public void What_the_organiser_changed_stays_and_the_rest_is_told()
    {
        var (english, german) = (Of("wall-ball", "en").ToMovement("m"), Of("wall-ball", "de").ToMovement("m"));
        var full = english.FullStandard! with { Start = "Standing on the blue mat.", Faults = english.FullStandard!.Faults.With(new NamedFault("off the mat", "A foot left the mat.")) };
        var written = english with { Name = "wall balls to the roof", Faults = english.Faults.With("off the mat"), FullStandard = full, Standard = full.InShort() };

        Tongue.Speak("de");
        var told = LibraryTelling.Tell(written);

        Assert.Equal(("wall balls to the roof", "m", $"Standing on the blue mat. → {german.FullStandard!.Finish}"), (told.Name, told.Id, told.Standard));
        Assert.Equal(german.Faults.With("off the mat"), told.Faults);
        Assert.Equal(german.FullStandard with { Start = full.Start, Faults = german.FullStandard.Faults.With(new NamedFault("off the mat", "A foot left the mat.")) }, told.FullStandard);
    }

    [Theory]
    [InlineData("hips not open", "de", "Hüfte nicht gestreckt")]
    [InlineData("Hüfte nicht gestreckt", "en", "hips not open")]
    [InlineData("not together", "de", "nicht gleichzeitig")]
    [InlineData("Hips not open", "de", "Hips not open")]
    [InlineData("", "de", "")]
    [InlineData("hips not open", "xx", "hips not open")]
    public void A_text_is_known_only_to_the_letter(string text, string language, string told) => Assert.Equal(told, LibraryTelling.Tell(text, language));

    [Fact]
    public void A_standard_of_one_text_alone_stays_as_it_was_written()
    {
        var written = Of("burpee", "en").ToMovement("m") with { FullStandard = null, Standard = "Chest down, jump." };

        Tongue.Speak("de");

        Assert.Equal(("Burpees", "Chest down, jump.", null), (LibraryTelling.Tell(written).Name, LibraryTelling.Tell(written).Standard, LibraryTelling.Tell(written).FullStandard));
    }

    private static LibraryMovement Of(string id, string language) => LibraryFiles.In(language).Movements.Single(movement => movement.Id == id);
}
