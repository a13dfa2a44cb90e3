using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Heats;

/// <summary>Who may ask for what: docs/wire.md, section 2.</summary>
public sealed class CommandRolesTests(SharedFloor shared) : FloorTest(shared)
{
    private static readonly string[] Judges = ["take-seat", "give-up-seat", "ready"];
    private static readonly string[] OrganisersOnly =
        ["call", "replace-call", "schedule-start", "observe-start", "recall-start", "resume", "return-to-call", "end", "freeze", "reopen"];

    /// <summary>The head judge's alone.</summary>
    private const string DecideAppeal = "decide-appeal";

    public static TheoryData<string> Commands => [.. WireNames.Commands.Select(command => command.Name)];

    /// <summary>A body with every field that any command needs; each takes its own. A new command that needs more is told here by an answer of 400.</summary>
    private static object Fields(TestHeat heat) => new
    {
        lane = 1,
        seat = "s",
        lanes = new[] { 1 },
        step = 1,
        reps = 1,
        adjustMs = 1000,
        fromStep = 1,
        athletes = new[] { "Ann", "Bo", "Cy" },
        prescription = "open",
        target = heat.Floor.Organiser.NewId(),
        source = "paper",
        tap = heat[1].Done(1),
        head = 0,
        addMs = 1000,
        reason = "r",
        tie = true,
        inTime = true,
        inHeat = "rerun",
        member = "Ann",
        grounds = "two reps not counted",
        outcome = "no-change",
    };

    [Fact]
    public async Task Whoever_may_not_ask_is_refused_and_nothing_is_done()
    {
        var heat = await Floor.Run(lanes: 1);
        var announcer = await Floor.Join(Role.Announcer, null, "Ada");

        await NothingIsRecorded(heat, async () =>
        {
            foreach (var command in WireNames.Commands.Select(command => command.Name))
            {
                Assert.Equal((command, 401, "not-signed-in"), await Told(heat, Floor.Visitor(), command));
                Assert.Equal((command, 403, "not-yours"), await Told(heat, announcer, command));
                if (!Judges.Contains(command))
                {
                    Assert.Equal((command, 403, "not-yours"), await Told(heat, heat[1].Phone, command));
                }

                if (command == DecideAppeal)
                {
                    Assert.Equal((command, 403, "not-yours"), await Told(heat, Floor.Organiser, command));
                }

                if (OrganisersOnly.Contains(command))
                {
                    Assert.Equal((command, 403, "not-yours"), await Told(heat, Floor.HeadJudge, command));
                }
            }
        });
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public async Task Whoever_may_ask_gets_another_answer_than_that(string command)
    {
        var heat = await Floor.Run(lanes: 1);
        Visitor[] may = [.. command == DecideAppeal ? (Visitor[])[] : [Floor.Organiser], .. OrganisersOnly.Contains(command) ? (Visitor[])[] : [Floor.HeadJudge], .. Judges.Contains(command) ? (Visitor[])[heat[1].Phone] : []];

        foreach (var who in may)
        {
            var answer = await heat.Command(who, command, Fields(heat));
            Assert.True(answer.Status is 200 or 404 or 409, $"{answer}");
            Assert.NotEqual("not-yours", answer.Code);
        }
    }

    [Fact]
    public async Task A_refusal_names_whom_to_ask()
    {
        var heat = await Floor.Run(lanes: 1);

        Assert.Equal("A lane judge cannot do this. Ask the head judge.", (await heat.Command(heat[1].Phone, "warn", new { lane = 1 })).Detail);
        Assert.Equal("A head judge cannot do this. Ask the organiser.", (await heat.Command(Floor.HeadJudge, "end")).Detail);
    }

    private static async Task<(string, int, string)> Told(TestHeat heat, Visitor who, string command)
    {
        var answer = await heat.Command(who, command, Fields(heat));
        return (command, answer.Status, answer.Code);
    }
}
