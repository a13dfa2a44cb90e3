using LiveHeat.Contracts.Language;

namespace LiveHeat.Screens.Words;

/// <summary>What is said when something goes wrong that the server has no sentence for.</summary>
public static class ProblemWords
{
    private static readonly Wording Words = new(typeof(ProblemWords));

    public static string NoAnswer => Words[nameof(NoAnswer)];
    public static string NotOurWords => Words[nameof(NotOurWords)];
    public static string TryingAgain => Words[nameof(TryingAgain)];

    public static string OddAnswer(int status) => status switch
    {
        401 or 403 => Words[$"{nameof(OddAnswer)}.SignIn"],
        404 => Words[$"{nameof(OddAnswer)}.Unknown"],
        >= 500 => Words.Say($"{nameof(OddAnswer)}.Fault", status),
        _ => Words.Say($"{nameof(OddAnswer)}.Other", status),
    };

    /// <summary>A sentence with its code behind it, so that somebody on the phone can say which one it was.</summary>
    public static string WithCode(string detail, string code) => $"{detail} ({code})";
}
