using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Rules;

public abstract partial record HeatCommand
{
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

        /// <summary>Lanes whose appeal is open, as the signer was told: their results are signed as pending.</summary>
        public Items<LaneNumber>? Pending { get; init; }
    }

    /// <summary>Open it again.</summary>
    public sealed record Reopen : Reasoned;
}
