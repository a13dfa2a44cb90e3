using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Heats;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Desk;

/// <summary>The desk's home: all heats, what each needs next, and two at once when one is under review.</summary>
public sealed partial class ProgramPage(ProgramStore program, HeatApi api) : ComponentBase, IDisposable
{
    private ProgramStore Program { get; } = program;

    /// <inheritdoc/>
    public void Dispose() => Program.Changed -= Draw;

    /// <inheritdoc/>
    protected override void OnInitialized() => Program.Changed += Draw;

    private void Draw() => _ = InvokeAsync(StateHasChanged);
}
