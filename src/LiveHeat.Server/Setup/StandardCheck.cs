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
        SetupText.Text($"{at}start", SetupRefusals.Start, standard.Start)
            .Concat(SetupText.Text($"{at}finish", SetupRefusals.Finish, standard.Finish))
            .Concat(Sentences($"{at}between", SetupRefusals.MustHold, standard.Between))
            .Concat(Sentences($"{at}allowed", SetupRefusals.Allowed, standard.Allowed))
            .Concat(Faults(standard.Faults, $"{at}faults"))
            .Concat(standard.Caution is null ? [] : Sentence($"{at}caution", SetupRefusals.Caution, standard.Caution))
            .Concat(standard.Picture is null || PictureAddress.KeyOf(standard.Picture) is not null
                ? [] : [new FieldError($"{at}picture", SetupRefusals.NoPictureAddress)]);

    /// <summary>A sentence that must say something.</summary>
    public static IEnumerable<FieldError> Sentence(string field, Telling what, string? text) =>
        Access.PlainText.Wrong(what, text, MostInSentence) is { } wrong ? [new(field, wrong)] : [];

    private static IEnumerable<FieldError> Sentences(string at, Telling what, Items<string> sentences) =>
        TooMany(at, what, sentences.Count).Concat(sentences.SelectMany((sentence, i) => Sentence($"{at}[{i}]", what, sentence)));

    private static IEnumerable<FieldError> Faults(Items<NamedFault> faults, string at)
    {
        foreach (var error in TooMany(at, SetupRefusals.Faults, faults.Count))
        {
            yield return error;
        }

        foreach (var (fault, i) in faults.Select((fault, i) => (fault, i)))
        {
            foreach (var error in SetupText.Name($"{at}[{i}].name", SetupRefusals.Fault, fault.Name).Concat(SetupText.Text($"{at}[{i}].how", SetupRefusals.FaultMeans(fault.Name), fault.How)))
            {
                yield return error;
            }

            if (faults.Take(i).Any(other => string.Equals(other.Name, fault.Name, StringComparison.OrdinalIgnoreCase)))
            {
                yield return new($"{at}[{i}].name", SetupRefusals.TwoFaults(fault.Name));
            }
        }
    }

    private static IEnumerable<FieldError> TooMany(string at, Telling what, int count) =>
        count > MostInList ? [new(at, SetupRefusals.TooManyLines(count, what, MostInList))] : [];
}
