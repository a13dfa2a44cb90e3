using System.Globalization;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Words;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Setup;

/// <summary>A heat: workout, time, and a team on each lane.</summary>
public sealed partial class HeatPage(SetupStore store, SetupEditing editing, ProgramStore program) : ComponentBase, IDisposable
{
    /// <summary>Stands in the address of a heat that is not there yet.</summary>
    private const string New = "new";

    private HeatDraft? draft;
    private FormErrors errors = FormErrors.None;
    private string? problem;

    [Parameter]
    public string Id { get; set; } = "";

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    private SetupStore Store { get; } = store;

    private bool Called => program.Find(new HeatId(Id)) is { Phase: not Phase.Planned };

    /// <inheritdoc/>
    public void Dispose() => Store.Changed -= Draw;

    /// <inheritdoc/>
    protected override void OnInitialized() => Store.Changed += Draw;

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        await editing.Read();
        draft = Store.All is { } all ? HeatDraft.Of(all.Heats.FirstOrDefault(heat => heat.Id == Id), all) : null;
        (errors, problem) = (FormErrors.None, null);
    }

    private void Draw() => _ = InvokeAsync(StateHasChanged);

    private void Put(int lane, ChangeEventArgs change) => draft!.Lanes[lane - 1] = change.Value?.ToString() ?? "";

    private void Widen(ChangeEventArgs change)
    {
        if (int.TryParse(change.Value?.ToString(), NumberStyles.None, CultureInfo.InvariantCulture, out var count))
        {
            draft!.SetLanes(count);
        }
    }

    private async Task Save()
    {
        (var heat, errors) = draft!.Make(Store.All!);
        problem = null;
        if (heat is null)
        {
            return;
        }

        if (await editing.Keep(heat) is { } refused)
        {
            (errors, problem) = (new FormErrors(refused.Errors), refused.Detail);
            return;
        }

        Navigation.NavigateTo("setup");
    }
}
