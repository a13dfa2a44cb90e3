using LiveHeat.Screens.Rulings;

namespace LiveHeat.Screens.Words;

/// <summary>Adding from paper or video.</summary>
public static class AddedWords
{
    public const string NumberMissing = "Write the number too.";

    public static string Of(AddedKind kind) => kind switch
    {
        AddedKind.Done => "step done, or tag made",
        AddedKind.Count => "part of a set done",
        AddedKind.Value => "reading entered",
        AddedKind.GoodLift => "attempt: good lift",
        AddedKind.NoLift => "attempt: no lift",
        AddedKind.NoRep => "no-rep",
        AddedKind.TagFault => "tag missed",
        AddedKind.AtCap => "work of the open set at the time cap",
        AddedKind.Withdrew => "team withdrew",
        _ => "stopped for health",
    };

    public static string Number(AddedKind kind) => kind switch { AddedKind.Value => "Reading", AddedKind.GoodLift or AddedKind.NoLift => "Load", _ => "Count in the set" };
}
