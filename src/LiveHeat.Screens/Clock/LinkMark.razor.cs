using LiveHeat.Screens.Heats;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Clock;

/// <summary>Whether this screen hears the server.</summary>
public sealed partial class LinkMark(TimeProvider time) : ComponentBase, IDisposable
{
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(1);
    private ITimer? timer;

    /// <summary>The store whose link it tells.</summary>
    [Parameter, EditorRequired]
    public required HeatStore Store { get; set; }

    /// <inheritdoc/>
    public void Dispose() => timer?.Dispose();

    /// <inheritdoc/>
    protected override void OnInitialized() => timer = time.CreateTimer(_ => InvokeAsync(StateHasChanged), null, Beat, Beat);
}
