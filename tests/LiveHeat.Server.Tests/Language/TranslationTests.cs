using LiveHeat.Testing.Language;

namespace LiveHeat.Server.Language;

/// <summary>The words of the server's pages in all languages.</summary>
public sealed class TranslationTests
{
    [Fact]
    public void Every_word_is_told_in_every_language()
    {
        Assert.Empty(TranslationFaults.Of(typeof(RequestLanguage).Assembly));
        Assert.NotEqual(0, TranslationFaults.Looked(typeof(RequestLanguage).Assembly));
    }
}
