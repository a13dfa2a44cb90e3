using LiveHeat.Contracts.Programme;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Commands;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Judging;
using LiveHeat.Screens.Words;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Desk;

/// <summary>One heat at the desk, from the call to the signed result: what is shown follows its phase.</summary>
public sealed partial class HeatDeskPage : ComponentBase, IDisposable
{
    private readonly JudgingFeed judging;
    private readonly Redraw redraw;
    private LaneNumber? chosen;
    private AskHeat ask = null!;

    public HeatDeskPage(DeskView desk, JudgingFeed judging, TimeProvider time)
    {
        (Desk, this.judging) = (desk, judging);
        redraw = new Redraw(time, () => _ = InvokeAsync(StateHasChanged));
    }

    /// <summary>The heat's id.</summary>
    [Parameter]
    public string Id { get; set; } = "";

    private DeskView Desk { get; }

    private JudgingStore Watch => judging.Store;

    private AskHeat Ask => ask;

    private ProgramHeat? Planned => Desk.Program.Find(new HeatId(Id));

    private string Title => Desk.Heat.Sheet?.Title ?? (Planned is { } heat ? DeskWords.Heat(heat.Number, heat.Title) : "");

    private string Under => Desk.Heat.Sheet is { } sheet ? $"{sheet.Workout.Name}: {sheet.Workout.Summary}" : Planned?.Workout ?? "";

    /// <inheritdoc/>
    public void Dispose()
    {
        judging.Close(redraw.Ask);
        Desk.Close(redraw.Ask);
        redraw.Dispose();
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Desk.Open(redraw.Ask);
        judging.Open(redraw.Ask);
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        ask = Desk.AskIn(new HeatId(Id));
        if (Desk.Heat.Following != Id)
        {
            chosen = null;
            Desk.Commands.PutAway();
        }

        await Desk.Follow(Id);
    }

    private void Choose(LaneNumber lane) => chosen = chosen == lane ? null : lane;
}
