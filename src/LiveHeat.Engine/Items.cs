using System.Collections;
using System.Runtime.CompilerServices;

namespace LiveHeat.Engine;

/// <summary>An immutable list that is equal to another with equal items, so that records holding one compare as values.</summary>
/// <remarks><c>ImmutableArray</c> inside a record compares by reference; two equal heats would differ.</remarks>
[CollectionBuilder(typeof(Items), nameof(Items.Create))]
public readonly struct Items<T> : IReadOnlyList<T>, IEquatable<Items<T>>
{
    private readonly T[]? array;

    internal Items(T[] array) => this.array = array;

    /// <summary>The items as a span, without copying.</summary>
    public ReadOnlySpan<T> Span => array;

    /// <inheritdoc/>
    public int Count => array?.Length ?? 0;

    /// <inheritdoc/>
    public T this[int index] => array is null ? throw new ArgumentOutOfRangeException(nameof(index)) : array[index];

    /// <summary>The same items and one more.</summary>
    public Items<T> With(T item)
    {
        var longer = new T[Count + 1];
        Span.CopyTo(longer);
        longer[^1] = item;
        return new Items<T>(longer);
    }

    /// <inheritdoc/>
    public bool Equals(Items<T> other) => Span.SequenceEqual(other.Span);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Items<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var item in Span)
        {
            hash.Add(item);
        }

        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)(array ?? [])).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Equal items in the same order.</summary>
    public static bool operator ==(Items<T> left, Items<T> right) => left.Equals(right);

    /// <summary>Any difference.</summary>
    public static bool operator !=(Items<T> left, Items<T> right) => !left.Equals(right);

    /// <inheritdoc/>
    public override string ToString() => $"[{string.Join(", ", this)}]";
}

/// <summary>Makes <see cref="Items{T}"/> from collection expressions and sequences.</summary>
public static class Items
{
    /// <summary>A copy of the span.</summary>
    public static Items<T> Create<T>(ReadOnlySpan<T> items) => new(items.ToArray());

    /// <summary>All of a sequence, in order.</summary>
    public static Items<T> ToItems<T>(this IEnumerable<T> items) => new(items.ToArray());
}
