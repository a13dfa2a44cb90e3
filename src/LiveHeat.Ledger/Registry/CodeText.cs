using System.Security.Cryptography;

namespace LiveHeat.Ledger.Registry;

/// <summary>Random text that people read out and type: Crockford's base 32, which has no I, L, O and U. Five bits a character.</summary>
public static class CodeText
{
    private const string Alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    /// <summary>As many random characters.</summary>
    public static string Random(int length) => RandomNumberGenerator.GetString(Alphabet, length);

    /// <summary>What was meant by what was typed: any case, blanks and hyphens anywhere, I and L for 1, O for 0. Null when it is no such text.</summary>
    public static string? Normalise(string? typed, int length)
    {
        var text = string.Concat((typed ?? "").Where(c => c is not (' ' or '-')).Select(Meant));
        return text.Length == length && text.All(c => Alphabet.Contains(c, StringComparison.Ordinal)) ? text : null;
    }

    private static char Meant(char typed) => char.ToUpperInvariant(typed) switch
    {
        'I' or 'L' => '1',
        'O' => '0',
        var other => other,
    };
}
