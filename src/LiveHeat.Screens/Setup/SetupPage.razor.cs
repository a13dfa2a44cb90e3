using LiveHeat.Contracts.Setup;
using Microsoft.AspNetCore.Components;
using MudBlazor;

namespace LiveHeat.Screens.Setup;

/// <summary>Everything there is to set up, in the order in which it is needed; the next thing to do stands out.</summary>
public sealed partial class SetupPage(SetupStore store, SetupEditing editing) : ComponentBase, IDisposable
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

    /// <summary>What is to be done next; null when all is there.</summary>
    private static string? Next(SetupAll all) => all switch
    {
        { Competition.Name.Length: 0 } => "competition",
        { Divisions.Count: 0 } => "divisions",
        { Workouts.Count: 0 } => "workouts",
        { Teams.Count: 0 } => "teams",
        { Heats.Count: 0 } => "heats",
        _ => null,
    };

    private static string Mark(SetupAll all, string part) => Next(all) == part ? "next" : "";

    private static Variant Fill(SetupAll all, string part) => Next(all) == part ? Variant.Filled : Variant.Outlined;
}
