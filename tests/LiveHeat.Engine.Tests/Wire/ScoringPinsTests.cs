using System.Text.Json;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Wire;

/// <summary>What makes a result, to the letter; a workout that says nothing is written as it was before there was a choice.</summary>
public class ScoringPinsTests
{
    private static readonly (string Pin, ScoringRule Rule)[] Pins =
    [
        ("""{"kind":"for-time","unfinished":"cap-plus-seconds"}""", new ScoringRule.ForTime(Unfinished.CapPlusSeconds)),
        ("""{"kind":"most-work"}""", new ScoringRule.MostWork()),
        ("""{"kind":"heaviest-load","attempts":3,"loadSum":"sum-of-best"}""", new ScoringRule.HeaviestLoad(3, LoadSum.SumOfBest)),
        ("""{"kind":"most-reading"}""", new ScoringRule.MostReading()),
    ];

    [Fact]
    public void Scoring_rules_are_written_and_read_to_the_letter()
    {
        Assert.Equal(WireNames.Scorings.Select(pair => pair.Type), Pins.Select(pin => pin.Rule.GetType()));
        Assert.Equal(typeof(ScoringRule).GetNestedTypes().Where(type => type.IsSubclassOf(typeof(ScoringRule))), WireNames.Scorings.Select(pair => pair.Type));
        Assert.All(Pins, pin =>
        {
            Assert.Equal(pin.Pin, JsonSerializer.Serialize(pin.Rule, WireJson.Options));
            Assert.Equal(pin.Rule, JsonSerializer.Deserialize<ScoringRule>(pin.Pin, WireJson.Options));
        });
        Assert.Equal(ScoringRule.Usual, JsonSerializer.Deserialize<ScoringRule>("""{"kind":"for-time"}""", WireJson.Options));
    }

    [Fact]
    public void A_workout_that_says_nothing_has_no_such_field_and_one_that_does_has_it_last()
    {
        var silent = JsonSerializer.Serialize(Some.Workout(), WireJson.Options);
        var told = JsonSerializer.Serialize(Some.Workout() with { Scoring = Pins[0].Rule }, WireJson.Options);

        Assert.DoesNotContain("scoring", silent, StringComparison.Ordinal);
        Assert.Equal($"{silent[..^1]},\"scoring\":{Pins[0].Pin}}}", told);
        Assert.Equal(Pins[0].Rule, JsonSerializer.Deserialize<Workout>(told, WireJson.Options)!.Scoring);
        Assert.Null(JsonSerializer.Deserialize<Workout>(silent, WireJson.Options)!.Scoring);
    }

    [Fact]
    public void Rounds_by_the_clock_are_written_to_the_letter_and_absent_where_there_are_none()
    {
        var told = Some.Prescription() with { Clock = new WorkClock(180_000, 60_000, true) };
        var json = JsonSerializer.Serialize(told, WireJson.Options);

        Assert.DoesNotContain("clock", JsonSerializer.Serialize(Some.Prescription(), WireJson.Options), StringComparison.Ordinal);
        Assert.EndsWith(""","clock":{"workMs":180000,"restMs":60000,"repeat":true}}""", json, StringComparison.Ordinal);
        Assert.Equal(told, JsonSerializer.Deserialize<Prescription>(json, WireJson.Options));
    }

    [Fact]
    public void Parts_and_shared_sets_are_written_to_the_letter_and_absent_where_there_are_none()
    {
        var plain = JsonSerializer.Serialize(Some.Prescription(), WireJson.Options);
        Assert.DoesNotContain("parts", plain, StringComparison.Ordinal);
        Assert.DoesNotContain("together", plain, StringComparison.Ordinal);
        Assert.DoesNotContain("minimumEach", plain, StringComparison.Ordinal);
        Assert.DoesNotContain("inRound", plain, StringComparison.Ordinal);

        var told = Some.Prescription(round: [new PrescribedSet("row", 60) { MinimumEach = 15 }, new PrescribedSet("wall-ball", 10) { Together = 2 }, new PrescribedSet("row", 9) { InRound = 3 }])
            with
        { Parts = (Items<WorkoutPart>)[new("Row", new TiebreakSet(1, 1)), new("Rest", null)] };
        var json = JsonSerializer.Serialize(told, WireJson.Options);
        Assert.Contains("""{"movement":"row","quantity":60,"worth":null,"increment":1,"load":null,"reading":false,"minimumEach":15}""", json, StringComparison.Ordinal);
        Assert.Contains("""{"movement":"wall-ball","quantity":10,"worth":null,"increment":1,"load":null,"reading":false,"together":2}""", json, StringComparison.Ordinal);
        Assert.Contains("""{"movement":"row","quantity":9,"worth":null,"increment":1,"load":null,"reading":false,"inRound":3}""", json, StringComparison.Ordinal);
        Assert.EndsWith(""","parts":[{"name":"Row","last":{"round":1,"set":1}},{"name":"Rest","last":null}]}""", json, StringComparison.Ordinal);
        Assert.Equal(told, JsonSerializer.Deserialize<Prescription>(json, WireJson.Options));
    }
}
