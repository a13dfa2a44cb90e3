using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Desk;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Words;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Judging;

/// <summary>How a heat is judged, lane by lane: rates with their intervals, and the limits beyond which a lane is asked about.</summary>
public sealed partial class JudgingPage : ComponentBase, IDisposable
{
    private readonly JudgingFeed feed;
    private readonly Redraw redraw;

    public JudgingPage(DeskView desk, JudgingFeed feed, TimeProvider time)
    {
        (Desk, this.feed) = (desk, feed);
        redraw = new Redraw(time, () => _ = InvokeAsync(StateHasChanged));
    }

    /// <summary>The heat's id.</summary>
    [Parameter]
    public string Id { get; set; } = "";

    private DeskView Desk { get; }

    private JudgingStore Store => feed.Store;

    private HeatId Heat => new(Id);

    private string Title => Desk.Program.Find(Heat) is { } heat ? DeskWords.Heat(heat.Number, heat.Title) : "";

    private string Back => Desk.SignIn.IsOrganiser ? $"heat/{Uri.EscapeDataString(Id)}" : "head-judge";

    /// <inheritdoc/>
    public void Dispose()
    {
        Desk.SignIn.Changed -= Follow;
        feed.Close(redraw.Ask);
        Desk.Close(redraw.Ask);
        redraw.Dispose();
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Desk.Open(redraw.Ask);
        feed.Open(redraw.Ask);
        Desk.SignIn.Changed += Follow;
    }

    /// <inheritdoc/>
    protected override void OnParametersSet() => Follow();

    /// <summary>Once it is known who this is.</summary>
    private void Follow()
    {
        if (Id.Length > 0 && Desk.SignIn.MayRule)
        {
            _ = Desk.Follow(Id);
        }
    }
}
