using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Commands;
using LiveHeat.Screens.Desk;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Replays;
using LiveHeat.Screens.Words;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Paper;

/// <summary>A paper scorecard is typed in, compared with what the lane's phone said, and taken where people choose it.</summary>
public sealed partial class PaperPage : ComponentBase, IDisposable
{
    private readonly Redraw redraw;
    private readonly Dictionary<LaneNumber, PaperDraft> drafts = [];
    private PaperComparison comparison = new();
    private PaperPlan? plan;
    private PaperSending? sending;
    private FactBook? compared;
    private LaneNumber? number;
    private string? opened;
    private AskHeat ask = null!;

    public PaperPage(DeskView desk, TimeProvider time)
    {
        Desk = desk;
        redraw = new Redraw(time, () => _ = InvokeAsync(Update));
    }

    /// <summary>The heat's id.</summary>
    [Parameter]
    public string Id { get; set; } = "";

    /// <summary>Whose card; a lane's number.</summary>
    [SupplyParameterFromQuery]
    public string? Lane { get; set; }

    private DeskView Desk { get; }

    private HeatId Heat => new(Id);

    private string Title => Desk.Program.Find(Heat) is { } heat ? DeskWords.Heat(heat.Number, heat.Title) : "";

    private string Back => Desk.SignIn.IsOrganiser ? $"heat/{Uri.EscapeDataString(Id)}" : "head-judge";

    /// <summary>What is typed stays when another lane is looked at in between; a plan that changed under it begins anew.</summary>
    private PaperDraft? Draft
    {
        get
        {
            if (Desk.Heat.Lanes.FirstOrDefault(lane => lane.Lane == number) is not { } view)
            {
                return null;
            }

            if (!drafts.TryGetValue(view.Lane, out var draft) || draft.Lane.Plan != view.Sheet.Plan)
            {
                drafts[view.Lane] = draft = new PaperDraft(view.Sheet);
            }

            return draft;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Desk.SignIn.Changed -= Follow;
        Desk.Close(redraw.Ask);
        redraw.Dispose();
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Desk.Open(redraw.Ask);
        Desk.SignIn.Changed += Follow;
    }

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (opened != $"{Id} {Lane}")
        {
            (opened, number, ask) = ($"{Id} {Lane}", ReplayLink.Lane(Lane), Desk.AskIn(Heat));
            Follow();
        }

        Recompare();
    }

    /// <summary>Once it is known who this is.</summary>
    private void Follow()
    {
        if (Id.Length > 0 && Desk.SignIn.MayRule)
        {
            _ = Desk.Follow(Id);
        }
    }

    private void Update()
    {
        if (!ReferenceEquals(compared, Desk.Facts.Book))
        {
            Recompare();
        }

        StateHasChanged();
    }

    private void Choose(LaneNumber lane)
    {
        if (lane != number)
        {
            (number, sending, comparison) = (lane, null, new PaperComparison());
            Recompare();
        }
    }

    /// <summary>Reads the form, compares it with the record, and plans what the choices come to.</summary>
    private void Recompare()
    {
        compared = Desk.Facts.Book;
        plan = null;
        if (Draft is not { } draft || Desk.Facts.Heat != Heat || compared.Head == 0)
        {
            return;
        }

        comparison.Fold(Heat, compared, draft.Lane.Lane);
        comparison.Compare(draft.Lane.Lane, draft.Read(comparison.Lane));
        if (draft.Wrong.Count == 0 && comparison.Lane is not null && comparison.Taken.Count > 0 && Desk.SignIn.Me is { } me)
        {
            plan = comparison.Plan(Desk.NewId, new By("desk", me.Name, me.Role), Desk.Heat.Clock.Now);
        }
    }

    private Task Begin()
    {
        Recompare();
        if (plan is not { Writes.Count: > 0, Refused: null } ready || comparison is not { Heat: { } heat, Lane: { } lane })
        {
            return Task.CompletedTask;
        }

        sending = new PaperSending(ready.Writes, write => PaperWords.Of(write, lane, heat));
        return Send();
    }

    private Task Send() => sending?.Go(ask, () => _ = InvokeAsync(StateHasChanged)) ?? Task.CompletedTask;

    private void Leave() => sending = null;
}
