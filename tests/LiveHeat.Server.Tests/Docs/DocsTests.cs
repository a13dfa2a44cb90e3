using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace LiveHeat.Server.Docs;

/// <summary>Docs go stale where nobody looks: what they quote must still be there.</summary>
public sealed partial class DocsTests
{
    public static TheoryData<string> Pages() =>
        [.. Directory.GetFiles(Path.Combine(Root(), "docs"), "*.md", SearchOption.AllDirectories)
            .Append(Path.Combine(Root(), "README.md")).Append(Path.Combine(Root(), "DEVELOPERS.md"))
            .Append(Path.Combine(Root(), "deploy", "README.md")).Select(page => Path.GetRelativePath(Root(), page))];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_path_that_a_page_quotes_exists(string page)
    {
        var text = File.ReadAllText(Path.Combine(Root(), page));
        var folder = Path.GetDirectoryName(Path.Combine(Root(), page))!;
        var missing = QuotedPath().Matches(text).Select(match => Path.Combine(Root(), match.Groups[1].Value))
            .Concat(Link().Matches(text).Select(match => match.Groups[1].Value).Where(link => !link.Contains("://", StringComparison.Ordinal)).Select(link => Path.Combine(folder, link)))
            .Where(path => !File.Exists(path) && !Directory.Exists(path));

        Assert.Empty(missing);
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_type_that_a_page_quotes_exists(string page)
    {
        var sources = Directory.GetFiles(Path.Combine(Root(), "src"), "*.cs", SearchOption.AllDirectories)
            .Concat(Directory.GetFiles(Path.Combine(Root(), "tests"), "*.cs", SearchOption.AllDirectories));
        var types = sources.SelectMany(file => Declared().Matches(File.ReadAllText(file)).Select(match => match.Groups[1].Value))
            .Concat(typeof(TimeProvider).Assembly.GetExportedTypes().Select(type => type.Name)).ToHashSet();
        var quoted = QuotedType().Matches(File.ReadAllText(Path.Combine(Root(), page))).Select(match => match.Groups[1].Value);

        // Hub methods are quoted too: members are found by their declaration. .NET's own names may stand as well.
        Assert.All(quoted, name => Assert.Contains(name, types));
    }

    [GeneratedRegex(@"`((?:src|tests|docs|deploy)/[\w./-]+)`")]
    private static partial Regex QuotedPath();

    [GeneratedRegex(@"\]\(([^)#]+)(?:#[^)]*)?\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"`([A-Z][a-z]+(?:[A-Z][a-z]+)+)(?:\([\w, ]*\))?`")]
    private static partial Regex QuotedType();

    [GeneratedRegex(@"(?:\b(?:class|record|struct|enum|interface)\s+|\b[A-Z][\w<>?]*\s+)([A-Z]\w+)\b")]
    private static partial Regex Declared();

    private static string Root([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));
}
