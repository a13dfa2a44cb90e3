using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Announcer;

/// <summary>Callouts and what is not to be said, as sentences in the language of the screen. Numbers and times follow it too.</summary>
public sealed class CalloutWords
{
    private static readonly Wording Words = new(typeof(Callouts));

    private const long Second = 1000;
    private const long Soon = 1500;

    /// <summary>A word or sentence by its key.</summary>
    public string this[string key, params object[] parts] => Words.Say(key, parts);

    /// <summary>The sentence.</summary>
    /// <param name="callout">What.</param>
    /// <param name="lanes">The lanes of the heat.</param>
    /// <param name="now">The instant by which it is shown: what is to come comes nearer.</param>
    public string Sentence(Callout callout, IReadOnlyList<LaneView> lanes, Instant now)
    {
        if (callout.Earlier is { } earlier)
        {
            return ResultCalloutWords.Sentence(callout.Kind, earlier);
        }

        if (callout.Overall is { } overall)
        {
            return ResultCalloutWords.Sentence(overall);
        }

        var lane = Find(lanes, callout.Lanes[0]);
        var team = Team(lanes, callout.Lanes[0]);
        var other = callout.Lanes.Count > 1 ? Team(lanes, callout.Lanes[1]) : "";
        return callout.Kind switch
        {
            CalloutKind.Lead => this["lead", team, other],
            CalloutKind.Overtake => this["overtake", team, other, callout.Place ?? 0],
            CalloutKind.CatchToCome => this[Find(lanes, callout.Lanes[1])?.State.Place == 1 ? "catch.lead" : "catch", team, other, Seconds(callout.Due, now)],
            CalloutKind.Tag => To(lane, callout.Step) is { Length: > 0 } next ? this["tag", team, next] : this["tag.nobody", team],
            CalloutKind.TagToCome when To(lane, callout.Step) is { Length: > 0 } next => callout.Due - now > Soon ? this["tag.next", team, next, Seconds(callout.Due, now)] : this["tag.now", team, next],
            CalloutKind.TagToCome => this["tag.nobody", team],
            CalloutKind.FastestSet => this[callout.OfDay ? "fastest.set.day" : "fastest.set", team, Label(lane, callout.Step), Tenths(callout.Ms)],
            CalloutKind.FastestLeg => this[callout.OfDay ? "fastest.leg.day" : "fastest.leg", team, By(lane, callout.Step), Tenths(callout.Ms)],
            CalloutKind.CapInDoubt => this["cap", team, Percent(callout.Chance ?? 0)],
            CalloutKind.Finish => callout.Ms is not { } ms ? this["finish.notime", team] : callout.Place is { } place ? this["finish", team, place, Time(ms)] : this["finish.open", team, Time(ms)],
            CalloutKind.LastMinute => Counted("lastminute", callout.Lanes.Count),
            CalloutKind.Stopped => this["stopped", team],
            CalloutKind.RoundEnds or CalloutKind.RestBegins or CalloutKind.RoundBegins => RoundCalloutWords.Turn(callout, lanes, Seconds(callout.Due, now)),
            CalloutKind.GoesIn => In(lane, callout.Step) is { Length: > 0 } next ? this["goes.in", team, next, Seconds(callout.Due, now)] : this["goes.in.nobody", team, Seconds(callout.Due, now)],
            CalloutKind.RoundLead => RoundCalloutWords.Lead(callout, lanes),
            CalloutKind.BestRound => RoundCalloutWords.Best(callout, lanes),
            _ => this["race", team, other, callout.Place ?? 0],
        };
    }

    /// <summary>What it rests on.</summary>
    public string Reason(Callout callout, IReadOnlyList<LaneView> lanes) => callout.Grounds switch
    {
        _ when (callout.Earlier?.Official ?? callout.Overall?.Official) is { } official => this[official ? "reason.official" : "reason.open"],
        CalloutGrounds.Pace => callout is { Chance: { } chance, Kind: not CalloutKind.CapInDoubt } ? this["reason.pace.chance", Percent(chance)] : this["reason.pace"],
        CalloutGrounds.Clock => this["reason.clock"],
        _ => callout is { Kind: CalloutKind.Lead or CalloutKind.Overtake } && Label(Find(lanes, callout.Lanes[0]), callout.Step) is { Length: > 0 } label ? this["reason.after", label] : this["reason.confirmed"],
    };

