using LiveHeat.Contracts.Programme;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Screens.Commands;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Desk;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Judging;
using LiveHeat.Screens.Words;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.HeadJudge;

/// <summary>The head judge's phone: lanes with trouble first, rulings on the spot, and the second signature.</summary>
public sealed partial class HeadJudgePage : ComponentBase, IDisposable
{
    private readonly JudgingFeed judging;
    private readonly Redraw redraw;
    private LaneNumber? chosen;
    private HeatId? asked;
    private AskHeat? ask;

    public HeadJudgePage(DeskView desk, JudgingFeed judging, TimeProvider time)
    {
        (Desk, this.judging) = (desk, judging);
        redraw = new Redraw(time, () => _ = InvokeAsync(StateHasChanged));
    }

    private DeskView Desk { get; }

    private JudgingStore Watch => judging.Store;

    /// <summary>For the heat on the screen; made anew only when that changes.</summary>
    private AskHeat Ask
    {
        get
        {
            if (ask is null || asked != Desk.Heat.Frame!.Heat)
            {
                asked = Desk.Heat.Frame!.Heat;
                ask = Desk.AskIn(asked.Value);
            }

            return ask;
        }
    }

    private string Title => Desk.Heat.Sheet?.Title ?? "";

    /// <summary>Heats that are on, or wait for a review or a signature: more than one while the next is called.</summary>
    private IReadOnlyList<ProgramHeat> Open => [.. (Desk.Program.List?.Heats ?? [])
        .Where(heat => heat.Phase is not (Phase.Planned or Phase.Certified) || heat.Heat == Desk.Heat.Frame?.Heat).OrderBy(heat => heat.Number)];

    /// <inheritdoc/>
    public void Dispose()
    {
        Desk.SignIn.Changed -= Follow;
        judging.Close(redraw.Ask);
        Desk.Close(redraw.Ask);
        redraw.Dispose();
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Desk.Open(redraw.Ask);
        judging.Open(redraw.Ask);
        Desk.SignIn.Changed += Follow;
        Follow();
    }

    /// <summary>Once it is known who this is: only the head judge's sign-in may see the phones.</summary>
    private void Follow()
    {
        if (Desk.SignIn.MayRule)
        {
            _ = Desk.Follow(HeatConnection.Current);
        }
    }

    private Task Turn(HeatId heat)
    {
        chosen = null;
        return Desk.Follow(heat.Value);
    }

    private async Task<bool> Halt(string reason) => await Ask(id => new HeatCommand.Halt { Id = id, Reason = reason }, HeatDeskWords.Halt) is null;
}
