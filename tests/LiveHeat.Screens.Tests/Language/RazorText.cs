using System.Text;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;
using MudBlazor;

namespace LiveHeat.Screens.Language;

/// <summary>Text that a .razor file says itself: between its tags, and in attributes that are read or heard. What an expression tells is none of it.</summary>
internal static partial class RazorText
{
    private static readonly string[] Spoken = ["title", "alt", "placeholder", "aria-label", "aria-description", "aria-placeholder", "aria-roledescription", "aria-valuetext", "data-label", "label"];

    private static readonly ILookup<string, Type> Components = new[] { typeof(App).Assembly, typeof(MudButton).Assembly }.SelectMany(assembly => assembly.GetTypes())
        .Where(type => type.IsAssignableTo(typeof(IComponent))).ToLookup(type => type.Name.Split('`')[0]);

    /// <summary>Each in the order of the file.</summary>
    public static IEnumerable<string> Of(string razor)
    {
        var markup = Comment().Replace(Code().Split(razor)[0], "");
        var text = new StringBuilder();
        var found = new List<string>();
        for (var at = 0; at < markup.Length;)
        {
            if (markup[at] == '<' && at + 1 < markup.Length && (char.IsLetter(markup[at + 1]) || markup[at + 1] == '/'))
            {
                text.Append('\n');
                at = Tag(markup, at, found);
            }
            else if (markup[at] == '@')
            {
                at = Expression(markup, at);
            }
            else
            {
                text.Append(markup[at++]);
            }
        }

        return found.Concat(text.ToString().Split('\n').Select(line => line.Trim()).Where(line => !Statement().IsMatch(line) && Word().IsMatch(line)));
    }

    /// <summary>Where a tag ends; its spoken attributes are looked at on the way.</summary>
    private static int Tag(string markup, int at, List<string> found)
    {
        var name = Name().Match(markup, at + 1).Value;
        for (at += 1 + name.Length; at < markup.Length && markup[at] != '>';)
        {
            var attribute = Attribute().Match(markup, at);
            if (!attribute.Success)
            {
                at++;
                continue;
            }

            var from = at += attribute.Length;
            while (at < markup.Length && markup[at] != '"')
            {
                at = markup[at] == '@' ? Expression(markup, at) : at + 1;
            }

            var value = markup[from..at++];
            if (IsText(name, attribute.Groups[1].Value) && Word().IsMatch(WithoutExpressions(value)))
            {
                found.Add($"{attribute.Groups[1].Value}=\"{value}\"");
            }
        }

        return at + 1;
    }

    /// <summary>Of a component all that is text; of an element what is read or heard.</summary>
    private static bool IsText(string tag, string attribute) => char.IsUpper(tag.FirstOrDefault())
        ? attribute is not ("Act" or "Class" or "Style" or "Href" or "Id" or "Tag" or "Selector" or "Name" or "View" or "Target" or "Pattern")
            && Components[tag].Any(type => type.GetProperty(attribute)?.PropertyType == typeof(string))
        : Spoken.Contains(attribute);

    private static string WithoutExpressions(string value)
    {
        var left = new StringBuilder();
        for (var at = 0; at < value.Length;)
        {
            if (value[at] == '@')
            {
                at = Expression(value, at);
            }
            else
            {
                left.Append(value[at++]);
            }
        }

        return left.ToString();
    }

    /// <summary>Where what begins with an @ ends: a directive its line, a condition or a loop its brackets, anything else its members, calls and indexes.</summary>
    private static int Expression(string markup, int at)
    {
        if (Directive().Match(markup, at) is { Success: true } directive)
        {
            return at + directive.Length;
        }

        var loop = Keyword().Match(markup, at);
        at += loop.Success ? loop.Length : 1;
        if (loop.Success || (at < markup.Length && markup[at] is '(' or '{'))
        {
            return Closed(markup, at);
        }

        for (; at < markup.Length; at = markup[at] is '(' or '[' ? Closed(markup, at) : at + 1)
        {
            if (!(char.IsLetterOrDigit(markup[at]) || markup[at] is '_' or '(' or '[' || (markup[at] is '.' or '?' or '!' && at + 1 < markup.Length && (char.IsLetter(markup[at + 1]) || markup[at + 1] == '.'))))
            {
                break;
            }
        }

        return at;
    }

    /// <summary>Behind the bracket that closes the one here; strings inside may hold any.</summary>
    private static int Closed(string markup, int at)
    {
        var open = 0;
        var quoted = false;
        for (; at < markup.Length; at++)
        {
            quoted ^= markup[at] == '"' && markup[at - 1] != '\\';
            open += quoted ? 0 : markup[at] switch { '(' or '[' or '{' => 1, ')' or ']' or '}' => -1, _ => 0 };
            if (open == 0 && !quoted)
            {
                return at + 1;
            }
        }

        return at;
    }

    [GeneratedRegex(@"(?m)^@code\b")]
    private static partial Regex Code();

    [GeneratedRegex(@"@\*.*?\*@|<!--.*?-->", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"\G@(page|using|inject|implements|inherits|layout|namespace|attribute|typeparam|rendermode|preservewhitespace)\b[^\n]*")]
    private static partial Regex Directive();

    [GeneratedRegex(@"\G@(if|for|foreach|while|switch|lock|using)\s*(?=\()")]
    private static partial Regex Keyword();

    [GeneratedRegex(@"\G/?[\w.-]*")]
    private static partial Regex Name();

    [GeneratedRegex(@"\G\s*([\w@:.-]+)\s*=\s*""")]
    private static partial Regex Attribute();

    /// <summary>A line of code in a block among markup.</summary>
    [GeneratedRegex(@"^[{}\s]*(else\b.*|case\b.*:|default:|.*;|)[{}\s]*$")]
    private static partial Regex Statement();

    [GeneratedRegex(@"\p{L}{2,}")]
    private static partial Regex Word();
}
