using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Rules;

public abstract partial record HeatCommand
{
    /// <summary>GO, so many milliseconds from now.</summary>
    public sealed record ScheduleStart : HeatCommand
    {
        /// <summary>3,000 to 120,000.</summary>
        public int InMs { get; init; } = 10_000;
    }

    /// <summary>The horn went without us.</summary>
    public sealed record ObserveStart : Reasoned
    {
        /// <summary>When; null with <see cref="AgoMs"/>.</summary>
        public Instant? GoAt { get; init; }

        /// <summary>How long ago, milliseconds; 0 is now.</summary>
        public int AgoMs { get; init; }

        /// <summary>How wrong that may be either way.</summary>
        public int UncertaintyMs { get; init; } = 500;

        /// <summary>The start whose instant is put right; null for a new one.</summary>
        public string? Start { get; init; }
    }

    /// <summary>The start does not count.</summary>
    public sealed record RecallStart : Reasoned;

    /// <summary>Everybody stops.</summary>
    public sealed record Halt : Reasoned;

    /// <summary>The heat goes on.</summary>
    public sealed record Resume : Reasoned;

    /// <summary>The halted heat will have a new start.</summary>
    public sealed record ReturnToCall : Reasoned;

    /// <summary>The heat is over.</summary>
    public sealed record End : Reasoned;
}
