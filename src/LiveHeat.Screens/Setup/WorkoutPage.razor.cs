using LiveHeat.Contracts.Setup;
using LiveHeat.Engine.Workouts;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Setup;

/// <summary>A workout: movements, who does what, and each division's work. Checked by the engine's own rules while it is written.</summary>
public sealed partial class WorkoutPage(SetupStore store, SetupEditing editing, NavigationManager navigation) : ComponentBase, IDisposable
{
    private const string New = "new";
    private WorkoutDraft? draft;
    private Workout? made;
    private FormErrors errors = FormErrors.None;
    private Removed? removed;
    private string? problem;
    private bool tried;

    [Parameter]
    public string Id { get; set; } = "";

    private SetupStore Store { get; } = store;

    /// <inheritdoc/>
    public void Dispose() => Store.Changed -= Draw;

    /// <inheritdoc/>
    protected override void OnInitialized() => Store.Changed += Draw;

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        await Task.WhenAll(editing.Read(), editing.ReadLibrary());
        draft = Store.All is { Divisions.Count: > 0 } all ? WorkoutDraft.Of(all.Workouts.FirstOrDefault(workout => workout.Id == Id), all) : null;
        (errors, removed, problem, tried) = (FormErrors.None, null, null, false);
        Check();
    }

    private void Draw() => _ = InvokeAsync(StateHasChanged);

    /// <summary>After each change: the preview always, the errors once somebody tried to save.</summary>
    private void Check()
    {
        if (draft is null || Store.All is not { } all)
        {
            return;
        }

        (made, var found) = draft.Make(all);
        errors = tried ? found : FormErrors.None;
        problem = null;
    }

    private void AddMovement()
    {
        draft!.AddMovement();
        Check();
    }

    private void AddChosen(MovementChoice choice)
    {
        draft!.AddMovement(choice.Movement);
        Check();
    }

    private void AddDivision(DivisionSetup division)
    {
        draft!.AddDivision(division);
        Check();
    }

    private void Remove<T>(List<T> list, int at, string words)
    {
        var item = list[at];
        removed = new Removed(words, () => list.Insert(Math.Min(at, list.Count), item));
        list.RemoveAt(at);
        Check();
    }

    private void PutBack()
    {
        removed!.PutBack();
        removed = null;
        Check();
    }

    private async Task Save()
    {
        tried = true;
        Check();
        if (errors.All.Count > 0)
        {
            problem = string.Join(" ", errors.All.Select(error => error.Message).Distinct().Take(3));
            return;
        }

        if (await editing.Keep(made!) is { } refused)
        {
            (errors, problem) = (new FormErrors(refused.Errors), refused.Detail);
            return;
        }

        navigation.NavigateTo("setup");
    }

    private sealed record Removed(string Words, Action PutBack);
}
