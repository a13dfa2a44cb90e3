using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine;

/// <summary>What stands in a place of a sentence, as a value: languages write numbers, lists and times their own way. A closed family.</summary>
public abstract record Part
{
    private Part()
    {
    }

    /// <summary>A whole number.</summary>
    public sealed record Whole(long Number) : Part;

    /// <summary>A number that may have decimals.</summary>
    public sealed record Amount(decimal Number) : Part;

    /// <summary>A name, an id, a field's path: as somebody wrote it.</summary>
    public sealed record Name(string Text) : Part;

    /// <summary>What somebody wrote, in quotation marks, cut where it is very long. Null: nothing was written.</summary>
    public sealed record Quoted(string? Text) : Part;

    /// <summary>Lanes by their numbers: "2, 5 and 7".</summary>
    public sealed record Lanes(Items<LaneNumber> Numbers) : Part;

    /// <summary>Names as somebody wrote them, one after the other.</summary>
    public sealed record Names(Items<string> Texts) : Part;

    /// <summary>A time of day by the venue's clocks.</summary>
    /// <param name="At">The instant.</param>
    /// <param name="OffsetMinutes">How far the venue's clocks are ahead of UTC.</param>
    /// <param name="Seconds">Whether to the second.</param>
    public sealed record TimeOfDay(Instant At, int OffsetMinutes, bool Seconds = false) : Part;

    /// <summary>A length of time in minutes and seconds.</summary>
    /// <param name="Ms">Milliseconds.</param>
    public sealed record Length(long Ms) : Part;

    /// <summary>A telling within another: who, or what.</summary>
    public sealed record Told(Telling Telling) : Part;

    /// <summary>One of several: "the organiser or the head judge".</summary>
    public sealed record AnyOf(Items<Telling> Tellings) : Part;

    /// <summary>Several of one kind, each told by itself.</summary>
    public sealed record List(Items<Telling> Tellings) : Part;

    public static implicit operator Part(int number) => new Whole(number);

    public static implicit operator Part(long number) => new Whole(number);

    public static implicit operator Part(decimal number) => new Amount(number);

    public static implicit operator Part(string text) => new Name(text);

    public static implicit operator Part(LaneNumber lane) => new Whole(lane.Value);

    public static implicit operator Part(Items<LaneNumber> lanes) => new Lanes(lanes);

    public static implicit operator Part(Telling telling) => new Told(telling);
}
