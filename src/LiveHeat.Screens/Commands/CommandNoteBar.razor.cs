using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Commands;

/// <summary>What became of the last command. Good news goes away by itself; a refusal stays until it is read.</summary>
public sealed partial class CommandNoteBar(HeatCommands commands, TimeProvider time) : ComponentBase, IDisposable
{
    private static readonly TimeSpan GoodNewsStays = TimeSpan.FromSeconds(6);
    private ITimer? timer;

    private HeatCommands Commands { get; } = commands;

    /// <inheritdoc/>
    public void Dispose()
    {
        Commands.Changed -= Follow;
        timer?.Dispose();
    }

    /// <inheritdoc/>
    protected override void OnInitialized() => Commands.Changed += Follow;

    private static string Kind(CommandNote note) => note.Kind.ToString().ToLowerInvariant();

    private void Follow()
    {
        timer?.Dispose();
        timer = Commands.Note is { Kind: NoteKind.Well } good ? time.CreateTimer(_ => InvokeAsync(() => PutAway(good)), null, GoodNewsStays, Timeout.InfiniteTimeSpan) : null;
        _ = InvokeAsync(StateHasChanged);
    }

    private void PutAway(CommandNote note)
    {
        if (ReferenceEquals(Commands.Note, note))
        {
            Commands.PutAway();
        }
    }
}
