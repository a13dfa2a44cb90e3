using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace LiveHeat.Engine.Heats;

/// <summary>A heat of this competition.</summary>
public readonly record struct HeatId(string Value)
{
    /// <inheritdoc/>
    public override string ToString() => Value;
}

/// <summary>A lane of the floor, from 1.</summary>
public readonly record struct LaneNumber(int Value) : IComparable<LaneNumber>
{
    /// <inheritdoc/>
    public int CompareTo(LaneNumber other) => Value.CompareTo(other.Value);

    /// <inheritdoc/>
    public override string ToString() => Value.ToString(CultureInfo.InvariantCulture);
}

/// <summary>Who may judge a lane, from when to when.</summary>
public readonly record struct SeatId(string Value)
{
    /// <inheritdoc/>
    public override string ToString() => Value ?? "";
}

/// <summary>A fact's own id, made where the fact was made: an outbox (128 random bits) and a counter within it.</summary>
/// <remarks>Unique in the ledger for ever, so that sending again is always safe.</remarks>
public readonly record struct FactId(string Outbox, long Counter) : IComparable<FactId>
{
    /// <summary>Characters of an outbox id: 128 bits in base64url.</summary>
    public const int OutboxLength = 22;

    /// <summary>Reads <c>outbox.counter</c>.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out FactId id)
    {
        id = default;
        var dot = text?.LastIndexOf('.') ?? -1;
        if (dot != OutboxLength
            || !long.TryParse(text.AsSpan(dot + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var counter)
            || counter < 1)
        {
            return false;
        }

        var outbox = text![..dot];
        if (!outbox.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_'))
        {
            return false;
        }

        id = new FactId(outbox, counter);
        return true;
    }

    /// <inheritdoc/>
    public int CompareTo(FactId other)
    {
        var byOutbox = string.CompareOrdinal(Outbox, other.Outbox);
        return byOutbox != 0 ? byOutbox : Counter.CompareTo(other.Counter);
    }

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Outbox}.{Counter}");
}

/// <summary>What a person may do.</summary>
public enum Role
{
    /// <summary>Sees what everybody may see.</summary>
    Viewer,

    /// <summary>Reads the announcer's screen.</summary>
    Announcer,

    /// <summary>Judges one lane.</summary>
    Judge,

    /// <summary>Rules on every lane and signs the result.</summary>
    HeadJudge,

    /// <summary>Runs the floor from the desk and signs the result.</summary>
    Organiser,
}

/// <summary>Who did it: a sign-in, the name they gave, their role then.</summary>
public sealed record By(string SignIn, string Name, Role Role);
