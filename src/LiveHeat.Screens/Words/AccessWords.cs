using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>Signing in and joining.</summary>
public static class AccessWords
{
    public const string DeskTitle = "Sign in at the desk";
    public const string DeskHelp = "The desk sets up heats, gives GO and freezes results. Its passphrase was printed where the server was first started.";
    public const string Passphrase = "Passphrase";
    public const string YourName = "Your name";
    public const string NameHelp = "It stands beside everything you do, and on the result.";
    public const string SignIn = "Sign in";
    public const string SignOut = "Sign out";
    public const string PassphraseMissing = "Type the passphrase.";
    public const string NameMissing = "Type your name.";
    public const string OtherScreens = "No passphrase needed";
    public const string HeadJudgeScreen = "Head judge";
    public const string AnnouncerScreen = "Announcer";
    public const string JoinTitle = "Join";
    public const string JoinHelp = "Type your name and press the button. The code is used only when you press it.";
    public const string Code = "Join code";
    public const string CodeHelp = "Eight letters and digits, from the desk.";
    public const string CodeMissing = "A join code has eight letters and digits. Look at the paper again, or ask the desk.";
    public const string Join = "Join";
    public const string HeadJudgeOnly = "This screen is for the head judge.";
    public const string HeadJudgeHelp = "Ask the desk for the head judge's join code. The head judge signs results in a sign-in of their own, so the desk's does not do.";
    public const string HaveCode = "I have a join code";

    public static string SignedInAs(string name, Role role) => name.Length == 0 ? CommonWords.Role(role) : $"{name}, {CommonWords.Role(role)}";

    public static string AlreadySignedIn(string name, Role role) => $"This browser is signed in as {SignedInAs(name, role)}. Joining replaces that.";
}
