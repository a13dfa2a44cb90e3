using LiveHeat.Contracts.Programme;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Heats;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Announcer;

/// <summary>What to say next and what not yet: the live order with gaps, who works, what just happened.</summary>
public sealed partial class AnnouncerPage : ComponentBase, IDisposable
{
    private const int HeatsAhead = 3;
    private readonly Feed feed;
    private readonly Redraw redraw;

    public AnnouncerPage(HeatStore heat, ProgramStore program, Feed feed, TimeProvider time)
    {
        (Heat, Program, this.feed) = (heat, program, feed);
        redraw = new Redraw(time, () => _ = InvokeAsync(StateHasChanged));
    }

    [CascadingParameter]
    private ScreenLayout Screen { get; set; } = null!;

    private HeatStore Heat { get; }

    private ProgramStore Program { get; }

    private bool Certified => Heat.Phase == Phase.Certified;

    private IReadOnlyList<OrderGroup> Groups => LiveOrderView.Of(Heat.Lanes);

    private IReadOnlyList<ProgramHeat> Next => [.. (Program.List?.Heats ?? []).Where(heat => heat.Phase == Phase.Planned).OrderBy(heat => heat.Number).Take(HeatsAhead)];

    /// <inheritdoc/>
    public void Dispose()
    {
        Heat.Changed -= redraw.Ask;
        Program.Changed -= redraw.Ask;
        redraw.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        Heat.Changed += redraw.Ask;
        Program.Changed += redraw.Ask;
        await feed.Follow(HeatConnection.Current);
    }
}
