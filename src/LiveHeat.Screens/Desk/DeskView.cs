using LiveHeat.Contracts.Programme;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Access;
using LiveHeat.Screens.Commands;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Desk;

/// <summary>All that the desk and the head judge see of one heat, with one event for all of it.</summary>
public sealed class DeskView(HeatStore heat, FactStore facts, ResultStore result, ProgramStore program, SignInStore signIn, HeatCommands commands, CommandIds ids, Feed feed, FactFeed factFeed, ResultFeed resultFeed)
{
    public HeatStore Heat => heat;

    public FactStore Facts => facts;

    public ResultStore Result => result;

    public ProgramStore Program => program;

    public SignInStore SignIn => signIn;

    public HeatCommands Commands => commands;

    /// <summary>Taps known to be on phones and not here, in words.</summary>
    public IReadOnlyList<string> Missing => heat.Frame is not { } frame ? [] :
        [.. from phone in heat.Phones
            where phone.Status is { Unsent: > 0 } told && (told.Heat is null || told.Heat == frame.Heat.Value)
            select Words.HeatDeskWords.Missing(phone.Lane, phone.Status!.Unsent)];

    /// <summary>Heats that are not called yet, by number.</summary>
    public IReadOnlyList<ProgramHeat> Planned => [.. (program.List?.Heats ?? []).Where(one => one.Phase == Phase.Planned).OrderBy(one => one.Number)];

    /// <summary>Begins to draw at every change of anything here; a heat's facts and result are read from now on.</summary>
    public void Open(Action draw)
    {
        heat.Changed += draw;
        facts.Changed += draw;
        result.Changed += draw;
        program.Changed += draw;
        signIn.Changed += draw;
        commands.Changed += draw;
        factFeed.Look();
        resultFeed.Look();
    }

    /// <summary>Lets go of all that <see cref="Open"/> took.</summary>
    public void Close(Action draw)
    {
        heat.Changed -= draw;
        facts.Changed -= draw;
        result.Changed -= draw;
        program.Changed -= draw;
        signIn.Changed -= draw;
        commands.Changed -= draw;
        factFeed.LookAway();
        resultFeed.LookAway();
    }

    /// <summary>Follows a heat, or the current one.</summary>
    public Task Follow(string id) => feed.Follow(id);

    /// <summary>An id for a fact that the desk adds.</summary>
    public FactId NewId() => ids.Next();

    /// <summary>Asks for something in the heat on the screen.</summary>
    public AskHeat AskIn(HeatId id) => (make, words) => commands.Ask(id, make, words);
}
