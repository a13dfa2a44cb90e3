using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Rules;

/// <summary>What somebody at the desk, or a judge about a seat, asks for. It becomes one fact, or is refused with a reason.</summary>
public abstract partial record HeatCommand
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

    /// <summary>A command about another fact.</summary>
    public abstract record OnFact : Reasoned
    {
        private protected OnFact()
        {
        }

        /// <summary>The fact.</summary>
        public required FactId Target { get; init; }
    }
}
