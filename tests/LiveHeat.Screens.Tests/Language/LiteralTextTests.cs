using System.Runtime.CompilerServices;

namespace LiveHeat.Screens.Language;

/// <summary>No screen says anything that a translator cannot reach.</summary>
public sealed class LiteralTextTests
{
    [Fact]
    public void No_razor_file_holds_text()
    {
        var files = Directory.GetFiles(Screens(), "*.razor", SearchOption.AllDirectories);
        Assert.True(files.Length > 100, $"There are {files.Length}.");
        Assert.Empty(files.SelectMany(file => RazorText.Of(File.ReadAllText(file)).Select(text => $"{Path.GetFileName(file)}: {text}")));
    }

    [Theory]
    [InlineData("""<p class="dim">Loading the screen</p>""", "Loading the screen")]
    [InlineData("""<p>@Words.Title of @Count(a, "b c") lanes</p>""", "of  lanes")]
    [InlineData("""<button title="Press me" data-act="go">@Words.Go</button>""", "title=\"Press me\"")]
    [InlineData("""<MudTextField T="string" Label="Your name" Class="wide" @bind-Value="name" />""", "Label=\"Your name\"")]
    [InlineData("""<i aria-label="Lane @lane.Number">@lane</i>""", "aria-label=\"Lane @lane.Number\"")]
    public void Text_of_its_own_is_found(string razor, string text) => Assert.Equal([text], RazorText.Of(razor));

    [Theory]
    [InlineData("""<p class="dim">@Words.Title: @(late ? $"{a}, {b}" : "")</p>""")]
    [InlineData("@page \"/x\"\n@if (a is { } b)\n{\n    var c = b.Name;\n    <p title=\"@c\">@c · @b.Of(\"one two\")</p>\n}\nelse\n{\n    <i>–</i>\n}\n@code {\n    private string text = \"\";\n}")]
    [InlineData("""<RunningText Text="() => Words.Age(Clock.Since(at))" />""")]
    [InlineData("""<MudButton OnClick="() => Go(lane)" Class="big button" data-act="go">@Words.Go</MudButton>""")]
    public void What_expressions_and_code_tell_is_none(string razor) => Assert.Empty(RazorText.Of(razor));

    private static string Screens([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "src", "LiveHeat.Screens");
}
