using Bunit;
using LiveHeat.Contracts.Programme;
using LiveHeat.Contracts.Taps;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Timing;
using LiveHeat.Screens.Commands;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Words;
using LiveHeat.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using MudBlazor.Services;

namespace LiveHeat.Screens.Appeals;

public sealed class AppealListTests : BunitContext
{
    private const string Frozen = "start\nlane 1 step 1 done at 0:30\nend at 1:00\nlane 2 appeals at 1:30\nfreeze at 2:00";
    private static readonly Instant InTime = HeatScript.At("10:00");
    private static readonly Instant Late = HeatScript.At("20:00");
    private readonly List<HeatCommand> asked = [];

    public AppealListTests()
    {
        Services.AddMudServices();
        Services.AddSingleton<TimeProvider>(new FakeTimeProvider());
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    [Fact]
    public void It_says_how_long_is_left_and_who_appealed_about_what_with_the_way_to_the_replay()
    {
        var list = List(Frozen, Role.Organiser, InTime);

        Assert.EndsWith(": 7:00 left.", list.Find("[data-act=appeal-window]").TextContent.Trim(), StringComparison.Ordinal);
        Assert.Contains("Team 2 Ann: a rep", list.Find("article").TextContent, StringComparison.Ordinal);
        Assert.Equal("replay/h1?lane=2", list.Find("[data-act=replay-appeal]").GetAttribute("href"));
        Assert.Equal("open", list.Find("[data-act=appeal-outcome]").TextContent);
    }

    [Fact]
    public void Before_the_freeze_there_is_no_end_yet() =>
        Assert.Equal(AppealWords.AnyTime, List("start\nend at 1:00", Role.Organiser, InTime).Find("[data-act=appeal-window]").TextContent);

    [Fact]
    public void Only_the_head_judge_is_asked_to_decide_and_may_let_a_late_one_in()
    {
        Assert.Empty(List(Frozen, Role.Organiser, InTime).FindAll("[data-act=decide-appeal]"));
        Assert.Empty(List(Frozen, Role.Organiser, Late).FindAll("[data-act=file-appeal]"));
        Assert.NotEmpty(List(Frozen, Role.Organiser, InTime).FindAll("[data-act=file-appeal]"));
        Assert.NotEmpty(List(Frozen, Role.HeadJudge, Late).FindAll("[data-act=file-appeal]"));
        Assert.NotEmpty(List(Frozen, Role.HeadJudge, Late).FindAll("[data-act=decide-appeal]"));
    }

    [Fact]
    public void Once_certified_it_is_not_decided_but_told_what_to_do()
    {
        var list = List(Frozen + "\nsign organiser\nsign head judge", Role.HeadJudge, InTime);

        Assert.Empty(list.FindAll("[data-act=decide-appeal]"));
        Assert.Contains(AppealWords.CertifiedOpen, list.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_decision_has_its_sign_by_choice_and_its_reason()
    {
        var list = List(Frozen, Role.HeadJudge, InTime);
        list.Find("[data-act=decide-appeal]").Click();
        list.Find("[data-act=appeal-kind]").Change(nameof(DecisionKind.GiveTime));
        list.Find("input[data-act=appeal-amount]").Change("0:05");
        list.Find("[data-act=decide-appeal-yes]").Click();
        Assert.Empty(asked);

        list.Find("input[data-act=decide-appeal-reason]").Input("seen on video");
        list.Find("[data-act=decide-appeal-yes]").Click();

        var decided = Assert.IsType<HeatCommand.DecideAppeal>(Assert.Single(asked));
        Assert.Equal((AppealOutcome.Seconds, -5_000, 0, "seen on video"), (decided.Outcome, decided.AddMs, decided.Reps, decided.Reason));
    }

    [Fact]
    public void Where_parts_are_scored_apart_the_decision_says_in_which_it_counts()
    {
        const string Score = "start\nlane 1 step 1 done at 0:30\nend at 1:00\nlane 1 appeals at 1:30\nfreeze at 2:00";
        var list = List(Score, Role.HeadJudge, InTime, SomeHeat.InParts);
        list.Find("[data-act=decide-appeal]").Click();
        Assert.Empty(list.FindAll("[data-act=appeal-part]"));
        list.Find("[data-act=appeal-kind]").Change(nameof(DecisionKind.GiveReps));
        list.Find("input[data-act=appeal-amount]").Change("2");
        list.Find("[data-act=appeal-part]").Change("1");
        list.Find("input[data-act=decide-appeal-reason]").Input("seen on video");
        list.Find("[data-act=decide-appeal-yes]").Click();

        var decided = Assert.IsType<HeatCommand.DecideAppeal>(Assert.Single(asked));
        Assert.Equal((-2, 1), (decided.Reps, decided.Part));
        Assert.Contains("2 reps given back, counts in First buy-in: seen on video", List(Score.Replace("appeals at 1:30", "appeals at 1:30 [a]", StringComparison.Ordinal) + "\ndecide a: -2 reps in part 1", Role.HeadJudge, InTime, SomeHeat.InParts).Find("[data-act=appeal-outcome]").TextContent, StringComparison.Ordinal);
        Assert.Null(((HeatCommand.DecideAppeal)new AppealDecision { Kind = DecisionKind.NoChange, Part = 1 }.Make(Some.Id("p", 1), []).Make!(Some.Id("p", 2), "r")).Part);
    }

    [Theory]
    [InlineData(DecisionKind.NoChange, "", "no-change 0 0 ")]
    [InlineData(DecisionKind.AddTime, "1:05", "seconds 65000 0 ")]
    [InlineData(DecisionKind.GiveReps, "2", "reps 0 -2 ")]
    [InlineData(DecisionKind.TakeReps, "3", "reps 0 3 ")]
    [InlineData(DecisionKind.TakeReps, "-3", null)]
    [InlineData(DecisionKind.GiveTime, "0", null)]
    [InlineData(DecisionKind.Rerun, "", null)]
    public void What_is_typed_becomes_the_command_or_is_refused_in_words(DecisionKind kind, string amount, string? made)
    {
        var (make, wrong) = new AppealDecision { Kind = kind, Amount = amount }.Make(Some.Id("p", 1), []);

        Assert.Equal(made is null, wrong is not null);
        var command = make?.Invoke(Some.Id("p", 2), "r") as HeatCommand.DecideAppeal;
        Assert.Equal(made, command is null ? null : $"{System.Text.Json.JsonNamingPolicy.KebabCaseLower.ConvertName(command.Outcome.ToString())} {command.AddMs} {command.Reps} {command.InHeat}");
    }

    [Fact]
    public void A_rerun_names_the_heat_that_was_chosen()
    {
        var (make, _) = new AppealDecision { Kind = DecisionKind.Rerun, InHeat = "h8" }.Make(Some.Id("p", 1), [Planned("h7"), Planned("h8")]);

        Assert.Equal(new HeatId("h8"), Assert.IsType<HeatCommand.DecideAppeal>(make!(Some.Id("p", 2), "r")).InHeat);
    }

    [Fact]
    public void An_appeal_is_filed_for_the_lane_chosen_with_name_and_grounds()
    {
        var list = List(Frozen, Role.Organiser, InTime);
        list.Find("[data-act=file-appeal]").Click();
        list.Find("[data-act=file-appeal-yes]").Click();
        Assert.Contains(AppealWords.NoMember, list.Markup, StringComparison.Ordinal);

        list.Find("input[data-act=appeal-member]").Change(" Cy ");
        list.Find("textarea[data-act=appeal-grounds]").Change("our lane was blocked");
        list.Find("[data-act=file-appeal-yes]").Click();
        Assert.Empty(asked);
        Assert.Equal(AppealWords.NoLane, list.Find("p.refused").TextContent);

        list.Find("[data-act=appeal-lane]").Change("3");
        list.Find("[data-act=file-appeal-yes]").Click();

        var filed = Assert.IsType<HeatCommand.FileAppeal>(Assert.Single(asked));
        Assert.Equal((3, "Cy", "our lane was blocked"), (filed.Lane.Value, filed.Member, filed.Grounds));
    }

    private static ProgramHeat Planned(string id) => new(new HeatId(id), 7, "Heat 7", "Low Tide", null, Phase.Planned, []);

    private IRenderedComponent<AppealList> List(string score, Role me, Instant now, HeatSnapshot? heat = null)
    {
        var state = HeatScript.Play(score, heat);
        var (frame, _) = SomeHeat.Told(score, heat: heat);
        AskHeat ask = (make, _) =>
        {
            asked.Add(make(Some.Id("screen", 1)));
            return Task.FromResult<LiveHeat.Screens.Connection.Problem?>(null);
        };
        return Render<AppealList>(list => list
            .Add(component => component.Frame, frame)
            .Add(component => component.Lanes, SomeHeat.Lanes(score, heat))
            .Add(component => component.Book, new FactBook(state.Head, state.Entries.Select(entry => new FactLine(entry.Sequence, entry.ReceivedAt, entry.Sender, FactFlags.None, entry.Fact))))
            .Add(component => component.Me, me)
            .Add(component => component.Planned, [])
            .Add(component => component.Now, () => now)
            .Add(component => component.Ask, ask));
    }
}
