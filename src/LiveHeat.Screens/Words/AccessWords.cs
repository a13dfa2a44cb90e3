using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>Signing in and joining.</summary>
public static class AccessWords
{
    private static readonly Wording Words = new(typeof(AccessWords));

    public static string DeskTitle => Words[nameof(DeskTitle)];
    public static string DeskHelp => Words[nameof(DeskHelp)];
    public static string Passphrase => Words[nameof(Passphrase)];
    public static string YourName => Words[nameof(YourName)];
    public static string NameHelp => Words[nameof(NameHelp)];
    public static string SignIn => Words[nameof(SignIn)];
    public static string SignOut => Words[nameof(SignOut)];
    public static string PassphraseMissing => Words[nameof(PassphraseMissing)];
    public static string NameMissing => Words[nameof(NameMissing)];
    public static string OtherScreens => Words[nameof(OtherScreens)];
    public static string HeadJudgeScreen => Words[nameof(HeadJudgeScreen)];
    public static string AnnouncerScreen => Words[nameof(AnnouncerScreen)];
    public static string JoinTitle => Words[nameof(JoinTitle)];
    public static string JoinHelp => Words[nameof(JoinHelp)];
    public static string Code => Words[nameof(Code)];
    public static string CodeHelp => Words[nameof(CodeHelp)];
    public static string CodeMissing => Words[nameof(CodeMissing)];
    public static string Join => Words[nameof(Join)];
    public static string HeadJudgeOnly => Words[nameof(HeadJudgeOnly)];
    public static string HeadJudgeHelp => Words[nameof(HeadJudgeHelp)];
    public static string HaveCode => Words[nameof(HaveCode)];

    public static string SignedInAs(string name, Role role) => name.Length == 0 ? CommonWords.Role(role) : $"{name}, {CommonWords.Role(role)}";

    public static string AlreadySignedIn(string name, Role role) => Words.Say(nameof(AlreadySignedIn), SignedInAs(name, role));
}
