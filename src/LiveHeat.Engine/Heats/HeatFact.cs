using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Heats;

/// <summary>Something that happened in a heat. The ledger is a list of these, and nothing else decides a result.</summary>
/// <remarks>A closed family: a floor fact (a tap) or a desk fact. A wrong one is put right by a later one; both stay.</remarks>
public abstract partial record HeatFact
{
    private HeatFact()
    {
    }

    /// <summary>Made by whoever made the fact.</summary>
    public required FactId Id { get; init; }

    /// <summary>When it happened, on the server's timebase.</summary>
    public required Instant Instant { get; init; }

    /// <summary>The lane it is about; null when it is about the whole heat.</summary>
    /// <returns>A lane of the heat, or one that the heat does not have: the fold flags those.</returns>
    public virtual LaneNumber? AboutLane() => null;

    /// <summary>A fact from the floor: what a lane's judge saw.</summary>
    public abstract record Floor : HeatFact
    {
        private protected Floor()
        {
        }

        /// <summary>The judge's lane.</summary>
        public required LaneNumber Lane { get; init; }

        /// <summary>The seat the judge held when tapping; empty when the phone knew none.</summary>
        public SeatId Seat { get; init; } = new("");

        /// <summary>Half-width of the interval that holds the true instant: the phone's clock error bound.</summary>
        public int UncertaintyMs { get; init; }

        /// <summary>The start the phone knew; null when it knew none (it missed the GO).</summary>
        public string? Start { get; init; }

        /// <summary>The plan version the tap was made on.</summary>
        public int Plan { get; init; } = 1;

        /// <summary>What the phone's own clocks said.</summary>
        public PhoneReadings? Phone { get; init; }

        /// <inheritdoc/>
        public sealed override LaneNumber? AboutLane() => Lane;
    }

    /// <summary>A fact from the desk, the head judge, or about seats. Its instant is the server's.</summary>
    public abstract record Desk : HeatFact
    {
        private protected Desk()
        {
        }

        /// <summary>Who did it.</summary>
        public required By By { get; init; }
    }

    /// <summary>A desk fact about one lane.</summary>
    public abstract record LaneDesk : Desk
    {
        private protected LaneDesk()
        {
        }

        /// <summary>The lane it is about.</summary>
        public required LaneNumber Lane { get; init; }

        /// <summary>Why; empty when it comes later (<see cref="ReasonGiven"/>).</summary>
        public string Reason { get; init; } = "";

        /// <inheritdoc/>
        public sealed override LaneNumber? AboutLane() => Lane;
    }
}

/// <summary>A phone's clocks at the tap.</summary>
/// <param name="MonoMs">The monotonic clock since the page's time origin, milliseconds.</param>
/// <param name="WallMs">The wall clock, Unix milliseconds.</param>
/// <param name="OffsetMs">What was added to the phone's clock to get the instant, milliseconds.</param>
public sealed record PhoneReadings(double MonoMs, double WallMs, double OffsetMs);
