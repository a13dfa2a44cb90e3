using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Heats;

public abstract partial record HeatFact
{
    /// <summary>GO is set to an instant ahead; every screen counts down by its own synchronised clock.</summary>
    public sealed record StartScheduled : Desk
    {
        /// <summary>The new start's id.</summary>
        public required string Start { get; init; }

        /// <summary>The instant of GO.</summary>
        public required Instant GoAt { get; init; }
    }

    /// <summary>The horn went without us. The same start again replaces its instant.</summary>
    public sealed record StartObserved : Desk
    {
        /// <summary>The start's id.</summary>
        public required string Start { get; init; }

        /// <summary>When the horn went.</summary>
        public required Instant GoAt { get; init; }

        /// <summary>How wrong that may be, in milliseconds either way.</summary>
        public required int UncertaintyMs { get; init; }

        /// <summary>Why, or how it was observed.</summary>
        public string Reason { get; init; } = "";
    }

    /// <summary>A desk fact on the whole heat with a reason.</summary>
    public abstract record Told : Desk
    {
        private protected Told()
        {
        }

        /// <summary>Why.</summary>
        public string Reason { get; init; } = "";
    }

    /// <summary>The start does not count; what was tapped on it is held.</summary>
    public sealed record StartRecalled : Told
    {
        /// <summary>Which start.</summary>
        public required string Start { get; init; }
    }

    /// <summary>Everybody stops; the clock stands still.</summary>
    public sealed record HeatHalted : Told;

    /// <summary>The heat goes on from where it stood.</summary>
    public sealed record HeatResumed : Told;

    /// <summary>A halted heat is not resumed: it will have a new start.</summary>
    public sealed record CallReturned : Told;

    /// <summary>The heat is over: phones stop asking.</summary>
    public sealed record HeatEnded : Told;
}
