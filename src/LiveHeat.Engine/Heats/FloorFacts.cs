namespace LiveHeat.Engine.Heats;

public abstract partial record HeatFact
{
    /// <summary>A fact that names a step of the lane's plan, from 1.</summary>
    public abstract record AtStep : Floor
    {
        private protected AtStep()
        {
        }

        /// <summary>The step's number in the plan, from 1.</summary>
        public required int Step { get; init; }
    }

    /// <summary>A fact that completes its step and implies all steps before it.</summary>
    public abstract record Done : AtStep
    {
        private protected Done()
        {
        }

        /// <summary>False: complete by now, but not at this instant ("the lane is here now", "already working").</summary>
        public bool TimeKnown { get; init; } = true;
    }

    /// <summary>A set or a finish is complete.</summary>
    public sealed record StepDone : Done;

    /// <summary>The tag was made: the next athlete may work.</summary>
    public sealed record TagMade : Done;

    /// <summary>A value step is complete with this reading, in the step's unit.</summary>
    public sealed record ValueEntered : Done
    {
        /// <summary>What the machine or the bar said.</summary>
        public required decimal Value { get; init; }
    }

    /// <summary>An attempt is over, good or not: either completes its step. What is no lift counts as a no-rep of the movement, too.</summary>
    public sealed record AttemptJudged : Done
    {
        /// <summary>In the step's unit, above 0, at most <see cref="Workouts.Attempts.HeaviestLoad"/>, no finer than a hundredth.</summary>
        public required decimal Load { get; init; }

        /// <summary>A good lift; false: no lift.</summary>
        public required bool Good { get; init; }

        /// <summary>The named fault of what is no lift; null when the judge gave none.</summary>
        public string? Fault { get; init; }
    }

    /// <summary>So many units of the open set are done, counted from the set's beginning.</summary>
    public sealed record CountReached : AtStep
    {
        /// <summary>Absolute within the set, not an increment.</summary>
        public required int Count { get; init; }
    }

    /// <summary>A rep that does not meet the standard: it does not count and is repeated; the clock goes on (common practice, no source).</summary>
    public sealed record NoRep : AtStep
    {
        /// <summary>The named fault; null when the judge gave none.</summary>
        public string? Fault { get; init; }
    }

    /// <summary>The next athlete started without the tag.</summary>
    public sealed record TagFault : AtStep
    {
        /// <summary>The named fault; null when the judge gave none.</summary>
        public string? Fault { get; init; }
    }

    /// <summary>Not the athlete the plan names.</summary>
    public sealed record AthleteWorking : AtStep
    {
        /// <summary>Who works instead: a number in the team, from 1.</summary>
        public required int Athlete { get; init; }
    }

    /// <summary>How much of the open set was done when the cap came.</summary>
    public sealed record RepsAtCap : AtStep
    {
        /// <summary>Absolute within the set.</summary>
        public required int Count { get; init; }
    }

    /// <summary>A timekeeper's finish.</summary>
    public sealed record FinishTimed : Floor;

    /// <summary>The team works no more.</summary>
    public sealed record LaneStopped : Floor
    {
        /// <summary>Why.</summary>
        public required StopReason Reason { get; init; }
    }

    /// <summary>The judge takes one tap of the lane back.</summary>
    public sealed record Undone : Floor
    {
        /// <summary>The tap taken back. Undoing an undo has no effect; a head judge may void it.</summary>
        public required FactId Target { get; init; }
    }

    /// <summary>The judge wants the head judge at the lane.</summary>
    public sealed record HeadJudgeCalled : Floor
    {
        /// <summary>What about; null when nothing was said.</summary>
        public string? Note { get; init; }
    }

    /// <summary>The score was read to the captain at the lane.</summary>
    public sealed record ScoreReadBack : Floor
    {
        /// <summary>False: disputed.</summary>
        public required bool Agreed { get; init; }

        /// <summary>The captain's name.</summary>
        public required string Name { get; init; }
    }
}
