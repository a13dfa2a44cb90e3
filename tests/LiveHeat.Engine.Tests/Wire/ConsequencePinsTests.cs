using System.Text.Json;
using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Wire;

/// <summary>Penalty, consequences and the time for appeals, to the letter; where nothing is said nothing is written.</summary>
public class ConsequencePinsTests
{
    private const string Told = ""","penalty":{"addMs":30000,"reps":0,"warnFirst":true},"consequences":{"wrongAthlete":"penalty","lineUpChange":"ranks-below","variant":null}}""";

    private static readonly Workout Silent = Some.Workout();

    [Fact]
    public void A_workout_says_them_last_or_not_at_all()
    {
        var told = Silent with { Penalty = new(30_000), Consequences = new(Consequence.Penalty, Consequence.RanksBelow) };
        var silent = JsonSerializer.Serialize(Silent, WireJson.Options);

        Assert.DoesNotContain("penalty", silent, StringComparison.Ordinal);
        Assert.DoesNotContain("consequences", silent, StringComparison.Ordinal);
        Assert.Equal(silent[..^1] + Told, JsonSerializer.Serialize(told, WireJson.Options));
        Assert.Equal(told, JsonSerializer.Deserialize<Workout>(silent[..^1] + Told, WireJson.Options));
        Assert.Equal(Silent, JsonSerializer.Deserialize<Workout>(silent, WireJson.Options));
    }

    /// <summary>Of rounds by the clock a decision names the round; at the cap, as before there was such a choice, it does not.</summary>
    [Fact]
    public void A_decision_about_a_step_too_close_names_its_round_or_not_at_all()
    {
        var fact = Examples.Facts.OfType<HeatFact.CapDecided>().Single();
        var json = JsonSerializer.Serialize<HeatFact>(fact with { Round = 2 }, WireJson.Options);

        Assert.Contains("\"withinMs\":107,\"round\":2,", json, StringComparison.Ordinal);
        Assert.Equal(fact with { Round = 2 }, JsonSerializer.Deserialize<HeatFact>(json, WireJson.Options));
        Assert.DoesNotContain("round", JsonSerializer.Serialize<HeatFact>(fact, WireJson.Options), StringComparison.Ordinal);
    }

    /// <summary>In which part, of those that are scored apart, it costs; of heats before there was such a choice it does not say.</summary>
    [Fact]
    public void A_penalty_and_what_an_appeal_gives_name_their_part_or_not_at_all()
    {
        var (penalty, decided) = (Examples.Facts.OfType<HeatFact.Penalised>().Single(), Examples.Facts.OfType<HeatFact.AppealDecided>().Single());

        Assert.Contains("""{"fact":"penalised","addMs":30000,"reps":0,"part":1,"lane":2,""", WireJson.Write(penalty with { Part = 1 }), StringComparison.Ordinal);
        Assert.Contains("\"reps\":-2,\"inHeat\":null,\"part\":0,", WireJson.Write(decided with { Part = 0 }), StringComparison.Ordinal);
        Assert.Equal(penalty with { Part = 1 }, WireJson.ReadFact(WireJson.Write(penalty with { Part = 1 })));
        Assert.Equal(decided with { Part = 0 }, WireJson.ReadFact(WireJson.Write(decided with { Part = 0 })));
        Assert.DoesNotContain("part", WireJson.Write(penalty) + WireJson.Write(decided), StringComparison.Ordinal);
        Assert.Null(Assert.IsType<HeatFact.Penalised>(WireJson.ReadFact(WireJson.Write(penalty))).Part);
    }

    [Fact]
    public void What_is_left_out_of_them_has_its_usual_value()
    {
        Assert.Equal(new PenaltyRule(0, 5, WarnFirst: true), JsonSerializer.Deserialize<PenaltyRule>("""{"addMs":0,"reps":5}""", WireJson.Options));
        Assert.Equal(new Consequences() { Variant = Consequence.Void }, JsonSerializer.Deserialize<Consequences>("""{"variant":"void"}""", WireJson.Options));
        Assert.Equal(new CompetitionSetup("Breakwater Relays"), JsonSerializer.Deserialize<CompetitionSetup>("""{"name":"Breakwater Relays"}""", WireJson.Options));
    }

    [Fact]
    public void A_snapshot_says_the_time_for_appeals_last_or_not_at_all_and_a_signature_its_pending_lanes()
    {
        var silent = JsonSerializer.Serialize(Some.Snapshot(), WireJson.Options);
        Assert.DoesNotContain("appealMinutes", silent, StringComparison.Ordinal);
        Assert.Equal($"{silent[..^1]},\"appealMinutes\":20}}", JsonSerializer.Serialize(Some.Snapshot() with { AppealMinutes = 20 }, WireJson.Options));

        var signed = Examples.Facts.OfType<HeatFact.Certified>().Single() with { Pending = [new(2), new(4)] };
        Assert.Contains("""{"fact":"certified","head":413,"pending":[2,4],"by":""", WireJson.Write(signed), StringComparison.Ordinal);
        Assert.Equal(signed, WireJson.ReadFact(WireJson.Write(signed)));
    }

    [Fact]
    public void A_freeze_says_what_was_missing_last_or_not_at_all()
    {
        var frozen = Examples.Facts.OfType<HeatFact.Frozen>().Single() with { Missing = [new(new(2), 3, new(1_795_600_841_100))], NoTiebreak = [new(1)] };
        Assert.Contains("""{"fact":"frozen","head":412,"over":"phone of lane 2 is dead","missing":[{"lane":2,"taps":3,"lastSeen":1795600841100}],"noTiebreak":[1],"by":""", WireJson.Write(frozen), StringComparison.Ordinal);
        Assert.Equal(frozen, WireJson.ReadFact(WireJson.Write(frozen)));
    }
}
