using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace LiveHeat.Server.Heats;

/// <summary>A code is for programs, and permanent: none is given out that the contract does not list.</summary>
public sealed partial class ProblemCodesTests
{
    [Fact]
    public void Every_code_in_the_source_is_listed_in_the_contract()
    {
        var contract = File.ReadAllText(Path.Combine(Root(), "docs", "wire.md"));
        var listed = Quoted().Matches(contract[contract.IndexOf("## Codes", StringComparison.Ordinal)..]).Select(match => match.Groups[1].Value).ToHashSet();
        var given = new[] { "LiveHeat.Server", "LiveHeat.Engine" }
            .SelectMany(project => Directory.GetFiles(Path.Combine(Root(), "src", project), "*.cs", SearchOption.AllDirectories))
            .SelectMany(file => Given().Matches(File.ReadAllText(file)).Select(match => match.Groups[1].Value)).ToHashSet();

        Assert.True(given.Count > 25, "The source was to hold codes.");
        Assert.Subset(listed, given);
    }

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));

    /// <summary>The first kebab-case text behind whatever makes a refusal.</summary>
    [GeneratedRegex("(?:Refused\\(|Problems?\\.Of\\(|new Problem\\(|Wrong\\(device, )[^\";]*\"([a-z]+(?:-[a-z]+)+)\"")]
    private static partial Regex Given();

    [GeneratedRegex("`([a-z-]+)`")]
    private static partial Regex Quoted();
}
