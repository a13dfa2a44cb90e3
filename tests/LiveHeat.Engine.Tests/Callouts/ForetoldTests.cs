using LiveHeat.Engine.Forecasts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Callouts;

/// <summary>Callouts from the forecast and the clock.</summary>
public class ForetoldTests
{
    private const string TwoAtWork = "start\nlane 1 step 5 done at 2:00\nlane 2 step 4 done at 2:10\nlane 3 step 1 done at 1:30";

    [Fact]
    public void A_catch_to_come_says_who_whom_where_when_and_how_likely()
    {
        var told = SaidAt.One(SaidAt.Of(TwoAtWork, "2:15", SaidAt.Foretold(catches: [new CatchToCome(Some.Lane(2), Some.Lane(1), 6, 20_000, 0.7)])), CalloutKind.CatchToCome);

        Assert.Equal([Some.Lane(2), Some.Lane(1)], told.Lanes);
        Assert.Equal((6, HeatScript.At("2:35"), 0.7, CalloutGrounds.Pace), (told.Step, told.Due, told.Chance, told.Grounds));
        Assert.Equal(HeatScript.At("2:10"), told.At);
        Assert.Null(told.Place);
    }

    [Fact]
    public void A_catch_that_has_happened_or_is_overdue_is_not_to_come()
    {
        var toCome = SaidAt.Foretold(catches: [new CatchToCome(Some.Lane(2), Some.Lane(1), 6, 20_000, 0.7)]);
        Assert.DoesNotContain(SaidAt.Of($"{TwoAtWork}\nlane 2 tag 6 at 2:14", "2:15", toCome).Callouts, callout => callout.Kind == CalloutKind.CatchToCome);
        Assert.DoesNotContain(SaidAt.Of(TwoAtWork, "2:15", SaidAt.Foretold(catches: [new CatchToCome(Some.Lane(2), Some.Lane(1), 6, 0, 0.7)])).Callouts, callout => callout.Kind == CalloutKind.CatchToCome);
    }

    [Theory]
    [InlineData(9_000, true)]
    [InlineData(11_000, false)]
    [InlineData(-2_000, true)]
    [InlineData(-4_000, false)]
    public void A_tag_is_told_of_shortly_before_it(long inMs, bool told) =>
        Assert.Equal(told, SaidAt.Of(TwoAtWork, "2:15", SaidAt.Foretold(tags: [new TagToCome(Some.Lane(1), 6, inMs)])).Callouts.Any(callout => callout.Kind == CalloutKind.TagToCome));

    [Theory]
    [InlineData(0.19, false)]
    [InlineData(0.2, true)]
    [InlineData(0.8, true)]
    [InlineData(0.81, false)]
    public void A_team_on_the_edge_of_the_cap_is_told_of_while_nobody_can_tell(double chance, bool told) =>
        Assert.Equal(told, SaidAt.Of(TwoAtWork, "2:15", SaidAt.Foretold(lanes: SaidAt.Lane(2, chance))).Callouts.Any(callout => callout.Kind == CalloutKind.CapInDoubt));

    [Fact]
    public void The_edge_of_the_cap_is_worth_saying_again_only_when_the_cap_is_nearer()
    {
        string Id(string at) => SaidAt.One(SaidAt.Of($"start\nlane 2 step 4 done at {at}", at, SaidAt.Foretold(lanes: SaidAt.Lane(2, 0.5))), CalloutKind.CapInDoubt).Id;

        Assert.Equal(Id("3:00"), Id("4:00"));
        Assert.Equal(4, new[] { Id("4:00"), Id("6:00"), Id("8:30"), Id("9:30") }.Distinct().Count());
    }

    [Fact]
    public void After_a_recalled_start_the_same_is_worth_saying_again()
    {
        string[] Ids(string before)
        {
            var foretold = SaidAt.Of(before + TwoAtWork, "2:15", SaidAt.Foretold(tags: [new TagToCome(Some.Lane(1), 6, 5_000)], lanes: SaidAt.Lane(2, 0.5)));
            var fastest = SaidAt.Of($"{before}start\nlane 1 step 1 done at 0:20", "0:21", earlier: Bests.Of(HeatScript.Play("start\nlane 1 step 1 done at 0:25")));
            return [SaidAt.One(foretold, CalloutKind.TagToCome).Id, SaidAt.One(foretold, CalloutKind.CapInDoubt).Id, SaidAt.One(fastest, CalloutKind.FastestSet).Id];
        }

        Assert.Equal(Ids(""), Ids(""));
        Assert.Empty(Ids("").Intersect(Ids("start\nrecall\n")));
    }

    [Fact]
    public void Two_teams_with_even_chances_race_for_the_place()
    {
        var forecast = SaidAt.Foretold(lanes: [SaidAt.Lane(1, 1, 0.1, 0.5, 0.4), SaidAt.Lane(2, 1, 0.1, 0.45, 0.45), SaidAt.Lane(3, 1, 0.8, 0.05, 0.15)]);
        const string Late = "start\nlane 3 step 7 done at 3:00\nlane 1 step 6 done at 3:05\nlane 2 step 6 done at 3:06";

        var race = SaidAt.One(SaidAt.Of(Late, "3:10", forecast), CalloutKind.CloseRace);
        Assert.Equal((2, CalloutGrounds.Pace), (race.Place, race.Grounds));
        Assert.Equal([Some.Lane(1), Some.Lane(2)], race.Lanes);
        Assert.DoesNotContain(SaidAt.Of(TwoAtWork, "2:15", forecast).Callouts, callout => callout.Kind == CalloutKind.CloseRace);
    }

    [Fact]
    public void The_last_minute_is_told_of_once_and_not_after_twenty_seconds()
    {
        Assert.DoesNotContain(SaidAt.Of("start", "8:59.9").Callouts, callout => callout.Kind == CalloutKind.LastMinute);
        var told = SaidAt.One(SaidAt.Of("start\nlane 1 step 9 done at 8:00", "9:00"), CalloutKind.LastMinute);
        Assert.Equal([Some.Lane(2), Some.Lane(3)], told.Lanes);
        Assert.Equal((HeatScript.At("9:00"), HeatScript.At("10:00")), (told.At, told.Due));
        Assert.Equal(told.Id, SaidAt.One(SaidAt.Of("start\nlane 1 step 9 done at 8:00", "9:20"), CalloutKind.LastMinute).Id);
        Assert.DoesNotContain(SaidAt.Of("start", "9:20.1").Callouts, callout => callout.Kind == CalloutKind.LastMinute);
    }

    [Fact]
    public void While_the_heat_is_halted_nothing_is_foretold()
    {
        var sheet = SaidAt.Of($"{TwoAtWork}\nhalt at 2:14", "2:15", SaidAt.Foretold(tags: [new TagToCome(Some.Lane(1), 6, 2_000)]));

        Assert.DoesNotContain(sheet.Callouts, callout => callout.Grounds == CalloutGrounds.Pace);
    }
}
