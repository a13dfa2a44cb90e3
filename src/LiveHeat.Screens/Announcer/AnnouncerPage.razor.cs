using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Programme;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Replays;
using LiveHeat.Screens.Words;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Announcer;

/// <summary>What to say next and what not yet: the live order with gaps, who works, what just happened; of the heat that is on, or of one played again.</summary>
public sealed partial class AnnouncerPage : ComponentBase, IDisposable
{
    private const int HeatsAhead = 3;
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(1);
    private readonly TimeProvider time;
    private readonly Redraw redraw;
    private ITimer? beat;
    private IReadOnlyList<Callout> toSay = [];
    private bool picking;
    private LaneNumber? card;

    public AnnouncerPage(AnnouncerView view, TimeProvider time)
    {
        View = view;
        this.time = time;
        redraw = new Redraw(time, () => _ = InvokeAsync(StateHasChanged));
    }

    [CascadingParameter]
    private ScreenLayout Screen { get; set; } = null!;

    private AnnouncerView View { get; }

    private HeatScene Scene => View.Scene;

    private Phase Phase => Scene.Phase;

    private bool Certified => Phase == Phase.Certified;

    private IReadOnlyList<OrderGroup> Groups => LiveOrderView.Of(Scene.Lanes);

    private IEnumerable<ProgramHeat> Heats => View.Program.List?.Heats ?? [];

    private IReadOnlyList<ProgramHeat> Next => [.. Heats.Where(heat => heat.Phase == Phase.Planned).OrderBy(heat => heat.Number).Take(HeatsAhead)];

    private IReadOnlyList<ProgramHeat> Playable => [.. Heats.Where(heat => heat.Phase != Phase.Planned).OrderByDescending(heat => heat.Number)];

    /// <summary>What the announcer would miss while a replay is on.</summary>
    private string LiveNow => HeatTime.IsLive(View.Heat.Phase) ? ReplayWords.LiveNow(View.Heat.Sheet?.Title ?? "", View.Heat.Phase) : "";

    /// <inheritdoc/>
    public void Dispose()
    {
        View.Close(redraw.Ask);
        beat?.Dispose();
        redraw.Dispose();
    }

    /// <inheritdoc/>
    protected override Task OnInitializedAsync()
    {
        beat = time.CreateTimer(_ => InvokeAsync(DropStale), null, Beat, Beat);
        return View.Open(redraw.Ask);
    }

    /// <summary>Nothing arrives any more from a heat that is over, or with the network away, and what stands there grows old all the same.</summary>
    private void DropStale()
    {
        if (View.ToSay.Count != toSay.Count)
        {
            redraw.Ask();
        }
    }

    /// <summary>The same team again closes its card.</summary>
    private void OpenCard(LaneNumber lane) => card = card == lane ? null : lane;

    private Task Play((HeatId Heat, ReplayBy By) choice)
    {
        picking = false;
        return View.Play(choice.Heat, choice.By);
    }
}
