using LiveHeat.Contracts.Setup;

namespace LiveHeat.Screens.Connection;

/// <summary>What went wrong: a stable code for the screen, a sentence for the person.</summary>
/// <param name="Code">As in docs/wire.md; "no-answer" and "odd-answer" are made here.</param>
/// <param name="Detail">A sentence to show.</param>
/// <param name="Errors">Field by field, for a form.</param>
/// <param name="Head">With "head-moved": the newest sequence.</param>
public sealed record Problem(string Code, string Detail, IReadOnlyList<FieldProblem> Errors, long? Head)
{
    /// <summary>The server was not reached, or did not answer in time.</summary>
    public const string NoAnswer = "no-answer";

    /// <summary>Something answered that is not our server, or not in our words.</summary>
    public const string OddAnswer = "odd-answer";

    /// <summary>A problem of a code and a sentence alone.</summary>
    public static Problem Of(string code, string detail) => new(code, detail, [], null);
}

/// <summary>The server's answer: a value, or a problem.</summary>
public sealed record Reply<T>(T? Value, Problem? Problem)
    where T : class
{
    /// <summary>It went well, or null.</summary>
    public static implicit operator Reply<T>(T value) => new(value, null);

    /// <summary>It did not.</summary>
    public static implicit operator Reply<T>(Problem problem) => new(null, problem);
}