    /// <summary>How long ago the fact behind it happened.</summary>
    public string Age(TimeSpan age) => this["ago", (int)Math.Max(0, age.TotalSeconds)];

    /// <summary>What is open, and what not to say of it.</summary>
    public string Sentence(NotYet open, IReadOnlyList<LaneView> lanes)
    {
        var team = Team(lanes, open.Lanes[0]);
        return open.Why switch
        {
            NotYetWhy.NearTie => this["notyet.neartie", team, Team(lanes, open.Lanes[1])],
            NotYetWhy.MayBeBeaten => this[$"notyet.maybebeaten.{Numbers.Form(open.Lanes.Count - 1)}", team, open.Lanes.Count - 1],
            _ => this[$"notyet.{open.Why}".ToLowerInvariant(), team, open.Round ?? 0],
        };
    }

    /// <summary>Who is tagged next, and when.</summary>
    public string NextTag(string name, Instant at, Instant now) =>
        at - now > Soon ? this["row.tag", name, (at - now + (Second / 2)) / Second] : this["row.tag.now", name];

    /// <summary>The chance to beat the cap.</summary>
    public string Cap(double chance) => RowOutlook.Doubt(chance) switch
    {
        > 0 => this["row.cap.surely"],
        < 0 => this["row.cap.hardly"],
        _ => this["row.cap", Percent(chance)],
    };

    /// <summary>The chance of the first place.</summary>
    public string Wins(double chance) => this["row.win", Percent(chance)];

    /// <summary>A place, or all from it on.</summary>
    public string Place(PlaceChance chance) => chance.OrLater ? this["card.place.later", CommonWords.Place(chance.Place, false)] : CommonWords.Place(chance.Place, false);

    /// <summary>Places gained (+) or lost (-), for who does not see the arrow.</summary>
    public string Trend(int gained) => Counted(gained > 0 ? "trend.up" : "trend.down", Math.Abs(gained));

    /// <summary>A finish that is foretold: whole seconds, it is no better known.</summary>
    public string Finish(long finishMs, long earlyMs, long lateMs) => this["card.finish", TimeWords.Clock(finishMs), TimeWords.Clock(earlyMs), TimeWords.Clock(lateMs)];

    /// <summary>A share in hundredths, rounded to fives: a chance is no better known.</summary>
    public static string Percent(double share) => Numbers.Percent(Math.Round(share * 20) / 20);

    /// <summary>Minutes, seconds and tenths with the language's decimal sign; under a minute with its unit.</summary>
    public static string Time(long ms) => ms < 60 * Second ? SecondsText.Of(ms) : TimeWords.Exact(ms);

    /// <summary>Of a set or a leg: two taps know it no better.</summary>
    private static string Tenths(long? ms) => Time(((ms ?? 0) + 50) / 100 * 100);

    private static string Counted(string key, long count) => Words.Count(key, count);

    private static string Seconds(Instant? at, Instant now) => Counted("seconds", at is { } due ? Math.Max(1, (due - now + (Second / 2)) / Second) : 1);

    private static LaneView? Find(IReadOnlyList<LaneView> lanes, LaneNumber lane) => lanes.FirstOrDefault(one => one.Lane == lane);

    private static string Team(IReadOnlyList<LaneView> lanes, LaneNumber lane) => Find(lanes, lane)?.Sheet.Name ?? CommonWords.Lane(lane);

    private static string To(LaneView? lane, int? step) => step is { } number && lane?.Find(number)?.To is { } to ? lane.NameOf(to) : "";

    private static string In(LaneView? lane, int? step) => step is { } number && lane?.Find(number) is { } next ? lane.NamesOf(next) : "";

    private static string By(LaneView? lane, int? step) => step is { } number && lane?.Find(number) is { } by ? lane.NameOf(by.Athlete) : "";

    private static string Label(LaneView? lane, int? step) => step is { } number && lane?.Find(number) is { } done ? done.Label : "";
}
