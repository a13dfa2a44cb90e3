using LiveHeat.Contracts.Language;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Library;

/// <summary>
/// Tells what a workout took from the library in the language of whoever reads. A text that stands exactly as the library has it, in any of its languages, is told as the
/// library has it in the wanted one; what an organiser changed or wrote stays as it is.
/// </summary>
/// <remarks>
/// Facts keep the names that were tapped: they are told where they are shown. One text means one thing in the whole library and in all its languages (a test holds it to
/// that), so that nobody need know of which movement it is.
/// </remarks>
public static class LibraryTelling
{
    /// <summary>By every text in every language: what all languages say, in the order of <see cref="Tongue.All"/>.</summary>
    private static readonly Lazy<Dictionary<string, string[]>> Texts = new(Read);

    /// <summary>A name, a fault, or any other text, in the language now.</summary>
    public static string Tell(string text) => Tell(text, Tongue.Current);

    /// <summary>The same in one of <see cref="Tongue.All"/>.</summary>
    public static string Tell(string text, string language)
    {
        var at = Tongue.All.TakeWhile(one => one != language).Count();
        return Texts.Value.TryGetValue(text, out var told) && at < told.Length ? told[at] : text;
    }

    /// <summary>A movement as a workout has it, in the language now. Not for steps: a tap records a fault by the workout's own name.</summary>
    public static Movement Tell(Movement movement)
    {
        var full = movement.FullStandard is { } parts ? Tell(parts) : null;
        return movement with
        {
            Name = Tell(movement.Name),
            Faults = Tell(movement.Faults),
            FullStandard = full,
            Standard = movement.Standard == movement.FullStandard?.InShort() ? full!.InShort() : Tell(movement.Standard),
        };
    }

    /// <summary>All texts of a movement of the library, always in the same order.</summary>
    public static IEnumerable<string> Of(LibraryMovement movement) =>
    [
        movement.Name, movement.Start, movement.Finish, .. movement.Between, .. movement.Faults.SelectMany(fault => new[] { fault.Name, fault.How }), .. movement.Allowed,
        .. movement.Variants.SelectMany(variant => new[] { variant.Name, variant.How }), .. movement.Caution is { } caution ? new[] { caution } : [], movement.Source,
    ];

    private static Standard Tell(Standard standard) => standard with
    {
        Start = Tell(standard.Start),
        Finish = Tell(standard.Finish),
        Between = Tell(standard.Between),
        Allowed = Tell(standard.Allowed),
        Faults = standard.Faults.Select(fault => new NamedFault(Tell(fault.Name), Tell(fault.How))).ToItems(),
        Caution = standard.Caution is { } caution ? Tell(caution) : null,
    };

    private static Items<string> Tell(Items<string> texts) => texts.Select(Tell).ToItems();

    private static Dictionary<string, string[]> Read()
    {
        var texts = new Dictionary<string, string[]>();
        var languages = Tongue.All.Select(language => LibraryFiles.In(language).Movements.SelectMany(Of).Concat(LibraryFiles.Added(language)).ToList()).ToList();
        for (var place = 0; place < languages[0].Count; place++)
        {
            var told = languages.Select(language => language[place]).ToArray();
            foreach (var text in told)
            {
                texts.TryAdd(text, told);
            }
        }

        return texts;
    }
}
