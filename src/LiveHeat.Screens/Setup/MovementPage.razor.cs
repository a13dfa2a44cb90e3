using LiveHeat.Screens.Words;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace LiveHeat.Screens.Setup;

/// <summary>An organiser's own movement, with a picture if there is one.</summary>
public sealed partial class MovementPage(SetupStore store, SetupEditing editing, NavigationManager navigation) : ComponentBase, IDisposable
{
    private const string New = "new";
    private const int MostPictureBytes = 512 * 1024;
    private OwnMovementDraft? draft;
    private FormErrors errors = FormErrors.None;
    private ChosenPicture? chosen;
    private string? problem;
    private bool tried;

    [Parameter]
    public string Id { get; set; } = "";

    /// <summary>The movement that a new one begins as.</summary>
    [Parameter, SupplyParameterFromQuery]
    public string? From { get; set; }

    private SetupStore Store { get; } = store;

    /// <inheritdoc/>
    public void Dispose() => Store.Changed -= Draw;

    /// <inheritdoc/>
    protected override void OnInitialized() => Store.Changed += Draw;

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        await Task.WhenAll(editing.Read(), editing.ReadLibrary());
        var own = Store.All?.Movements.FirstOrDefault(movement => movement.Id == Id);
        var like = From is null ? null : Store.Choices.FirstOrDefault(choice => !choice.IsOwn && choice.Movement.Id == From)?.Movement;
        draft = Store.All is null ? null : own is not null ? OwnMovementDraft.Of(own) : OwnMovementDraft.New(like);
        (errors, chosen, problem, tried) = (FormErrors.None, null, null, false);
    }

    private void Draw() => _ = InvokeAsync(StateHasChanged);

    /// <summary>The errors are told once somebody tried to save.</summary>
    private void Check()
    {
        errors = tried ? draft!.Make(Taken()).Errors : FormErrors.None;
        problem = null;
    }

    /// <summary>The library's ids too, so that a copy can be told from what it was copied from.</summary>
    private IEnumerable<string> Taken() => Store.Choices.Select(choice => choice.Movement.Id).Append(New);

    private async Task ChoosePicture(InputFileChangeEventArgs change)
    {
        (chosen, problem) = (null, null);
        var file = change.File;
        if (file.Size > MostPictureBytes)
        {
            problem = MovementWords.PictureTooLarge;
            return;
        }

        await using var stream = file.OpenReadStream(MostPictureBytes);
        using var bytes = new MemoryStream();
        await stream.CopyToAsync(bytes);
        chosen = new ChosenPicture(file.Name, file.ContentType, bytes.ToArray());
    }

    private async Task Save()
    {
        tried = true;
        var (movement, found) = draft!.Make(Taken());
        errors = found;
        if (errors.All.Count > 0)
        {
            problem = string.Join(" ", errors.All.Select(error => error.Message).Distinct().Take(3));
            return;
        }

        if (await editing.Keep(movement) is { } refused)
        {
            (errors, problem) = (new FormErrors(refused.Errors), refused.Detail);
            return;
        }

        // From here on it has its id, also when the picture has to be sent again.
        draft = OwnMovementDraft.Of(movement);
        if (chosen is { } picture && await editing.Attach(movement.Id, picture.Type, picture.Bytes) is { } noPicture)
        {
            problem = noPicture.Detail;
            return;
        }

        navigation.NavigateTo("setup/movements");
    }

    private sealed record ChosenPicture(string Name, string Type, byte[] Bytes);
}
