using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Rules;

/// <summary>docs/wire.md: judges take, give up and ready their own lane; the head judge rules; the organiser may do all but decide an appeal.</summary>
public class PermissionsTests
{
    private static readonly string[] Judges = ["take-seat", "give-up-seat", "ready"];

    /// <summary>The head judge's alone.</summary>
    private const string DecideAppeal = "decide-appeal";

    private static readonly string[] HeadJudges =
    [
        "override-ready", "withdraw-lane", "halt", "send-back", "owe-reps", "hold-lane", "resume-lane", "adjust-time", "change-line-up", "take-variant", "void", "admit",
        "give-reason", "add", "warn", "penalise", "answer-call", "decide-near-tie", "decide-cap", "order-rerun", "certify", "disqualify", "file-appeal", DecideAppeal, .. Judges,
    ];

    public static TheoryData<string> Commands => [.. WireNames.Commands.Select(pair => pair.Name)];

    private static HeatCommand Example(string name) => Examples.Commands.Single(command => command.GetType() == WireNames.Commands.Single(pair => pair.Name == name).Type);

    private static Verdict.Refused? Refuse(string name, Role role, int? lane = 2) => Permissions.Refuse(Example(name), Some.Asking(new By("in-x", "Xe", role), Some.Go, lane));

    [Theory]
    [MemberData(nameof(Commands))]
    public void Each_role_may_do_what_is_its_own_and_nothing_else(string name)
    {
        Assert.Equal(name == DecideAppeal ? "not-yours" : null, Refuse(name, Role.Organiser)?.Code);
        Assert.Equal(HeadJudges.Contains(name) ? null : "not-yours", Refuse(name, Role.HeadJudge)?.Code);
        Assert.Equal(Judges.Contains(name) ? null : "not-yours", Refuse(name, Role.Judge)?.Code);
        Assert.Equal("not-yours", Refuse(name, Role.Announcer)?.Code);
        Assert.Equal("not-yours", Refuse(name, Role.Viewer)?.Code);
    }

    [Fact]
    public void A_judge_asks_for_no_other_lane()
    {
        foreach (var name in Judges)
        {
            Assert.Equal("not-your-lane", Refuse(name, Role.Judge, lane: 3)?.Code);
            Assert.Equal("not-your-lane", Refuse(name, Role.Judge, lane: null)?.Code);
            Assert.Null(Refuse(name, Role.HeadJudge, lane: null));
        }
    }

    [Fact]
    public void Who_is_refused_hears_whom_to_ask()
    {
        Assert.Equal("A lane judge cannot do this. Ask the head judge.", Refuse("send-back", Role.Judge)!.Why.Sentence());
        Assert.Equal("A head judge cannot do this. Ask the organiser.", Refuse("schedule-start", Role.HeadJudge)!.Why.Sentence());
        Assert.Equal("Only the head judge decides an appeal.", Refuse(DecideAppeal, Role.Organiser)!.Why.Sentence());
    }

    [Fact]
    public void Permission_comes_before_everything_else() =>
        Assert.Equal("not-yours", Assert.IsType<Verdict.Refused>(HeatRules.Decide(HeatState.Empty(Some.Heat), Example("halt"), Some.Asking(Some.Judge(1), Some.Go, 1))).Code);
}
