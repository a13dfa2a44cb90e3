using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Rules;

public abstract partial record HeatCommand
{
    /// <summary>Put the team out of the workout.</summary>
    public sealed record Disqualify : OnLane;

    /// <summary>Take a team's appeal in writing.</summary>
    public sealed record FileAppeal : OnLane
    {
        /// <summary>Who appeals, by name.</summary>
        public required string Member { get; init; }

        /// <summary>What about.</summary>
        public required string Grounds { get; init; }
    }

    /// <summary>Decide an appeal.</summary>
    public sealed record DecideAppeal : OnFact
    {
        /// <summary>What comes of it.</summary>
        public required AppealOutcome Outcome { get; init; }

        /// <summary>With seconds: milliseconds onto the time; negative helps the team.</summary>
        public int AddMs { get; init; }

        /// <summary>With reps: off the worth done; negative helps the team.</summary>
        public int Reps { get; init; }

        /// <summary>With a rerun: the heat, set up for it.</summary>
        public HeatId? InHeat { get; init; }

        /// <summary>With seconds or reps, where parts are scored apart: see <see cref="Cost.Part"/>.</summary>
        public int? Part { get; init; }
    }
}
