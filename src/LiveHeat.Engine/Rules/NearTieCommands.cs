using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Rules;

public abstract partial record HeatCommand
{
    /// <summary>Say who was first of two who were too close to measure, or that they tie.</summary>
    public sealed record DecideNearTie : Reasoned
    {
        /// <summary>Two lanes; where it is no tie, the first stands first.</summary>
        public required Items<LaneNumber> Lanes { get; init; }

        /// <summary>They share the place.</summary>
        public bool Tie { get; init; }
    }

    /// <summary>Say whether a last step too close to the cap was in time.</summary>
    public sealed record DecideCap : OnLane
    {
        /// <summary>It was.</summary>
        public required bool InTime { get; init; }

        /// <summary>The round by the clock, from 1, at whose end it was done; null: at the cap.</summary>
        public int? Round { get; init; }
    }

    /// <summary>Have lanes do the work again in another heat.</summary>
    public sealed record OrderRerun : Reasoned
    {
        /// <summary>Which.</summary>
        public required Items<LaneNumber> Lanes { get; init; }

        /// <summary>The heat, set up for it.</summary>
        public required HeatId InHeat { get; init; }
    }
}
