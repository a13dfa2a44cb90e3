using LiveHeat.Screens.Look;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Judging;

/// <summary>What each judge gave over the whole competition, beside all others: for training, not for blame.</summary>
public sealed partial class JudgesPage(JudgesFeed feed, PageScript page) : ComponentBase, IDisposable
{
    private JudgesFeed Feed { get; } = feed;

    /// <inheritdoc/>
    public void Dispose() => Feed.Close(Draw);

    /// <inheritdoc/>
    protected override void OnInitialized() => Feed.Open(Draw);

    private void Draw() => _ = InvokeAsync(StateHasChanged);
}
