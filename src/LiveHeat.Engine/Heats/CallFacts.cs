namespace LiveHeat.Engine.Heats;

public abstract partial record HeatFact
{
    /// <summary>The heat is called, with all there is to know: the ledger alone can replay it.</summary>
    public sealed record HeatCalled : Desk
    {
        /// <summary>The whole heat as it stood when called.</summary>
        public required HeatSnapshot Snapshot { get; init; }
    }

    /// <summary>The call is put right before GO; phones confirm again.</summary>
    public sealed record CallReplaced : Desk
    {
        /// <summary>The whole heat as it stands now.</summary>
        public required HeatSnapshot Snapshot { get; init; }
    }

    /// <summary>Somebody judges the lane from now on. A new primary ends the primary before.</summary>
    public sealed record SeatTaken : LaneDesk
    {
        /// <summary>The new seat.</summary>
        public required SeatId Seat { get; init; }

        /// <summary>What for.</summary>
        public required Duty Duty { get; init; }
    }

    /// <summary>The seat ends now.</summary>
    public sealed record SeatGivenUp : LaneDesk
    {
        /// <summary>Which.</summary>
        public required SeatId Seat { get; init; }
    }

    /// <summary>The lane's judge has checked phone, lane and team.</summary>
    public sealed record LaneReady : LaneDesk
    {
        /// <summary>The judge's seat.</summary>
        public required SeatId Seat { get; init; }
    }

    /// <summary>Lanes that count as ready although their phone did not say so, by name.</summary>
    public sealed record LanesOverridden : Desk
    {
        /// <summary>Which lanes.</summary>
        public required Items<LaneNumber> Lanes { get; init; }

        /// <summary>Why.</summary>
        public string Reason { get; init; } = "";
    }

    /// <summary>The team does not start.</summary>
    public sealed record LaneWithdrawn : LaneDesk;
}
