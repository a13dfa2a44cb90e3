using System.Globalization;
using System.Text.RegularExpressions;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Testing;

/// <summary>
/// A heat told as a score sheet, one line an event, in the order it reaches the ledger. The heat is called, and every lane <c>n</c> is seated
/// (seat <c>s-n</c>, sign-in <c>in-n</c>) and ready, before the first line.
/// </summary>
/// <remarks>
/// <para>Times (<c>at 1:05.9</c>) are minutes and seconds after <see cref="Some.Go"/>, whatever start is in force; a line without one happens at
/// the latest instant so far. What may stand behind a line, in any order: <c>at</c>, <c>[name]</c> (to name it again in undo, void, admit),
/// <c>within 200</c> (uncertainty, ms), <c>from seat w-1</c>, <c>arriving 3:00</c>, <c>on start start-1</c>, <c>on no start</c>, <c>on plan 1</c>,
/// <c>time unknown</c>. The lines themselves are in HeatScript.Lines.cs.</para>
/// </remarks>
public sealed partial class HeatScript
{
    private readonly Dictionary<string, FactId> named = [];
    private readonly Dictionary<string, long> counters = [];
    private Instant latest = Some.Go + -60_000;
    private int starts;

    public HeatScript(HeatSnapshot? heat = null, bool called = true, bool seated = true)
    {
        snapshot = heat ?? Some.Snapshot();
        if (called)
        {
            Then("call at -1:00");
        }

        foreach (var lane in called && seated ? snapshot.Lanes.Select(entry => entry.Lane) : [])
        {
            Then($"""
                lane {lane} seat s-{lane} taken as primary at -0:50
                lane {lane} ready with s-{lane} at -0:40
                """);
        }
    }

    public HeatState State { get; private set; } = HeatState.Empty(Some.Heat);

    public IReadOnlyList<Entry> Entries => State.Entries;

    /// <summary>A fact that a line named.</summary>
    public FactId this[string name] => named[name];

    /// <summary>Plays a whole heat from its call.</summary>
    public static HeatState Play(string score, HeatSnapshot? heat = null) => new HeatScript(heat).Then(score).State;

    /// <summary>Lanes in the order of their places; lanes that tie are joined by "=": "2 1=3".</summary>
    public static string Board(HeatState heat) => string.Join(' ', LiveOrder.Of(heat).Where(placing => placing.Place is not null)
        .GroupBy(placing => placing.Place).OrderBy(group => group.Key).Select(group => string.Join('=', group.Select(placing => placing.Lane))));

    /// <summary>Plays more lines.</summary>
    public HeatScript Then(string score)
    {
        foreach (var line in score.Split('\n').Select(line => line.Split('#')[0].Trim()).Where(line => line.Length > 0))
        {
            PlayLine(line);
        }

        return this;
    }

    /// <summary>Appends a fact as it is.</summary>
    public Entry Append(HeatFact fact, string sender = "in-desk", Instant? receivedAt = null)
    {
        var entry = new Entry(State.Head + 1, receivedAt ?? (fact is HeatFact.Floor ? fact.Instant + 100 : fact.Instant), sender, fact);
        State = State.Apply(entry);
        return entry;
    }

    public static Instant At(string time)
    {
        var parts = Regex.Match(time, @"^(-?)(\d+):(\d\d(?:\.\d{1,3})?)$");
        var ms = (int.Parse(parts.Groups[2].Value, CultureInfo.InvariantCulture) * 60_000) + (int)(decimal.Parse(parts.Groups[3].Value, CultureInfo.InvariantCulture) * 1000);
        return Some.Go + (parts.Groups[1].Length > 0 ? -ms : ms);
    }

    private void PlayLine(string line)
    {
        var said = new Said(line);
        if (said.At is { } at && at > latest)
        {
            latest = at;
        }

        var (fact, sender) = Fact(said);
        Append(fact, sender, said.Arriving);
        if (said.Name is { } name)
        {
            named[name] = fact.Id;
        }
    }

    private FactId NextId(string outbox)
    {
        counters[outbox] = counters.GetValueOrDefault(outbox) + 1;
        return Some.Id(outbox, counters[outbox]);
    }

    /// <summary>A line, split into what happened and what stands behind it.</summary>
    private sealed class Said
    {
        private const string Time = @"-?\d+:\d\d(?:\.\d{1,3})?";
        private string rest;

        public Said(string line)
        {
            rest = line;
            At = Behind($" at ({Time})") is { } at ? HeatScript.At(at) : null;
            Arriving = Behind($" arriving ({Time})") is { } arriving ? HeatScript.At(arriving) : null;
            Name = Behind(@" \[(\w+)\]");
            UncertaintyMs = int.Parse(Behind(@" within (\d+)") ?? "12", CultureInfo.InvariantCulture);
            Seat = Behind(@" from seat (\S+)");
            Plan = Behind(@" on plan (\d+)");
            NoStart = Behind(@"( on no start)") is not null;
            Start = Behind(@" on start (\S+)");
            TimeKnown = Behind(@"( time unknown)") is null;
        }

        public Instant? At { get; }

        public Instant? Arriving { get; }

        public string? Name { get; }

        public int UncertaintyMs { get; }

        public string? Seat { get; }

        public string? Plan { get; }

        public string? Start { get; }

        public bool NoStart { get; }

        public bool TimeKnown { get; }

        public string What => rest.Trim();

        private string? Behind(string pattern)
        {
            var match = Regex.Match(rest, pattern);
            rest = match.Success ? rest.Remove(match.Index, match.Length) : rest;
            return match.Success ? match.Groups[1].Value : null;
        }
    }
}
