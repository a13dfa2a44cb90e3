using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Words;

/// <summary>A step's name. A plan names its sets after movements, which have names of their own; tags and finishes it names in English, for it is made before anybody reads it.</summary>
public static class StepWords
{
    private static readonly Wording Words = new(typeof(StepWords));

    private const string TagStarts = "tag ";
    private const string OnTheMat = "all on the mat";

    public static string Of(SheetStep step) => Of(step.Kind, step.Label);

    public static string Of(Step step) => Of(step.Kind, step.Label);

    /// <summary>A step of which only the number is known.</summary>
    public static string Number(int step) => Words.Say(nameof(Number), step);

    private static string Of(StepKind kind, string label) => kind switch
    {
        StepKind.Tag when label.StartsWith(TagStarts, StringComparison.Ordinal) => Tag(label[TagStarts.Length..]),
        StepKind.Finish => label == OnTheMat ? Mat : Line,
        _ => label,
    };

    private static string Tag(string name) => Words.Say(nameof(Tag), name);

    private static string Line => Words[nameof(Line)];

    private static string Mat => Words[nameof(Mat)];
}
