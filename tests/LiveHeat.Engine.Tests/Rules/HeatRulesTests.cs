using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Rules;

/// <summary>Every command in every phase.</summary>
public class HeatRulesTests
{
    /// <summary>
    /// What an organiser hears, phase by phase: ok, or the stable code. Columns: planned, called, armed, counting down, running, halted, ended,
    /// frozen, certified. wp is wrong-phase.
    /// </summary>
    private const string Table = """
        call               ok  wp              wp  wp                 wp                 wp                 wp           wp          wp
        replace-call       wp  ok              ok  wp                 wp                 wp                 wp           wp          wp
        take-seat          wp  ok              ok  ok                 ok                 ok                 ok           wp          wp
        give-up-seat       wp  ok              ok  ok                 ok                 ok                 ok           wp          wp
        ready              wp  ok              ok  ok                 ok                 ok                 ok           wp          wp
        override-ready     wp  ok              ok  wp                 wp                 wp                 wp           wp          wp
        withdraw-lane      wp  ok              ok  wp                 wp                 wp                 wp           wp          wp
        schedule-start     wp  lanes-not-ready ok  already-started    already-started    wp                 wp           wp          wp
        observe-start      wp  ok              ok  already-started    already-started    wp                 wp           wp          wp
        recall-start       wp  wp              wp  ok                 ok                 wp                 wp           wp          wp
        halt               wp  wp              wp  wp                 ok                 wp                 wp           wp          wp
        resume             wp  wp              wp  wp                 wp                 ok                 wp           wp          wp
        return-to-call     wp  wp              wp  wp                 wp                 ok                 wp           wp          wp
        end                wp  wp              wp  wp                 ok                 ok                 wp           wp          wp
        send-back          wp  ok              ok  ok                 ok                 ok                 ok           ok          wp
        owe-reps           wp  ok              ok  ok                 ok                 ok                 ok           ok          wp
        hold-lane          wp  wp              wp  wp                 ok                 wp                 wp           wp          wp
        resume-lane        wp  wp              wp  wp                 wp                 wp                 wp           wp          wp
        adjust-time        wp  ok              ok  ok                 ok                 ok                 ok           ok          wp
        change-line-up     wp  ok              ok  ok                 ok                 ok                 ok           ok          wp
        take-variant       wp  ok              ok  ok                 ok                 ok                 ok           ok          wp
        void               wp  ok              ok  ok                 ok                 ok                 ok           ok          wp
        admit              wp  ok              ok  ok                 ok                 ok                 ok           ok          wp
        give-reason        wp  ok              ok  ok                 ok                 ok                 ok           ok          ok
        add                wp  wp              wp  ok                 ok                 ok                 ok           ok          wp
        warn               wp  ok              ok  ok                 ok                 ok                 ok           ok          wp
        penalise           wp  ok              ok  ok                 ok                 ok                 ok           ok          wp
        answer-call        wp  ok              ok  ok                 ok                 ok                 ok           ok          wp
        decide-near-tie    wp  no-near-tie     no-near-tie no-near-tie no-near-tie       no-near-tie        no-near-tie  no-near-tie wp
        decide-cap         wp  no-near-tie     no-near-tie no-near-tie no-near-tie       no-near-tie        no-near-tie  no-near-tie wp
        order-rerun        wp  ok              ok  ok                 ok                 ok                 ok           ok          wp
        disqualify         wp  ok              ok  ok                 ok                 ok                 ok           ok          wp
        file-appeal        wp  wp              wp  wp                 ok                 ok                 ok           ok          ok
        decide-appeal      wp  ok              ok  ok                 ok                 ok                 ok           ok          wp
        freeze             wp  wp              wp  heat-still-running heat-still-running heat-still-running ok           wp          wp
        certify            wp  not-frozen      not-frozen not-frozen  not-frozen         not-frozen         not-frozen   ok          already-signed
        reopen             wp  wp              wp  wp                 wp                 wp                 wp           ok          ok
        """;

    private static readonly Phase[] Phases = Enum.GetValues<Phase>();

    public static TheoryData<string, string> Rows
    {
        get
        {
            var rows = new TheoryData<string, string>();
            foreach (var words in Table.Split('\n').Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)))
            {
                rows.Add(words[0], string.Join(' ', words.Skip(1)));
            }

