using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Rules;

namespace LiveHeat.Server.Heats;

/// <summary>What became of a command. A closed family.</summary>
public abstract record CommandResult
{
    private CommandResult()
    {
    }

    /// <summary>The id stands for something else already.</summary>
    public static readonly Refused Conflict = new(new Verdict.Refused("conflict", HeatRefusals.IdTaken));

    /// <summary>On disk.</summary>
    public sealed record Done(CommandAnswer Answer) : CommandResult;

    /// <summary>Not done, and why.</summary>
    public sealed record Refused(Verdict.Refused Why) : CommandResult;
}
