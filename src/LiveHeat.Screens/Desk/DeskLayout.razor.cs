using LiveHeat.Screens.Access;
using LiveHeat.Screens.Heats;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Desk;

/// <summary>Around the desk's pages: where one can go, who is signed in, and nothing at all for anybody else.</summary>
public sealed partial class DeskLayout(SignInStore signIn, ProgramStore program, HeatStore heat, SigningIn signingIn) : LayoutComponentBase, IDisposable
{
    [CascadingParameter]
    private ScreenLayout Screen { get; set; } = null!;

    private SignInStore SignIn { get; } = signIn;

    private ProgramStore Program { get; } = program;

    private HeatStore Heat { get; } = heat;

    /// <inheritdoc/>
    public void Dispose()
    {
        SignIn.Changed -= Draw;
        Program.Changed -= Draw;
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        SignIn.Changed += Draw;
        Program.Changed += Draw;
    }

    private Task SignOut() => signingIn.Out();

    private void Draw() => _ = InvokeAsync(StateHasChanged);
}
