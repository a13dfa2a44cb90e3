namespace LiveHeat.Screens.Words;

/// <summary>What is said when something goes wrong that the server has no sentence for.</summary>
public static class ProblemWords
{
    public const string NoAnswer = "The server does not answer. Check that this device is on the venue's network. Nothing is lost: press again when it is.";
    public const string NotOurWords = "The server answered something this screen does not understand. Load the page again: it may be older than the server.";
    public const string TryingAgain = "No answer yet. Trying again…";

    public static string OddAnswer(int status) => status switch
    {
        401 or 403 => "This browser is not signed in for that. Sign in again.",
        404 => "The server does not know this. Load the page again.",
        >= 500 => $"The server had a fault ({status}). Try again; if it stays, look at the server's log.",
        _ => $"The server answered {status}, which this screen did not expect. Load the page again.",
    };

    /// <summary>A sentence with its code behind it, so that somebody on the phone can say which one it was.</summary>
    public static string WithCode(string detail, string code) => $"{detail} ({code})";
}
