using LiveHeat.Screens.Connection;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Desk;

/// <summary>Says that the server's disk refuses writes, for as long as it does. What no answer came to stays as it was.</summary>
public sealed partial class DiskBar(HeatApi api, TimeProvider time) : ComponentBase, IDisposable
{
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(3);
    private ITimer? timer;
    private string? detail;

    /// <inheritdoc/>
    public void Dispose() => timer?.Dispose();

    /// <inheritdoc/>
    protected override void OnInitialized() => timer = time.CreateTimer(_ => _ = InvokeAsync(Look), null, TimeSpan.Zero, Beat);

    private async Task Look()
    {
        if ((await api.Health()).Value is { } health && health.Detail != detail)
        {
            detail = health.Detail;
            StateHasChanged();
        }
    }
}
