using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Setup;

/// <summary>The library's movements and the organiser's own.</summary>
public sealed partial class MovementsPage(SetupStore store, SetupEditing editing) : ComponentBase, IDisposable
{
    private string filter = "";
    private string? wrong;

    private SetupStore Store { get; } = store;

    /// <inheritdoc/>
    public void Dispose() => Store.Changed -= Draw;

    /// <inheritdoc/>
    protected override Task OnInitializedAsync()
    {
        Store.Changed += Draw;
        return Task.WhenAll(editing.Read(), editing.ReadLibrary());
    }

    private void Draw() => _ = InvokeAsync(StateHasChanged);

    private async Task Delete(object document) => wrong = (await editing.Delete(document))?.Detail;

    private async Task Undo() => wrong = (await editing.Undo())?.Detail;
}
