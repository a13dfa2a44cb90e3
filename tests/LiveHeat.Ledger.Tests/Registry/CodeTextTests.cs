namespace LiveHeat.Ledger.Registry;

public class CodeTextTests
{
    [Theory]   // Crockford's base 32: reading I, L and O, from memory
    [InlineData("K7F3M2QX", "K7F3M2QX")]
    [InlineData("k7f3m2qx", "K7F3M2QX")]
    [InlineData(" K7F3-M2QX ", "K7F3M2QX")]
    [InlineData("oO1iIlL0", "00111110")]
    public void What_was_meant_is_read(string typed, string meant) => Assert.Equal(meant, CodeText.Normalise(typed, 8));

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("K7F3M2Q")]
    [InlineData("K7F3M2QXX")]
    [InlineData("K7F3M2QU")]
    [InlineData("K7F3M2Q!")]
    [InlineData("K7F3M2Qß")]
    [InlineData("K7F3M2Q٣")]
    public void What_is_no_code_is_none(string? typed) => Assert.Null(CodeText.Normalise(typed, 8));

    [Fact]
    public void Random_text_uses_every_character_and_reads_as_itself()
    {
        var text = CodeText.Random(4000);
        Assert.Equal(32, text.Distinct().Count());
        Assert.Equal(text, CodeText.Normalise(text, 4000));
    }
}
