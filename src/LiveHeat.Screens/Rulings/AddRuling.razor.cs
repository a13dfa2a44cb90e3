using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Timing;
using LiveHeat.Screens.Commands;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Words;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Rulings;

/// <summary>The form that adds what no phone recorded.</summary>
public sealed partial class AddRuling : ComponentBase
{
    private Source source;
    private AddedKind kind;
    private int? step;
    private string number = "";
    private string at = "";
    private string? suggested;
    private bool timeless;
    private string? wrong;

    [Parameter, EditorRequired]
    public required LaneView Lane { get; set; }

    /// <summary>Start and halts, to turn heat time into an instant.</summary>
    [Parameter, EditorRequired]
    public required HeatClock Clock { get; set; }

    [Parameter, EditorRequired]
    public required AskHeat Ask { get; set; }

    /// <summary>The server's instant: what has not happened is not added.</summary>
    [Parameter, EditorRequired]
    public required Func<Instant> Now { get; set; }

    /// <summary>Makes the id of the added fact itself.</summary>
    [Parameter, EditorRequired]
    public required Func<FactId> NewId { get; set; }

    /// <summary>The time that the field begins with: the moment looked at. What was written over it stays.</summary>
    [Parameter]
    public string? Suggested { get; set; }

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (Suggested is not null && at == (suggested ?? ""))
        {
            at = suggested = Suggested;
        }
    }

    private int Chosen(IReadOnlyList<int> steps) => step is { } chosen && steps.Contains(chosen) ? chosen : steps[0];

    private async Task<bool> Do(string reason)
    {
        var steps = AddedFact.StepsFor(kind, Lane);
        var form = new AddedFact(kind, source, steps.Count > 0 ? Chosen(steps) : 0, number, at, timeless && AddedFact.MayBeTimeless(kind));
        (var tap, wrong) = form.Make(Lane, Clock, Now(), NewId());
        return tap is not null && await Ask(
            id => new HeatCommand.Add { Id = id, Source = source, Tap = tap, Reason = reason }, $"{RulingWords.AddFact}, {CommonWords.Lane(Lane.Lane)}") is null;
    }
}
