using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Standings;

/// <summary>Running order and gaps at every exchange of two published relays, told leg by leg as a heat. Teams only.</summary>
public class PublishedRelayTests
{
    /// <summary>Olympic men's 4x100 m freestyle final, 11 Aug 2008: leg times from public result tables, re-added. Milliseconds.</summary>
    private static readonly Relay Freestyle = new(Timing.Rounding.DownHundredth, new()
    {
        ["USA"] = Added(47_510, 47_020, 47_650, 46_060),
        ["FRA"] = Added(47_910, 47_050, 46_630, 46_730),
        ["AUS"] = Added(47_240, 47_870, 47_550, 47_250),
        ["ITA"] = Added(48_490, 47_490, 48_230, 47_270),
        ["SWE"] = Added(49_170, 48_020, 47_250, 47_480),
        ["CAN"] = Added(47_560, 47_770, 48_490, 48_440),
    });

    /// <summary>World Indoor Championships 1999, men's 4x400 m, heat 1: the federation's photo-finish splits, cumulative. Milliseconds.</summary>
    private static readonly Relay Indoor = new(Timing.Rounding.UpHundredth, new()
    {
        ["POL"] = [47_240, 93_130, 138_910, 184_250],
        ["JPN"] = [46_690, 93_200, 139_940, 185_930],
        ["GBR"] = [47_090, 94_050, 140_500, 186_340],
        ["ESP"] = [48_830, 97_200, 146_140, 195_930],
    });

    [Theory]
    [InlineData(1, "AUS USA CAN FRA ITA SWE")]
    [InlineData(2, "USA FRA AUS CAN ITA SWE")]
    [InlineData(3, "FRA USA AUS CAN ITA SWE")]
    [InlineData(4, "USA FRA AUS ITA SWE CAN")]
    public void The_freestyle_relay_runs_in_the_published_order(int leg, string order) => Assert.Equal(order, Freestyle.Order(leg));

    [Theory]
    [InlineData(1, "JPN GBR POL ESP")]
    [InlineData(2, "POL JPN GBR ESP")]
    [InlineData(3, "POL JPN GBR ESP")]
    [InlineData(4, "POL JPN GBR ESP")]
    public void The_indoor_relay_runs_in_the_published_order(int leg, string order) => Assert.Equal(order, Indoor.Order(leg));

    [Fact]
    public void The_gaps_at_every_exchange_are_the_differences_of_the_published_times()
    {
        foreach (var relay in new[] { Freestyle, Indoor })
        {
            for (var leg = 1; leg <= 4; leg++)
            {
                var order = relay.Order(leg).Split(' ');
                for (var i = 0; i < order.Length; i++)
                {
                    var placing = relay.Placing(leg, order[i]);
                    var at = relay.Totals[order[i]][leg - 1];
                    Assert.Equal(at - relay.Totals[order[0]][leg - 1], placing.GapMs);
                    Assert.Equal(i == 0 ? (long?)null : at - relay.Totals[order[i - 1]][leg - 1], placing.AheadMs);
                }
            }
        }
    }

    [Fact]
    public void At_the_last_exchange_of_the_freestyle_relay_the_leader_is_59_hundredths_ahead() =>
        Assert.Equal(590, Freestyle.Placing(3, "USA").GapMs);

    [Fact]
    public void The_finishing_times_are_the_published_totals() => Assert.Equal(
        ["USA 3:08.24", "FRA 3:08.32", "AUS 3:09.91", "ITA 3:11.48", "SWE 3:11.92", "CAN 3:12.26"],
        Freestyle.Totals.Keys.Select(team => $"{team} {Timing.TimeText.Of(Freestyle.Official(team))}"));

    private static long[] Added(params long[] legs) => [.. legs.Select((_, i) => legs.Take(i + 1).Sum())];

    /// <summary>Four legs of one set each; each leg ends with the tag, the last with the set.</summary>
    private sealed record Relay(Timing.Rounding Rounding, Dictionary<string, long[]> Totals)
    {
        public string Order(int leg) => string.Join(' ', LiveOrder.Of(After(leg)).OrderBy(placing => placing.Place).Select(placing => Teams[placing.Lane.Value - 1]));

        public Placing Placing(int leg, string team) => LiveOrder.Of(After(leg))[Teams.IndexOf(team)];

        public long Official(string team) => LiveOrder.OfficialMs(After(4), After(4).Lanes[Teams.IndexOf(team)])!.Value;

        private List<string> Teams => [.. Totals.Keys];

        private HeatState After(int leg)
        {
            var laps = Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 4, round: new PrescribedSet("carry", 100, Worth: 1)));
            var script = new HeatScript(Some.Snapshot(Totals.Count, laps, athletes: 4) with { Rounding = Rounding }).Then("start");
            var handovers = from team in Teams
                            from handover in Enumerable.Range(1, leg)
                            orderby Totals[team][handover - 1]
                            select (Lane: Teams.IndexOf(team) + 1, Handover: handover, At: Time(Totals[team][handover - 1]));
            foreach (var (lane, handover, at) in handovers)
            {
                script.Then(handover < 4 ? $"lane {lane} tag {handover * 2} at {at}" : $"lane {lane} step 7 done at {at}");
            }

            return script.State;
        }

        private static string Time(long ms) => $"{ms / 60_000}:{ms % 60_000 / 1000:00}.{ms % 1000:000}";
    }
}
