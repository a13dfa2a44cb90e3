using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Standings;

/// <summary>What happened, for the announcer.</summary>
public enum NewsKind
{
    /// <summary>A team took the lead of its group.</summary>
    Lead,

    /// <summary>A team passed another.</summary>
    Overtake,

    /// <summary>A tag was made.</summary>
    Tag,

    /// <summary>A team finished.</summary>
    Finish,

    /// <summary>A team stopped for good.</summary>
    Stopped,

    /// <summary>A team was put out of the workout.</summary>
    Disqualified,
}

/// <summary>One thing that happened between two states of a heat.</summary>
/// <param name="Sequence">The fact behind it.</param>
/// <param name="Instant">When that fact happened.</param>
/// <param name="AtMs">The same in heat time; null when no start is in force.</param>
/// <param name="Kind">What.</param>
/// <param name="Lane">Whose.</param>
/// <param name="Other">The lane overtaken; null otherwise.</param>
/// <param name="Step">The step just done; null when there is none.</param>
public sealed record NewsItem(long Sequence, Instant Instant, long? AtMs, NewsKind Kind, LaneNumber Lane, LaneNumber? Other, int? Step);

/// <summary>Tells what one more fact changed.</summary>
public static class News
{
    /// <summary>What is new, most important first; empty when nothing is worth a word.</summary>
    public static IEnumerable<NewsItem> Between(HeatState before, Items<Placing> placesBefore, HeatState after, Items<Placing> placesAfter, HeatFact fact)
    {
        if (fact.AboutLane() is not { } number || before.Find(number) is not { } was || after.Find(number) is not { } now || (now.DoneSteps == was.DoneSteps && now.Stopped == was.Stopped && now.Disqualified == was.Disqualified))
        {
            yield break;
        }

        NewsItem Item(NewsKind kind, LaneNumber? other = null) =>
            new(after.Head, fact.Instant, after.Clock.HeatMs(fact.Instant), kind, number, other, now.DoneSteps > 0 ? now.DoneSteps : null);

        if (now.Stopped is not null && was.Stopped is null)
        {
            yield return Item(NewsKind.Stopped);
        }

        if (now.Disqualified is not null && was.Disqualified is null)
        {
            yield return Item(NewsKind.Disqualified);
        }

        if (now.DoneSteps <= was.DoneSteps)
        {
            yield break;
        }

        if (now.Finished)
        {
            yield return Item(NewsKind.Finish);
        }
        else if (Passed(placesBefore, placesAfter, number) is { } passed)
        {
            yield return passed.Place == 1 ? Item(NewsKind.Lead, passed.Other) : Item(NewsKind.Overtake, passed.Other);
        }

        if (!now.Finished && now.Plan.Find(now.DoneSteps) is { Kind: Workouts.StepKind.Tag })
        {
            yield return Item(NewsKind.Tag);
        }
    }

    private static (int Place, LaneNumber Other)? Passed(Items<Placing> before, Items<Placing> after, LaneNumber lane)
    {
        var was = before.First(placing => placing.Lane == lane);
        var now = after.First(placing => placing.Lane == lane);
        if (was.Place is not { } from || now.Place is not { } to || to >= from)
        {
            return null;
        }

        var overtaken = before.Where(placing => placing.Group == was.Group && placing.Place is { } place && place < from && place >= to && placing.Lane != lane)
            .OrderBy(placing => placing.Place).Cast<Placing?>().FirstOrDefault();
        return overtaken is null ? null : (to, overtaken.Lane);
    }
}
