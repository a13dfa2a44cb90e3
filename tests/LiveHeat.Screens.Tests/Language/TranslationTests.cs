using LiveHeat.Screens.Words;
using LiveHeat.Testing.Language;

namespace LiveHeat.Screens.Language;

/// <summary>The words of the screens in all languages.</summary>
public sealed class TranslationTests
{
    [Fact]
    public void Every_word_is_told_in_every_language()
    {
        Assert.Empty(TranslationFaults.Of(typeof(CommonWords).Assembly));
        Assert.NotEqual(0, TranslationFaults.Looked(typeof(CommonWords).Assembly));
    }
}
