using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Setup;

/// <summary>Something in a form that cannot be, for people.</summary>
/// <param name="Field">Where: a path as in the JSON, such as <c>prescriptions[0].rounds</c>.</param>
/// <param name="Message">What is wrong and what to do, in a sentence.</param>
public sealed record FieldProblem(string Field, string Message)
{
    /// <summary>In the language now.</summary>
    public static FieldProblem Of(FieldError error) => new(error.Field, error.Why.Sentence());
}
