using LiveHeat.Contracts.Language;
using LiveHeat.Testing.Language;

namespace LiveHeat.Engine.Language;

/// <summary>The words of the contracts in all languages.</summary>
public sealed class TranslationTests
{
    [Fact]
    public void Every_word_is_told_in_every_language()
    {
        Assert.Empty(TranslationFaults.Of(typeof(Wording).Assembly));
        Assert.NotEqual(0, TranslationFaults.Looked(typeof(Wording).Assembly));
    }
}
