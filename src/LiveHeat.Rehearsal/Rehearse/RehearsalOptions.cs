using LiveHeat.Contracts.Access;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Rehearsal.Rehearse;

/// <summary>A rehearsal of the demo competition on a server.</summary>
public sealed record RehearsalOptions
{
    /// <summary>The server's address.</summary>
    public required Uri Server { get; init; }

    /// <summary>The organiser's.</summary>
    public required string Passphrase { get; init; }

    /// <summary>The same seed gives the same teams, paces and mistakes.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>One lane is left to a visitor until the count-down.</summary>
    public bool FreeLane { get; init; }

    /// <summary>Ends after the scripted heats are certified. Otherwise the judges stay for whatever the visitor calls, until stopped.</summary>
    public bool UntilCertified { get; init; }

    /// <summary>How many heats the script runs; the rest is the visitor's.</summary>
    public int Heats { get; init; } = 2;

    /// <summary>What everything waits by; runs fast in a fast rehearsal, as the server's does.</summary>
    public TimeProvider Time { get; init; } = TimeProvider.System;

    /// <summary>The phones' own clocks: real ones. A test that stops the server's clock stops these too.</summary>
    public TimeProvider PhoneClock { get; init; } = TimeProvider.System;

    /// <summary>Told once, when the codes are made and before the first heat is called.</summary>
    public Action<VisitorCodes>? CodesMade { get; init; }
}

/// <summary>Codes for a visitor. A role or lane has one valid code at a time: the rehearsal uses the same ones.</summary>
/// <param name="HeadJudge">Head judge.</param>
/// <param name="Announcer">Announcer.</param>
/// <param name="FreeLane">The free lane's judge; null without one.</param>
public sealed record VisitorCodes(CodeMade HeadJudge, CodeMade Announcer, CodeMade? FreeLane);

/// <summary>How a rehearsal ended.</summary>
/// <param name="Results">The scripted heats' results in order, as the server gives them.</param>
public sealed record RehearsalOutcome(IReadOnlyList<ResultTable> Results);
