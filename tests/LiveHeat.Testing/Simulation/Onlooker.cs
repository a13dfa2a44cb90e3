using LiveHeat.Contracts.Frames;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Testing.Simulation;

/// <summary>A screen that is pushed frames over a link that loses, delays and reorders them. What it makes of them is the screens' own code.</summary>
internal sealed class Onlooker
{
    private readonly Agenda agenda;
    private readonly Random chance;
    private readonly HeatStore store;
    private readonly List<Frame> shown = [];

    public Onlooker(Agenda agenda, Random chance, TimeProvider time, HeatId heat)
    {
        (this.agenda, this.chance) = (agenda, chance);
        store = new HeatStore(new ServerClock(time), time);
        store.Follow(heat.Value);
    }

    /// <summary>What it showed, one after another.</summary>
    public IReadOnlyList<Frame> Shown => shown;

    /// <summary>What it shows.</summary>
    public Frame? Frame => store.Frame;

    /// <summary>A push.</summary>
    public void Push(Frame frame)
    {
        if (chance.NextDouble() < 0.7)
        {
            agenda.At(agenda.NowMs + (chance.NextDouble() < 0.8 ? chance.Next(1, 200) : chance.Next(200, 6_000)), () => Take(frame));
        }
    }

    /// <summary>A frame arrives.</summary>
    public void Take(Frame frame)
    {
        store.Take(frame);
        shown.Add(store.Frame!);
    }
}
