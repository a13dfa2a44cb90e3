using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Clock;

/// <summary>A text that changes with time alone, such as a clock. It draws itself and nothing around it.</summary>
public sealed partial class RunningText(TimeProvider time) : ComponentBase, IDisposable
{
    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(100);
    private ITimer? timer;
    private string shown = "";

    /// <inheritdoc/>
    public void Dispose() => timer?.Dispose();

    /// <inheritdoc/>
    protected override void OnInitialized() => timer = time.CreateTimer(_ => InvokeAsync(Look), null, Beat, Beat);

    /// <inheritdoc/>
    protected override void OnParametersSet() => shown = Text();

    private void Look()
    {
        var now = Text();
        if (now != shown)
        {
            shown = now;
            StateHasChanged();
        }
    }
}
