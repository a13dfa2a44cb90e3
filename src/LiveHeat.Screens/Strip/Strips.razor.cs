using System.Text.Json;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Contracts.Wire;
using LiveHeat.Screens.Clock;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace LiveHeat.Screens.Strip;

/// <summary>Hands sheet and frames to the strip module of LiveHeat.Floor, which moves by itself in between.</summary>
public sealed partial class Strips(IJSRuntime script) : ComponentBase, IAsyncDisposable
{
    private ElementReference root;
    private IJSObjectReference? module;
    private IJSObjectReference? strips;
    private Frame? shown;
    private Sheet? drawn;
    private int turn;
    private bool busy;
    private bool ended;

    [Parameter, EditorRequired]
    public required Sheet Sheet { get; set; }

    [Parameter, EditorRequired]
    public required Frame Frame { get; set; }

    [Parameter, EditorRequired]
    public required ISceneClock Clock { get; set; }

    [Parameter, EditorRequired]
    public required RenderFragment ChildContent { get; set; }

    [Parameter]
    public string Class { get; set; } = "";

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        ended = true;
        if (!busy)
        {
            await LetGo();
        }
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (busy || ended || IsShown)
        {
            return;
        }

        busy = true;
        try
        {
            await Show();
        }
        catch (JSDisconnectedException)
        {
            // The page is closing.
        }
        finally
        {
            busy = false;
        }

        if (ended)
        {
            await LetGo();
        }
    }

    private bool IsShown => ReferenceEquals(shown, Frame) && ReferenceEquals(drawn, Sheet) && turn == Clock.Turn;

    private async Task Show()
    {
        // Frames may come while the module is asked: the newest is shown next.
        while (!ended && !IsShown)
        {
            var (frame, sheet, turned) = (Frame, Sheet, Clock.Turn);
            var (now, rate) = ((double)Clock.Now.UnixMs, Clock.Rate);
            module ??= await script.InvokeAsync<IJSObjectReference>("import", "./strips.js");
            if (strips is null)
            {
                strips = await module.InvokeAsync<IJSObjectReference>("mount", root, Json(sheet), Json(frame), now, rate);
            }
            else
            {
                if (!ReferenceEquals(drawn, sheet))
                {
                    await strips.InvokeVoidAsync("take", Json(sheet));
                }

                await strips.InvokeVoidAsync("update", Json(frame), now, rate);
            }

            (shown, drawn, turn) = (frame, sheet, turned);
        }
    }

    private static string Json<T>(T value) => JsonSerializer.Serialize(value, WireJson.Options);

    private async ValueTask LetGo()
    {
        try
        {
            if (strips is not null)
            {
                await strips.InvokeVoidAsync("dispose");
                await strips.DisposeAsync();
            }

            if (module is not null)
            {
                await module.DisposeAsync();
            }
        }
        catch (JSDisconnectedException)
        {
            // The page is closing: nothing is left to let go of.
        }
    }
}
