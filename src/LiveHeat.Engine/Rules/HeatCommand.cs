using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Rules;

/// <summary>What somebody at the desk, or a judge about a seat, asks for. It becomes one fact, or is refused with a reason.</summary>
public abstract record HeatCommand
{
    private HeatCommand()
    {
    }

    /// <summary>Made by whoever asks; the fact takes it over, so that asking again is safe.</summary>
    public required FactId Id { get; init; }

    /// <summary>A command with a reason.</summary>
    public abstract record Reasoned : HeatCommand
    {
        private protected Reasoned()
        {
        }

        /// <summary>Why; may be empty where it may follow later.</summary>
        public string Reason { get; init; } = "";
    }

    /// <summary>A command about one lane.</summary>
    public abstract record OnLane : Reasoned
    {
        private protected OnLane()
        {
        }

        /// <summary>The lane.</summary>
        public required LaneNumber Lane { get; init; }
    }

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

    /// <summary>Do from this step on again.</summary>
    public sealed record SendBack : OnLane
    {
        /// <summary>The step that is open again.</summary>
        public required int Step { get; init; }
    }

    /// <summary>Make up reps of a set.</summary>
    public sealed record OweReps : OnLane
    {
        /// <summary>The set.</summary>
        public required int Step { get; init; }

        /// <summary>How many, from 1.</summary>
        public required int Reps { get; init; }
    }

    /// <summary>Stop the lane's own clock.</summary>
    public sealed record HoldLane : OnLane
    {
        /// <summary>Whether the lane's cap moves.</summary>
        public bool MovesCap { get; init; } = true;
    }

    /// <summary>Let the lane go on.</summary>
    public sealed record ResumeLane : OnLane;

    /// <summary>Give or take time.</summary>
    public sealed record AdjustTime : OnLane
    {
        /// <summary>Negative helps the team.</summary>
        public required int AdjustMs { get; init; }

        /// <summary>Whether the lane's cap moves.</summary>
        public bool MovesCap { get; init; }
    }

    /// <summary>Another relay order or other athletes from a step on.</summary>
    public sealed record ChangeLineUp : OnLane
    {
        /// <summary>The first step of the new order.</summary>
        public required int FromStep { get; init; }

        /// <summary>Names in relay order, as many as before.</summary>
        public required Items<string> Athletes { get; init; }
    }

    /// <summary>Another division's prescription from a step on.</summary>
    public sealed record TakeVariant : OnLane
    {
        /// <summary>The first step of it.</summary>
        public required int FromStep { get; init; }

        /// <summary>The division's id.</summary>
        public required string Prescription { get; init; }
    }

    /// <summary>A command about another fact.</summary>
    public abstract record OnFact : Reasoned
    {
        private protected OnFact()
        {
        }

        /// <summary>The fact.</summary>
        public required FactId Target { get; init; }
    }

    /// <summary>The fact does not count.</summary>
    public sealed record Void : OnFact;

    /// <summary>The held tap counts.</summary>
    public sealed record Admit : OnFact;

    /// <summary>The reason for a ruling, later.</summary>
    public sealed record GiveReason : OnFact;

    /// <summary>Add what no phone recorded.</summary>
    public sealed record Add : Reasoned
    {
        /// <summary>Where it was found.</summary>
        public required Source Source { get; init; }

        /// <summary>The fact.</summary>
        public required HeatFact.Floor Tap { get; init; }
    }

    /// <summary>Warn the team.</summary>
    public sealed record Warn : OnLane;

    /// <summary>Seconds onto the result, or reps off it.</summary>
    public sealed record Penalise : OnLane
    {
        /// <summary>Milliseconds, from 0.</summary>
        public int AddMs { get; init; }

        /// <summary>Reps, from 0.</summary>
        public int Reps { get; init; }
    }

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
    }

    /// <summary>Have lanes do the work again in another heat.</summary>
    public sealed record OrderRerun : Reasoned
    {
        /// <summary>Which.</summary>
        public required Items<LaneNumber> Lanes { get; init; }

        /// <summary>The heat, set up for it.</summary>
        public required HeatId InHeat { get; init; }
    }

    /// <summary>The head judge is at the lane.</summary>
    public sealed record AnswerCall : OnLane;

    /// <summary>Close the facts for review.</summary>
    public sealed record Freeze : HeatCommand
    {
        /// <summary>The sequence its author saw.</summary>
        public required long Head { get; init; }

        /// <summary>Why over taps that have not arrived.</summary>
        public string? Over { get; init; }
    }

    /// <summary>Sign the result.</summary>
    public sealed record Certify : HeatCommand
    {
        /// <summary>The sequence its author saw.</summary>
        public required long Head { get; init; }
    }

    /// <summary>Open it again.</summary>
    public sealed record Reopen : Reasoned;
}
