using System.Text.Json;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Testing.Simulation;

/// <summary>A tap as a phone has it on its disk.</summary>
internal sealed class StoredTap(HeatFact.Floor fact, Moment moment)
{
    public HeatFact.Floor Fact => fact;

    public Moment Moment => moment;

    public bool Waits { get; set; } = true;

    public double ReceiptedMs { get; set; }

    public JsonElement Json => JsonSerializer.SerializeToElement(fact, WireJson.Options);

    /// <summary>What the judge's finger makes of a moment; the phone adds when and what it knew.</summary>
    public static HeatFact.Floor Make(Moment moment, FactId id, LaneNumber lane, Func<int, FactId> idOf) => moment.Fact switch
    {
        "step-done" => new HeatFact.StepDone { Id = id, Instant = default, Lane = lane, Step = moment.Step },
        "tag-made" => new HeatFact.TagMade { Id = id, Instant = default, Lane = lane, Step = moment.Step },
        "count-reached" => new HeatFact.CountReached { Id = id, Instant = default, Lane = lane, Step = moment.Step, Count = moment.Count!.Value },
        "no-rep" => new HeatFact.NoRep { Id = id, Instant = default, Lane = lane, Step = moment.Step },
        "undone" => new HeatFact.Undone { Id = id, Instant = default, Lane = lane, Target = idOf(moment.Undoes!.Value) },
        "lane-stopped" => new HeatFact.LaneStopped { Id = id, Instant = default, Lane = lane, Reason = StopReason.Withdrew },
        _ => throw new InvalidOperationException($"No judge taps {moment.Fact}."),
    };
}
