using LiveHeat.Screens.Look;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Replays;

/// <summary>Space plays and pauses, the arrows go to the fact before and the next, with shift 10 s. Whoever writes in a field keeps these keys.</summary>
public sealed class ReplayKeys(PageScript page) : ComponentBase, IDisposable
{
    /// <summary>A key: " ", "ArrowLeft" or "ArrowRight"; and whether shift was held.</summary>
    [Parameter, EditorRequired]
    public required Action<string, bool> Pressed { get; set; }

    /// <inheritdoc/>
    public void Dispose()
    {
        page.Key -= Press;
        _ = page.ListenToKeys(false);
    }

    /// <inheritdoc/>
    protected override Task OnInitializedAsync()
    {
        page.Key += Press;
        return page.ListenToKeys(true);
    }

    private void Press(string key, bool shift) => Pressed(key, shift);
}
