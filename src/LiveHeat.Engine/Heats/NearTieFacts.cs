namespace LiveHeat.Engine.Heats;

public abstract partial record HeatFact
{
    /// <summary>Two finishes closer than anybody could measure: people decide.</summary>
    public sealed record NearTieDecided : Told
    {
        /// <summary>The two lanes; where it is no tie, the one that was first stands first.</summary>
        public required Items<LaneNumber> Lanes { get; init; }

        /// <summary>True: they share the place.</summary>
        public required bool Tie { get; init; }
    }

    /// <summary>A step closer to the cap, or to the end of its round by the clock, than anybody could measure: people decide.</summary>
    public sealed record CapDecided : LaneDesk
    {
        /// <summary>True: it was done in time.</summary>
        public required bool InTime { get; init; }

        /// <summary>How close it had to be to be in question, milliseconds.</summary>
        public required int WithinMs { get; init; }

        /// <summary>The round by the clock, from 1, at whose end it was done; null: at the cap.</summary>
        public int? Round { get; init; }
    }

    /// <summary>The lanes do the work again in another heat, whose result counts for them.</summary>
    public sealed record RerunOrdered : Told
    {
        /// <summary>The lanes of this heat.</summary>
        public required Items<LaneNumber> Lanes { get; init; }

        /// <summary>The heat in which they do it again.</summary>
        public required HeatId InHeat { get; init; }
    }
}
