using System.Text.Json;
using LiveHeat.Contracts.Replays;
using LiveHeat.Contracts.Taps;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Heats;
using LiveHeat.Testing;
using Microsoft.Extensions.Time.Testing;

namespace LiveHeat.Screens.Replays;

/// <summary>A heat to be played again, made as the server makes it and read as a screen reads it.</summary>
internal static class SomeReplay
{
    /// <summary>Lane 2's first tap reaches the ledger 20 s after it was made.</summary>
    public const string Score = """
        start
        lane 1 step 1 done at 0:30
        lane 2 step 1 done at 0:38 arriving 0:58
        lane 1 step 2 done at 1:00
        lane 2 step 2 done at 1:10
        """;

    public static ReplayLines Told(string score, ReplayBy by) => Told(new HeatScript().Then(score), by);

    public static ReplayLines Told(HeatScript heat, ReplayBy by) => JsonSerializer.Deserialize<ReplayLines>(
        JsonSerializer.Serialize(ReplayMaking.Of(Some.Heat, heat.Entries, by == ReplayBy.Known, SomeHeat.Epoch), WireJson.Options), WireJson.Options)!;

    /// <summary>A store that plays it, standing at its beginning.</summary>
    public static ReplayStore Store(string score, ReplayBy by, out FakeTimeProvider time)
    {
        time = new FakeTimeProvider();
        var store = new ReplayStore(time);
        store.Begin(Some.Heat, by, 0);
        store.Take(Some.Heat, by, new Reply<ReplayLines>(Told(score, by), null));
        return store;
    }

    /// <summary>The facts as the desk reads them.</summary>
    public static FactBook Book(string score) => Book(new HeatScript().Then(score));

    public static FactBook Book(HeatScript heat) => new(heat.State.Head, heat.Entries.Select(entry => new FactLine(
        entry.Sequence, entry.ReceivedAt, entry.Sender, entry.Fact.AboutLane() is { } lane ? heat.State.Find(lane)?.FlagsOf(entry.Fact.Id) ?? FactFlags.None : FactFlags.None, entry.Fact)));
}
