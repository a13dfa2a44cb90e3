using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Words;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Access;

/// <summary>Redeems a join code for head judge or announcer, when the button is pressed and not before: a link preview must not spend one.</summary>
public sealed partial class JoinPage(SignInStore signIn, SigningIn signingIn, NavigationManager navigation) : ComponentBase, IDisposable
{
    private string code = "";
    private string name = "";
    private string? codeError;
    private string? nameError;
    private string? refused;
    private bool busy;

    private SignInStore SignIn { get; } = signIn;

    /// <inheritdoc/>
    public void Dispose() => SignIn.Changed -= Draw;

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        SignIn.Changed += Draw;
        code = JoinCode.Spoken(JoinCode.Of(navigation.Uri));
    }

    private void Draw() => _ = InvokeAsync(StateHasChanged);

    private async Task Send()
    {
        codeError = JoinCode.IsWhole(code) ? null : AccessWords.CodeMissing;
        nameError = string.IsNullOrWhiteSpace(name) ? AccessWords.NameMissing : null;
        if (busy || (codeError ?? nameError) is not null)
        {
            return;
        }

        busy = true;
        refused = await signingIn.WithCode(code, name.Trim());
        busy = false;
        if (refused is null)
        {
            GoOn();
        }
    }

    /// <summary>To the role's own screen; the history keeps no code.</summary>
    private void GoOn()
    {
        if (SignIn.Me?.Role == Role.Judge)
        {
            navigation.NavigateTo("/pad/", forceLoad: true, replace: true);
            return;
        }

        navigation.NavigateTo(SignIn.Me?.Role switch { Role.HeadJudge => "head-judge", Role.Announcer => "announcer", _ => "" }, replace: true);
    }
}
