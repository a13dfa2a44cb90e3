namespace LiveHeat.Screens.Access;

/// <summary>A join code as a person types it: eight of Crockford's 32 letters and digits.</summary>
public static class JoinCode
{
    /// <summary>How long one is.</summary>
    public const int Length = 8;
    private const string Alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    /// <summary>Capitals, without spaces and dashes; I and L read as 1, O as 0.</summary>
    public static string Clean(string text) => string.Concat(text
        .Where(c => !char.IsWhiteSpace(c) && c != '-')
        .Select(c => char.ToUpperInvariant(c) switch { 'I' or 'L' => '1', 'O' => '0', var other => other }));

    /// <summary>Whether it can be one at all.</summary>
    public static bool IsWhole(string text) => Clean(text) is { Length: Length } code && code.All(Alphabet.Contains);

    /// <summary>In two halves, to be read out: "K7F3 M2QX".</summary>
    public static string Spoken(string code) => code.Length == Length ? $"{code[..4]} {code[4..]}" : code;

    /// <summary>The code in an address's fragment; empty when there is none.</summary>
    public static string Of(string address) => address.IndexOf('#', StringComparison.Ordinal) is >= 0 and var at ? Clean(Uri.UnescapeDataString(address[(at + 1)..])) : "";
}
