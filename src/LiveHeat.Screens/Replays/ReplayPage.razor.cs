using System.Globalization;
using LiveHeat.Contracts.Programme;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Commands;
using LiveHeat.Screens.Desk;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Words;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Replays;

/// <summary>What an appeal looks at: a heat at any moment, as it happened or as it was known, and who recorded what around it.</summary>
public sealed partial class ReplayPage : ComponentBase, IDisposable
{
    private readonly ReplayFeed feed;
    private readonly NavigationManager pages;
    private readonly Redraw redraw;
    private LaneNumber? lane;
    private string? opened;
    private AskHeat ask = null!;

    public ReplayPage(DeskView desk, ReplayFeed feed, NavigationManager pages, TimeProvider time)
    {
        (Desk, this.feed, this.pages) = (desk, feed, pages);
        redraw = new Redraw(time, () => _ = InvokeAsync(StateHasChanged));
    }

    /// <summary>The heat's id; null to choose one.</summary>
    [Parameter]
    public string? Id { get; set; }

    /// <summary>"known" for as it was known.</summary>
    [SupplyParameterFromQuery]
    public string? By { get; set; }

    /// <summary>Where to stand: heat time as milliseconds, or as people write it, 4:32. What is neither is nothing: an address may be mistyped.</summary>
    [SupplyParameterFromQuery]
    public string? At { get; set; }

    /// <summary>Whose facts are listed; a lane's number.</summary>
    [SupplyParameterFromQuery]
    public string? Lane { get; set; }

    private DeskView Desk { get; }

    private ReplayStore Store => feed.Store;

    private HeatScene Scene => Store.Scene;

    private AskHeat Ask => ask;

    private string Title => Store.Heat is { } id && Desk.Program.Find(id) is { } heat ? DeskWords.Heat(heat.Number, heat.Title) : "";

    private string Back => Desk.SignIn.IsOrganiser ? Id is { } id ? $"heat/{Uri.EscapeDataString(id)}" : "" : "head-judge";

    private IReadOnlyList<ProgramHeat> Playable => [.. (Desk.Program.List?.Heats ?? []).Where(heat => heat.Phase != Phase.Planned).OrderBy(heat => heat.Number)];

    /// <summary>Rulings go by the work as it is now, not as it was at the moment shown.</summary>
    private IReadOnlyList<LaneView> Lanes => Desk.Heat.Lanes;

    private bool Closed => Desk.Heat.Phase == Phase.Certified;

    private string Around => Store.HeatMs is { } ms ? ReplayWords.Around(ms - FactsAround.ReachMs, ms + FactsAround.ReachMs) : RulingWords.Facts;

    private string? Suggested => Store.HeatMs is >= 0 and var ms ? TimeWords.Clock(ms, 1) : null;

    /// <inheritdoc/>
    public void Dispose()
    {
        Desk.SignIn.Changed -= Follow;
        Store.Changed -= redraw.Ask;
        feed.LookAway();
        Desk.Close(redraw.Ask);
        redraw.Dispose();
        Store.Close();
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Desk.Open(redraw.Ask);
        feed.Look();
        Store.Changed += redraw.Ask;
        Desk.SignIn.Changed += Follow;
    }

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        var asked = string.Create(CultureInfo.InvariantCulture, $"{Id} {By} {At} {Lane}");
        if (asked != opened)
        {
            (opened, lane) = (asked, ReplayLink.Lane(Lane));
            ask = Desk.AskIn(new HeatId(Id ?? ""));
            Follow();
        }
    }

    /// <summary>Once it is known who this is.</summary>
    private void Follow()
    {
        if (Id is { } id && Desk.SignIn.MayRule)
        {
            _ = Desk.Follow(id);
            _ = feed.Open(new HeatId(id), By == "known" ? ReplayBy.Known : ReplayBy.Happened, ReplayLink.At(At));
        }
    }

    private void TurnTo(HeatId heat) => pages.NavigateTo($"replay/{Uri.EscapeDataString(heat.Value)}");

    private Task TurnTo(ReplayBy by) => Store.Heat is { } heat ? feed.Open(heat, by) : Task.CompletedTask;

    private void Choose(LaneNumber? number) => lane = number;

    private void Step(bool forward) => Store.Step(forward, lane is { } one ? Desk.Facts.Book.Of(one).Select(line => line.Sequence).ToHashSet().Contains : null);

    private void Press(string key, bool shift)
    {
        if (key == " ")
        {
            Store.Toggle();
        }
        else if (shift)
        {
            Store.Skip(key == "ArrowRight" ? ReplayControls.SkipMs : -ReplayControls.SkipMs);
        }
        else
        {
            Step(key == "ArrowRight");
        }
    }
}
