using System.Globalization;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Rulings;

/// <summary>What may be added from paper or video.</summary>
public enum AddedKind
{
    /// <summary>A set, tag, or finish was completed.</summary>
    Done,

    /// <summary>So much of a set.</summary>
    Count,

    /// <summary>A reading.</summary>
    Value,

    /// <summary>An attempt at a load that was good.</summary>
    GoodLift,

    /// <summary>An attempt at a load that was not.</summary>
    NoLift,

    /// <summary>A rep that does not count.</summary>
    NoRep,

    /// <summary>A tag missed.</summary>
    TagFault,

    /// <summary>What was done of the open set at the cap.</summary>
    AtCap,

    /// <summary>The team gave up.</summary>
    Withdrew,

    /// <summary>Stopped for health.</summary>
    Medical,
}

/// <summary>The form for a fact that no phone recorded, and the fact it makes.</summary>
public sealed record AddedFact(AddedKind Kind, Source Source, int Step, string Number, string At, bool Timeless)
{
    /// <summary>A hand on a stopwatch, written down; from memory.</summary>
    private const int PaperUncertaintyMs = 500;

    /// <summary>One picture at 25 a second, and the start of the recording; from memory.</summary>
    private const int VideoUncertaintyMs = 100;

    /// <summary>The steps it may be about; the likeliest first. Empty when it is about none.</summary>
    public static IReadOnlyList<int> StepsFor(AddedKind kind, LaneView lane)
    {
        var fitting = lane.Sheet.Steps.Where(step => kind switch
        {
            AddedKind.Done => step.Kind is not (StepKind.Value or StepKind.Attempt),
            AddedKind.GoodLift or AddedKind.NoLift => step.Kind == StepKind.Attempt,
            AddedKind.Value => step.Kind == StepKind.Value,
            AddedKind.TagFault => step.Kind == StepKind.Tag,
            AddedKind.Count or AddedKind.NoRep or AddedKind.AtCap => step.Kind == StepKind.Set,
            _ => false,
        }).Select(step => step.Step).ToList();
        return [.. fitting.Where(step => step >= lane.State.Open), .. fitting.Where(step => step < lane.State.Open).Reverse()];
    }

    /// <summary>Whether a number belongs to it.</summary>
    public static bool NeedsNumber(AddedKind kind) => kind is AddedKind.Count or AddedKind.AtCap or AddedKind.Value or AddedKind.GoodLift or AddedKind.NoLift;

    /// <summary>Whether it may be done at an unknown time.</summary>
    public static bool MayBeTimeless(AddedKind kind) => kind is AddedKind.Done or AddedKind.Value or AddedKind.GoodLift or AddedKind.NoLift;

    /// <summary>The fact, or what is wrong with the form.</summary>
    public (HeatFact.Floor? Tap, string? Wrong) Make(LaneView lane, HeatClock clock, Instant now, FactId id)
    {
        if (TimeWords.Parse(At) is not { } heatMs || clock.InstantOf(heatMs) is not { } instant)
        {
            return (null, RulingWords.BadTime);
        }

        if (instant > now)
        {
            return (null, RulingWords.NotYet);
        }

        if (NeedsNumber(Kind) && !decimal.TryParse(Number.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _))
        {
            return (null, AddedWords.NumberMissing);
        }

        var number = lane.Lane;
        var within = Source == Source.Paper ? PaperUncertaintyMs : VideoUncertaintyMs;
        HeatFact.Floor tap = Kind switch
        {
            AddedKind.Done when lane.Find(Step)?.Kind == StepKind.Tag => new HeatFact.TagMade { Id = id, Instant = instant, Lane = number, Step = Step, TimeKnown = !Timeless },
            AddedKind.Done => new HeatFact.StepDone { Id = id, Instant = instant, Lane = number, Step = Step, TimeKnown = !Timeless },
            AddedKind.Count => new HeatFact.CountReached { Id = id, Instant = instant, Lane = number, Step = Step, Count = (int)Amount },
            AddedKind.Value => new HeatFact.ValueEntered { Id = id, Instant = instant, Lane = number, Step = Step, Value = Amount, TimeKnown = !Timeless },
            AddedKind.GoodLift or AddedKind.NoLift => new HeatFact.AttemptJudged
            {
                Id = id,
                Instant = instant,
                Lane = number,
                Step = Step,
                Load = Amount,
                Good = Kind == AddedKind.GoodLift,
                TimeKnown = !Timeless,
            },
            AddedKind.NoRep => new HeatFact.NoRep { Id = id, Instant = instant, Lane = number, Step = Step },
            AddedKind.TagFault => new HeatFact.TagFault { Id = id, Instant = instant, Lane = number, Step = Step },
            AddedKind.AtCap => new HeatFact.RepsAtCap { Id = id, Instant = instant, Lane = number, Step = Step, Count = (int)Amount },
            _ => new HeatFact.LaneStopped { Id = id, Instant = instant, Lane = number, Reason = Kind == AddedKind.Medical ? StopReason.Medical : StopReason.Withdrew },
        };
        return (tap with { UncertaintyMs = within, Plan = lane.Sheet.Plan }, null);
    }

    private decimal Amount => decimal.Parse(Number.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
}