            return rows;
        }
    }

    [Fact]
    public void The_table_names_every_command() =>
        Assert.Equal(WireNames.Commands.Select(pair => pair.Name).Order(), Rows.Select(row => (string)row[0]).Order());

    [Theory]
    [MemberData(nameof(Rows))]
    public void In_every_phase_a_command_is_accepted_or_refused_with_its_code(string command, string codes) =>
        Assert.Equal(codes, string.Join(' ', Phases.Select(phase => Decide(command, phase) switch
        {
            Verdict.Accepted => "ok",
            Verdict.Refused { Code: "wrong-phase" } => "wp",
            Verdict.Refused { Code: var code } => code,
            _ => "nothing",
        })));

    [Fact]
    public void Every_refusal_is_a_sentence()
    {
        foreach (var refused in WireNames.Commands.SelectMany(pair => Phases.Select(phase => Decide(pair.Name, phase))).OfType<Verdict.Refused>())
        {
            Assert.Matches("^[a-z]+(-[a-z]+)*$", refused.Code);
            Assert.Matches(@"^[A-Z].{10,}[.?]$", refused.Why.Sentence());
        }
    }

    [Fact]
    public void What_is_accepted_takes_over_the_commands_id_and_the_askers_name_and_folds()
    {
        foreach (var (name, phase) in WireNames.Commands.SelectMany(pair => Phases.Select(phase => (pair.Name, phase))))
        {
            var (script, now) = In(phase);
            if (Decide(name, phase) is Verdict.Accepted(var fact))
            {
                Assert.Equal((Some.Id("asks", 7), now, Asker(fact)), (fact.Id, fact.Instant, ((HeatFact.Desk)fact).By));
                script.Append(fact);
                Assert.Equal(fact, script.State.Find(fact.Id)!.Fact);
            }
        }
    }

    private static Verdict Decide(string command, Phase phase)
    {
        var (script, now) = In(phase);
        Assert.Equal(phase, script.State.PhaseAt(now));
        return HeatRules.Decide(script.State, Command(command, script, now), Some.Asking(command == "decide-appeal" ? Some.HeadJudge : Some.Organiser, now, setup: Some.Snapshot()));
    }

    /// <summary>Only the head judge decides an appeal.</summary>
    private static By Asker(HeatFact fact) => fact is HeatFact.AppealDecided ? Some.HeadJudge : Some.Organiser;

    /// <summary>The examples of the commands, so set that only the phase is against them.</summary>
    private static HeatCommand Command(string name, HeatScript script, Instant now)
    {
        var type = WireNames.Commands.Single(pair => pair.Name == name).Type;
        var command = Examples.Commands.Single(command => command.GetType() == type) with { Id = Some.Id("asks", 7) };
        return command switch
        {
            HeatCommand.GiveUpSeat give => give with { Seat = new("s-2") },
            HeatCommand.Ready ready => ready with { Seat = new("s-2") },
            HeatCommand.ObserveStart observe => observe with { GoAt = now, Start = null },
            HeatCommand.Void about => about with { Target = script.State.Snapshot is null ? about.Target : script["warning"] },
            HeatCommand.Admit about => about with { Target = script.State.Snapshot is null ? about.Target : script["early"] },
            HeatCommand.GiveReason about => about with { Target = script.State.Snapshot is null ? about.Target : script["warning"] },
            HeatCommand.Freeze freeze => freeze with { Head = script.State.Head },
            HeatCommand.Certify certify => certify with { Head = script.State.SignedHead, Pending = script.State.Pending },
            HeatCommand.DecideAppeal decide => decide with { Target = script.State.Snapshot is null ? decide.Target : script["appeal"] },
            var other => other,
        };
    }

    private static (HeatScript Script, Instant Now) In(Phase phase)
    {
        if (phase == Phase.Planned)
        {
            return (new HeatScript(called: false), HeatScript.At("-1:00"));
        }

        var script = new HeatScript(seated: false).Then("""
            lane 1 seat s-1 taken as primary at -0:50
            lane 2 seat s-2 taken as primary at -0:50
            lane 1 ready with s-1
            lane 2 ready with s-2
            warn lane 1 [warning]
            lane 1 appeals at -0:45 [appeal]
            lane 1 step 1 done at -0:40 [early]
            """);
        (Phase Phase, string Score, string Now)[] way =
        [
            (Phase.Called, "", "-0:30"), (Phase.Armed, "override lanes 3", "-0:30"), (Phase.CountingDown, "start", "-0:05"), (Phase.Running, "", "1:00"),
            (Phase.Halted, "halt at 2:00", "2:30"), (Phase.Ended, "end at 10:10", "11:00"), (Phase.Frozen, "freeze at 12:00", "12:30"),
            (Phase.Certified, "sign organiser at 13:00\nsign head judge at 13:10", "13:30"),
        ];
        foreach (var step in way.TakeWhile(step => step.Phase <= phase))
        {
            script.Then(step.Score);
        }

        return (script, HeatScript.At(way.Single(step => step.Phase == phase).Now));
    }
}
