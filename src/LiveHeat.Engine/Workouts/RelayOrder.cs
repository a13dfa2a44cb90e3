namespace LiveHeat.Engine.Workouts;

/// <summary>Who does which part. A closed family.</summary>
public abstract record RelayOrder
{
    private RelayOrder()
    {
    }

    /// <summary>One round each in turn: A, B, C, A and so on.</summary>
    public sealed record InTurn : RelayOrder;

    /// <summary>Several rounds each before the tag: A, A, B, B and so on.</summary>
    /// <param name="Size">Rounds in a block, from 1.</param>
    public sealed record Blocks(int Size) : RelayOrder;

    /// <summary>A change after every set.</summary>
    public sealed record EachMovement : RelayOrder;

    /// <summary>Somebody has written down who does each round; a short list starts again from its beginning.</summary>
    /// <param name="Athletes">Numbers in the team, from 1.</param>
    public sealed record Listed(Items<int> Athletes) : RelayOrder;

    /// <summary>The team works as one; nobody tags.</summary>
    public sealed record Together : RelayOrder;
}
