using System.Reflection;
using System.Text.RegularExpressions;
using LiveHeat.Contracts.Language;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Testing.Language;

/// <summary>What is wrong with the tellings that an assembly can make: each is made once for one and once for several, and told in every language.</summary>
public static partial class TellingFaults
{
    /// <summary>Tellings without a sentence, places that nothing fills, parts that no sentence shows.</summary>
    public static IEnumerable<string> Of(Assembly assembly) => Made(assembly).SelectMany(one => Tongue.All.SelectMany(language => In(language, one)));

    /// <summary>How many were made: a check that looked at nothing would find nothing.</summary>
    public static int Looked(Assembly assembly) => Made(assembly).Select(one => (one.Words, one.Key)).Distinct().Count();

    private static IEnumerable<Telling> Made(Assembly assembly) =>
        from type in assembly.GetTypes()
        where type is { IsAbstract: true, IsSealed: true }
        from member in type.GetMembers(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
        where member.Name != "Tell"
        from made in member switch
        {
            PropertyInfo { PropertyType: var told } property when told == typeof(Telling) => [(Telling)property.GetValue(null)!],
            MethodInfo { IsSpecialName: false, ReturnType: var told } method when told == typeof(Telling) && method.DeclaringType!.Name.EndsWith("Refusals", StringComparison.Ordinal) =>
                Examples(method).Select(places => (Telling)method.Invoke(null, places)!),
            _ => [],
        }
        select made;

    private static IEnumerable<string> In(string language, Telling telling)
    {
        Tongue.Speak(language);
        string? wrong = null;
        try
        {
            var (text, places) = (telling.Sentence(), Places(telling));
            var all = Enumerable.Range(0, telling.Parts.Count).ToHashSet();
            wrong = text.Contains('{') || text.Length == 0 ? $"says \"{text}\""
                : places.SetEquals(all) || (telling.Counts && places.Append(0).ToHashSet().SetEquals(all)) ? null : $"has {all.Count} parts and the places {string.Join(", ", places)}";
        }
        catch (Exception none) when (none is System.Resources.MissingManifestResourceException or FormatException)
        {
            wrong = none.Message;
        }
        finally
        {
            Tongue.Speak("en");
        }

        return wrong is null ? [] : [$"{telling.Words!.Name}.{telling.Key}, {language}: {wrong}"];
    }

    private static HashSet<int> Places(Telling telling)
    {
        var words = new Wording(telling.Words!);
        var keys = telling.Counts ? new[] { $"{telling.Key}.{Numbers.Form(((Part.Whole)telling.Parts[0]).Number)}" } : [telling.Key];
        return [.. keys.SelectMany(key => Place().Matches(words[key])).Select(match => int.Parse(match.Groups[1].ValueSpan, System.Globalization.CultureInfo.InvariantCulture))];
    }

    /// <summary>Places for one and for several; with a role, for each role.</summary>
    private static IEnumerable<object?[]> Examples(MethodInfo method) =>
        from count in new[] { 1, 5 }
        from role in method.GetParameters().Any(place => place.ParameterType == typeof(Role)) ? Enum.GetValues<Role>() : [Role.Judge]
        select method.GetParameters().Select(place => Example(place.ParameterType, count, role)).ToArray();

    private static object? Example(Type type, int count, Role role) => type switch
    {
        _ when type == typeof(int) => count,
        _ when type == typeof(long) => (long)count,
        _ when type == typeof(decimal) => count + 0.5m,
        _ when type == typeof(string) => "Low Tide",
        _ when type == typeof(LaneNumber) => new LaneNumber(count),
        _ when type == typeof(Items<LaneNumber>) => Enumerable.Range(1, count).Select(lane => new LaneNumber(lane)).ToItems(),
        _ when type == typeof(Items<string>) => Enumerable.Repeat("Heat 1", count).ToItems(),
        _ when type == typeof(Telling) => Name,
        _ when type == typeof(Items<Telling>) => Enumerable.Repeat(Name, count).ToItems(),
        _ when type == typeof(Part) => new Part.TimeOfDay(new Instant(1_795_600_841_200), 60),
        _ when type == typeof(Role) => role,
        _ => throw new ArgumentOutOfRangeException(nameof(type), type, "A telling has a place of a type without an example."),
    };

    private static Telling Name => Engine.Rules.Refusals.Somebody(Role.Judge);

    [GeneratedRegex(@"\{(\d+)")]
    private static partial Regex Place();
}
