using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Heats;

public abstract partial record HeatFact
{
    /// <summary>The team does from this step on again: what was done of it and after it no longer stands.</summary>
    public sealed record SentBack : LaneDesk
    {
        /// <summary>The step that is open again, from 1.</summary>
        public required int Step { get; init; }
    }

    /// <summary>Reps of a set that are to be made up before the set open now may count.</summary>
    public sealed record RepsOwed : LaneDesk
    {
        /// <summary>The set they belong to.</summary>
        public required int Step { get; init; }

        /// <summary>How many.</summary>
        public required int Reps { get; init; }
    }

    /// <summary>The lane's own clock stands still: the team may not work, through no fault of its own.</summary>
    public sealed record LaneHeld : LaneDesk
    {
        /// <summary>Whether the lane's cap moves by as much.</summary>
        public required bool MovesCap { get; init; }
    }

    /// <summary>The lane goes on.</summary>
    public sealed record LaneResumed : LaneDesk;

    /// <summary>Time given to the team or taken from it.</summary>
    public sealed record TimeAdjusted : LaneDesk
    {
        /// <summary>Added to the team's time; negative helps it.</summary>
        public required int AdjustMs { get; init; }

        /// <summary>Whether the lane's cap moves the other way by as much.</summary>
        public required bool MovesCap { get; init; }
    }

    /// <summary>Others, or another order, from this step on: a new plan version.</summary>
    public sealed record LineUpChanged : LaneDesk
    {
        /// <summary>The first step of the new order.</summary>
        public required int FromStep { get; init; }

        /// <summary>Names in relay order; as many as before.</summary>
        public required Items<string> Athletes { get; init; }
    }

    /// <summary>Another division's prescription from this step on: a new plan version.</summary>
    public sealed record VariantTaken : LaneDesk
    {
        /// <summary>The first step of the other prescription.</summary>
        public required int FromStep { get; init; }

        /// <summary>The division whose prescription is taken.</summary>
        public required string Prescription { get; init; }
    }

    /// <summary>A desk fact about another fact.</summary>
    public abstract record About : Desk
    {
        private protected About()
        {
        }

        /// <summary>The fact it is about.</summary>
        public required FactId Target { get; init; }

        /// <summary>Why.</summary>
        public string Reason { get; init; } = "";
    }

    /// <summary>A fact that does not count after all. It stays on the ledger.</summary>
    public sealed record Voided : About;

    /// <summary>A tap that was held (quarantined) counts after all.</summary>
    public sealed record Admitted : About;

    /// <summary>Why a ruling was made, told after it.</summary>
    public sealed record ReasonGiven : About;

    /// <summary>A fact that no phone recorded. It counts like one of the primary phone's.</summary>
    public sealed record FactAdded : Desk
    {
        /// <summary>Where it was found.</summary>
        public required Source Source { get; init; }

        /// <summary>The fact, with an id of its own.</summary>
        public required Floor Tap { get; init; }

        /// <summary>Why.</summary>
        public string Reason { get; init; } = "";

        /// <inheritdoc/>
        public override LaneNumber? AboutLane() => Tap.Lane;
    }

    /// <summary>A warning; the next one may cost.</summary>
    public sealed record Warned : LaneDesk;

    /// <summary>Seconds onto the result, or reps off it.</summary>
    public sealed record Penalised : LaneDesk
    {
        /// <summary>Added to the official time, milliseconds, not negative.</summary>
        public int AddMs { get; init; }

        /// <summary>Taken off the worth done, not negative.</summary>
        public int Reps { get; init; }

        /// <summary>Of work whose parts are scored apart, the part in which it costs: see <see cref="Cost.Part"/>.</summary>
        public int? Part { get; init; }
    }

    /// <summary>The head judge is at the lane.</summary>
    public sealed record CallAnswered : LaneDesk;
}
