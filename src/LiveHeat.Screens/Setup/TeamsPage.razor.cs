using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Setup;

/// <summary>The teams: one by one, or many pasted at once.</summary>
public sealed partial class TeamsPage(SetupStore store, SetupEditing editing) : ComponentBase, IDisposable
{
    private string? wrong;

    private SetupStore Store { get; } = store;

    /// <inheritdoc/>
    public void Dispose() => Store.Changed -= Draw;

    /// <inheritdoc/>
    protected override Task OnInitializedAsync()
    {
        Store.Changed += Draw;
        return editing.Read();
    }

    private void Draw() => _ = InvokeAsync(StateHasChanged);

    private async Task Delete(object document) => wrong = (await editing.Delete(document))?.Detail;

    private async Task Undo() => wrong = (await editing.Undo())?.Detail;
}
