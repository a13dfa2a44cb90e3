using LiveHeat.Screens.Heats;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Clock;

/// <summary>Says when what is shown is old. The state itself stays on the screen.</summary>
public sealed partial class AgeMark(TimeProvider time) : ComponentBase, IDisposable
{
    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(500);
    private ITimer? timer;
    private TimeSpan age;

    /// <summary>The store whose age it tells.</summary>
    [Parameter, EditorRequired]
    public required HeatStore Store { get; set; }

    /// <inheritdoc/>
    public void Dispose() => timer?.Dispose();

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        age = Store.Age;
        timer = time.CreateTimer(_ => InvokeAsync(Look), null, Beat, Beat);
    }

    private void Look()
    {
        var (before, now) = (age, Store.Age);
        age = now;
        if (FreshnessRules.Of(before) != Freshness.Fresh || FreshnessRules.Of(now) != Freshness.Fresh)
        {
            StateHasChanged();
        }
    }
}
