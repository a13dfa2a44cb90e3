using System.Collections.Concurrent;
using System.Globalization;
using LiveHeat.Engine;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Language;

/// <summary>Makes sentences of tellings, in the language now.</summary>
public static class Sentences
{
    private const int MostQuoted = 60;
    private static readonly Wording Words = new(typeof(Sentences));
    private static readonly ConcurrentDictionary<Type, Wording> Wordings = [];

    /// <summary>The sentence; a noun where the telling is one that stands in another.</summary>
    public static string Sentence(this Telling telling)
    {
        object[] places = [.. telling.Parts.Select(Text)];
        return telling.Words is not { } named ? string.Join(" ", places)
            : Wordings.GetOrAdd(named, type => new Wording(type)).Say(telling.Counts ? $"{telling.Key}.{Numbers.Form(((Part.Whole)telling.Parts[0]).Number)}" : telling.Key, places);
    }

    /// <summary>What somebody wrote, between the language's quotation marks.</summary>
    public static string Quoted(string? text) => text is null ? Nothing
        : Words.Say(nameof(Quoted), text.Length > MostQuoted ? $"{text[..MostQuoted]}…" : text);

    private static string Nothing => Words[nameof(Nothing)];

    private static string Text(Part part) => part switch
    {
        Part.Whole(var number) => Numbers.Whole(number),
        Part.Amount(var number) => Numbers.Of(number),
        Part.Name(var text) => text,
        Part.Quoted(var text) => Quoted(text),
        Part.Lanes(var lanes) => Lists.And(lanes.Select(lane => lane.Value.ToString(CultureInfo.InvariantCulture))),
        Part.Names(var names) => string.Join(", ", names),
        Part.TimeOfDay(var at, var offset, var seconds) =>
            DateTimeOffset.FromUnixTimeMilliseconds(at.UnixMs).AddMinutes(offset).ToString(seconds ? "HH:mm:ss" : "HH:mm", CultureInfo.InvariantCulture),
        Part.Length(var ms) => TimeText.Whole(ms),
        Part.Told(var telling) => telling.Sentence(),
        Part.AnyOf(var tellings) => Lists.Or(tellings.Select(Sentence)),
        Part.List(var tellings) => string.Join("; ", tellings.Select(Sentence)),
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "No language writes this part."),
    };
}
