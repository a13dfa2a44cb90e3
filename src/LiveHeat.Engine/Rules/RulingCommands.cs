using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Rules;

public abstract partial record HeatCommand
{
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

        /// <summary>Where parts are scored apart: see <see cref="Cost.Part"/>.</summary>
        public int? Part { get; init; }
    }

    /// <summary>The head judge is at the lane.</summary>
    public sealed record AnswerCall : OnLane;
}
