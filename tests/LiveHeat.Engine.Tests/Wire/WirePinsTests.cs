using System.Text.Json;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Taps;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Scoring;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Wire;

/// <summary>Names on the wire are for ever: every fact and every command to the letter, both ways.</summary>
public class WirePinsTests
{
    public static TheoryData<string> Facts => [.. FactPins.All.Select(pin => Kind(pin, "fact"))];

    public static TheoryData<string> Commands => [.. CommandPins.All.Select(pin => Kind(pin, "command"))];

    private static string Kind(string pin, string field) => JsonDocument.Parse(pin).RootElement.GetProperty(field).GetString()!;

    [Fact]
    public void Every_fact_and_every_command_is_pinned_once()
    {
        Assert.Equal(Cases<HeatFact>(WireNames.Facts), FactPins.All.Select(pin => Kind(pin, "fact")).Order());
        Assert.Equal(Cases<HeatCommand>(WireNames.Commands), CommandPins.All.Select(pin => Kind(pin, "command")).Order());
    }

    [Theory]
    [MemberData(nameof(Facts))]
    public void A_fact_is_written_and_read_to_the_letter(string kind)
    {
        var pin = FactPins.All.Single(pin => Kind(pin, "fact") == kind);
        var fact = Examples.Facts.Single(fact => fact.GetType() == WireNames.Facts.Single(pair => pair.Name == kind).Type);

        Assert.Equal(pin, WireJson.Write(fact));
        Assert.Equal(fact, WireJson.ReadFact(pin));
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void A_command_is_written_and_read_to_the_letter(string kind)
    {
        var pin = CommandPins.All.Single(pin => Kind(pin, "command") == kind);
        var command = Examples.Commands.Single(command => command.GetType() == WireNames.Commands.Single(pair => pair.Name == kind).Type);

        Assert.Equal(pin, JsonSerializer.Serialize(command, WireJson.Options));
        Assert.Equal(command, WireJson.ReadCommand(JsonDocument.Parse(pin).RootElement));
    }

    /// <summary>As older pads and other clients may send it: only what must be there, in any order, with fields that nobody knows.</summary>
    [Theory]
    [InlineData("""{"step":5,"id":"Zm9vYmFyYmF6cXV4MTIzNA.1","instant":1795600841200,"lane":2,"mood":"good","fact":"step-done"}""")]
    [InlineData("""{"fact":"step-done","step":5,"timeKnown":true,"lane":2,"seat":null,"start":null,"phone":null,"id":"Zm9vYmFyYmF6cXV4MTIzNA.1","instant":1795600841200}""")]
    public void What_is_left_out_has_its_usual_value(string json) => Assert.Equal(
        new HeatFact.StepDone { Id = new("Zm9vYmFyYmF6cXV4MTIzNA", 1), Instant = new(1_795_600_841_200), Lane = new(2), Step = 5 }, WireJson.ReadFact(json));

    [Fact]
    public void Relay_orders_are_written_and_read_to_the_letter()
    {
        (string Pin, RelayOrder Order)[] pins =
        [
            ("""{"kind":"in-turn"}""", new RelayOrder.InTurn()), ("""{"kind":"blocks","size":2}""", new RelayOrder.Blocks(2)), ("""{"kind":"each-movement"}""", new RelayOrder.EachMovement()),
            ("""{"kind":"listed","athletes":[1,2,1]}""", new RelayOrder.Listed([1, 2, 1])), ("""{"kind":"together"}""", new RelayOrder.Together()),
        ];

        Assert.Equal(WireNames.Orders.Select(pair => pair.Type), pins.Select(pin => pin.Order.GetType()));
        Assert.All(pins, pin =>
        {
            Assert.Equal(pin.Pin, JsonSerializer.Serialize(pin.Order, WireJson.Options));
            Assert.Equal(pin.Order, JsonSerializer.Deserialize<RelayOrder>(pin.Pin, WireJson.Options));
        });
    }

    [Theory]
    [InlineData(typeof(Role), "viewer announcer judge head-judge organiser")]
    [InlineData(typeof(Duty), "primary witness timekeeper")]
    [InlineData(typeof(Source), "paper video")]
    [InlineData(typeof(StopReason), "withdrew medical")]
    [InlineData(typeof(Phase), "planned called armed counting-down running halted ended frozen certified")]
    [InlineData(typeof(Counting), "sets reps")]
    [InlineData(typeof(FinishKind), "none line mat")]
    [InlineData(typeof(Unfinished), "by-worth cap-plus-seconds")]
    [InlineData(typeof(StepKind), "set tag value finish attempt")]
    [InlineData(typeof(Unit), "reps cal m kg lb")]
    [InlineData(typeof(Rounding), "up-tenth up-second up-hundredth down-hundredth")]
    [InlineData(typeof(TimekeeperRule), "athletics swimming")]
    [InlineData(typeof(NewsKind), "lead overtake tag finish stopped disqualified")]
    [InlineData(typeof(Outcome), "working finished finished-time-unknown capped stopped did-not-start through disqualified")]
    [InlineData(typeof(LaneStatus), "waiting seated ready working held finished capped stopped withdrawn through disqualified")]
    [InlineData(typeof(Consequence), "allowed penalty ranks-below void")]
    [InlineData(typeof(AppealOutcome), "no-change seconds reps rerun")]
    [InlineData(typeof(Points.Taken), "placed did-not-start disqualified result-void")]
    [InlineData(typeof(TapOutcome), "accepted known conflict refused")]
    public void Words_of_a_field_are_what_they_are(Type field, string names) => Assert.Equal(
        names, string.Join(' ', Enum.GetValues(field).Cast<object>().Select(value => JsonSerializer.Serialize(value, field, WireJson.Options).Trim('"'))));

    [Fact]
    public void Flags_are_a_list_of_words() => Assert.Equal(
        """["quarantined","late","early","future","old-start","old-plan","no-such-step","no-seat","implausible","repeat","after-cap","after-stop","disagreement"]""",
        JsonSerializer.Serialize(Enum.GetValues<FactFlags>().Aggregate((all, flag) => all | flag), WireJson.Options));

    private static IEnumerable<string> Cases<TFamily>(IReadOnlyList<(Type Type, string Name)> names) => typeof(TFamily).Assembly.GetTypes()
        .Where(type => type.IsSubclassOf(typeof(TFamily)) && !type.IsAbstract).Select(type => names.Single(pair => pair.Type == type).Name).Order();
}
