using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Rules;

public abstract partial record HeatCommand
{
    /// <summary>Call the heat; the snapshot comes from the setup.</summary>
    public sealed record Call : HeatCommand;

    /// <summary>Call it again with the setup as it is now.</summary>
    public sealed record ReplaceCall : HeatCommand;

    /// <summary>Judge this lane from now on.</summary>
    public sealed record TakeSeat : OnLane
    {
        /// <summary>What for.</summary>
        public Duty Duty { get; init; } = Duty.Primary;
    }

    /// <summary>Stop judging this lane.</summary>
    public sealed record GiveUpSeat : OnLane
    {
        /// <summary>Which seat.</summary>
        public required SeatId Seat { get; init; }
    }

    /// <summary>Judge, phone and team are ready.</summary>
    public sealed record Ready : OnLane
    {
        /// <summary>The judge's seat.</summary>
        public required SeatId Seat { get; init; }
    }

    /// <summary>Count lanes as ready although their phone did not say so.</summary>
    public sealed record OverrideReady : Reasoned
    {
        /// <summary>Which.</summary>
        public required Items<LaneNumber> Lanes { get; init; }
    }

    /// <summary>The team does not start.</summary>
    public sealed record WithdrawLane : OnLane;
}
