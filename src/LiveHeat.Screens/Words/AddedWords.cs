using LiveHeat.Contracts.Language;
using LiveHeat.Screens.Rulings;

namespace LiveHeat.Screens.Words;

/// <summary>Adding from paper or video.</summary>
public static class AddedWords
{
    private static readonly Wording Words = new(typeof(AddedWords));

    public static string NumberMissing => Words[nameof(NumberMissing)];

    public static string Of(AddedKind kind) => Words[$"{nameof(Of)}.{kind}"];

    public static string Number(AddedKind kind) => Words[$"{nameof(Number)}.{kind switch { AddedKind.Value => "Value", AddedKind.GoodLift or AddedKind.NoLift => "Load", _ => "Count" }}"];
}
