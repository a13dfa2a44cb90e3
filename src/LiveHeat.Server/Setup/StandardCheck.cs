using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using LiveHeat.Server.Library;

namespace LiveHeat.Server.Setup;

/// <summary>Finds what cannot be in a standard told part by part.</summary>
internal static class StandardCheck
{
    /// <summary>Most sentences in a list.</summary>
    public const int MostInList = 20;

    private const int MostInSentence = 500;

    /// <param name="standard">Tidy.</param>
    /// <param name="at">What the paths of its fields begin with: empty, or such as <c>movements[0].fullStandard.</c>.</param>
    public static IEnumerable<FieldError> Errors(Standard standard, string at = "") =>
        SetupText.Text($"{at}start", "The start position", standard.Start)
            .Concat(SetupText.Text($"{at}finish", "The finish position", standard.Finish))
            .Concat(Sentences($"{at}between", "What must hold", standard.Between))
            .Concat(Sentences($"{at}allowed", "What is allowed", standard.Allowed))
            .Concat(Faults(standard.Faults, $"{at}faults"))
            .Concat(standard.Caution is null ? [] : Sentence($"{at}caution", "The caution", standard.Caution))
            .Concat(standard.Picture is null || PictureAddress.KeyOf(standard.Picture) is not null
                ? [] : [new FieldError($"{at}picture", "This is not the address of a picture on this server. Attach the picture to a movement, or leave it out.")]);

    /// <summary>A sentence that must say something.</summary>
    public static IEnumerable<FieldError> Sentence(string field, string what, string? text) =>
        Access.PlainText.Wrong(what, text, MostInSentence) is { } wrong ? [new(field, wrong)] : [];

    private static IEnumerable<FieldError> Sentences(string at, string what, Items<string> sentences) =>
        TooMany(at, what, sentences.Count).Concat(sentences.SelectMany((sentence, i) => Sentence($"{at}[{i}]", what, sentence)));

    private static IEnumerable<FieldError> Faults(Items<NamedFault> faults, string at)
    {
        foreach (var error in TooMany(at, "The list of faults", faults.Count))
        {
            yield return error;
        }

        foreach (var (fault, i) in faults.Select((fault, i) => (fault, i)))
        {
            foreach (var error in SetupText.Name($"{at}[{i}].name", "A fault", fault.Name).Concat(SetupText.Text($"{at}[{i}].how", $"What {SetupText.Quoted(fault.Name)} means", fault.How)))
            {
                yield return error;
            }

            if (faults.Take(i).Any(other => string.Equals(other.Name, fault.Name, StringComparison.OrdinalIgnoreCase)))
            {
                yield return new($"{at}[{i}].name", $"Two faults are called {SetupText.Quoted(fault.Name)}. A judge could not tell the buttons apart.");
            }
        }
    }

    private static IEnumerable<FieldError> TooMany(string at, string what, int count) =>
        count > MostInList ? [new(at, $"{what} has {count} lines. Write at most {MostInList}.")] : [];
}
