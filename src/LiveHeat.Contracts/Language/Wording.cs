using System.Resources;

namespace LiveHeat.Contracts.Language;

/// <summary>
/// The words of a class, from the resources beside it that translators edit: <c>DeskWords.resx</c> in English, <c>DeskWords.de.resx</c> and so on. A key is the name of
/// the member that tells it; a sentence has places, {0}; one that counts has a .one and an .other.
/// </summary>
/// <param name="named">The class; its resources have its name and stand in its folder.</param>
public sealed class Wording(Type named)
{
    private readonly ResourceManager resources = new(named.FullName!, named.Assembly);

    /// <summary>A word or sentence as it stands.</summary>
    /// <exception cref="MissingManifestResourceException">No language has such a key.</exception>
    public string this[string key] => resources.GetString(key, Tongue.Culture) ?? throw new MissingManifestResourceException($"{named.Name} has no words for {key}.");

    /// <summary>A sentence with its places filled; numbers are written as the language writes them.</summary>
    public string Say(string key, params object?[] places) => string.Format(Numbers.Format, this[key], places);

    /// <summary>A sentence that counts: the number is its place 0, the others follow.</summary>
    public string Count(string key, long count, params object?[] places) => Say($"{key}.{Numbers.Form(count)}", [count, .. places]);
}
