using Bunit;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;
using MudBlazor.Services;

namespace LiveHeat.Screens.Setup;

/// <summary>The part of a workout's form that says how it is scored, and what of the work it leaves to be filled in.</summary>
public sealed class ScoringFormTests : BunitContext, IAsyncLifetime
{
    private static readonly SetupAll All = new(new CompetitionSetup("Breakwater Relays"), [new DivisionSetup("open", "Open")], [], [], []);

    private readonly WorkoutDraft draft = WorkoutDraft.Of(Some.Workout(prescriptions: Some.Prescription()), All);

    public ScoringFormTests()
    {
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    public Task InitializeAsync() => Task.CompletedTask;

    /// <summary>Some of the form's controls can only be let go this way.</summary>
    async Task IAsyncLifetime.DisposeAsync() => await DisposeAsync();

    private Workout Made => draft.Make(All).Workout;

    [Theory]
    [InlineData(ScoringKind.ForTime, "rounds before round after finish counting tiebreak equal-work")]
    [InlineData(ScoringKind.CapPlus, "rounds before round after finish counting tiebreak equal-work")]
    [InlineData(ScoringKind.MostWork, "before round counting tiebreak equal-work")]
    [InlineData(ScoringKind.HeaviestLoad, "round tiebreak attempts")]
    [InlineData(ScoringKind.MostReading, "rounds before round after counting tiebreak")]
    public void A_choice_shows_the_fields_that_make_sense(ScoringKind kind, string fields)
    {
        var form = Form();
        form.Find("[data-act=scoring]").Change(kind.ToString());

        bool Shown(string name) => form.FindAll(name is "before" or "round" or "after" ? $"[data-sets={name}]" : $"[data-act={name}]").Count > 0;
        Assert.Equal(fields, string.Join(' ', new[] { "rounds", "before", "round", "after", "finish", "counting", "tiebreak", "equal-work", "attempts" }.Where(Shown)));
    }

    [Fact]
    public void Teams_of_equal_score_share_the_place_where_somebody_says_so_and_by_the_clock_in_any_case()
    {
        var form = Form();
        Assert.Null(Made.EqualWork);
        form.Find("[data-act=equal-work]").Change(nameof(EqualWork.Shared));
        Assert.Equal(EqualWork.Shared, Made.EqualWork);
        Assert.Equal(EqualWork.Shared, WorkoutDraft.Of(Made, All).Make(All).Workout.EqualWork);
        Assert.Equal(EqualWork.EarlierAhead, WorkoutDraft.Of(Made with { EqualWork = EqualWork.EarlierAhead }, All).Make(All).Workout.EqualWork);

        form.Find("[data-act=scoring]").Change(nameof(ScoringKind.MostWork));
        draft.Prescriptions[0].Clock.On = true;
        Assert.Empty(Form().FindAll("[data-act=equal-work]"));
        Assert.Null(Made.EqualWork);
    }

    [Fact]
    public void The_heaviest_load_takes_its_attempts_and_its_sum()
    {
        var form = Form();
        form.Find("[data-act=scoring]").Change(nameof(ScoringKind.HeaviestLoad));
        Field(form, "attempts").Change("5");
        form.Find("[data-act=load-sum]").Change(nameof(LoadSum.BestSingle));

        Assert.Equal(new ScoringRule.HeaviestLoad(5, LoadSum.BestSingle), Made.Scoring);
    }

    [Theory]
    [InlineData("11", "11 attempts cannot be")]
    [InlineData("many", "Write a whole number.")]
    public void What_cannot_be_is_told_at_the_attempts(string typed, string told)
    {
        draft.Scoring.Kind = ScoringKind.HeaviestLoad;
        draft.Scoring.Attempts = typed;

        Assert.Contains(told, Form(draft.Make(All).Errors).Find("[data-act=scoring-fields]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void An_order_that_attempts_cannot_have_and_two_lifts_are_told_where_they_are()
    {
        (draft.Scoring.Kind, draft.Order) = (ScoringKind.HeaviestLoad, OrderKind.Blocks);
        var form = Form(draft.Make(All).Errors);

        Assert.Contains("one athlete after the other", form.Find("p.wrong").TextContent, StringComparison.Ordinal);
        Assert.Contains("name the one movement that is lifted", form.Find("[data-sets=round]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tiebreak_is_chosen_among_the_sets_with_its_round()
    {
        var form = Form();
        Assert.Equal(["none", "time at the end of 10 wall balls, in a round", "time at the end of 12 row, in a round"], form.FindAll("[data-act=tiebreak] option").Select(option => option.TextContent));
        Assert.Empty(form.FindAll("[data-act=tiebreak-round]"));

        form.Find("[data-act=tiebreak]").Change("Round-2");
        Field(form, "tiebreak-round").Change("3");
        Assert.Equal(new TiebreakSet(3, 2), Made.Prescriptions[0].Tiebreak);

        form.Find("[data-act=tiebreak]").Change("");
        Assert.Null(Made.Prescriptions[0].Tiebreak);
    }

    [Fact]
    public void A_tiebreak_in_a_round_that_there_is_not_or_a_set_that_is_gone_is_told_there()
    {
        draft.Prescriptions[0].Tiebreak = new TiebreakDraft(TiebreakPart.Round, 1, "9");
        Assert.Contains("round 9, which there is not", Form(draft.Make(All).Errors).Find("[data-act=tiebreak-fields]").TextContent, StringComparison.Ordinal);

        draft.Prescriptions[0].Tiebreak = new TiebreakDraft(TiebreakPart.After, 1, "1");
        var form = Form(draft.Make(All).Errors);
        Assert.Contains("a part without any set", form.Markup, StringComparison.Ordinal);
        Assert.Equal("a set that is no longer there", form.FindAll("[data-act=tiebreak] option")[^1].TextContent);
    }

    private IRenderedComponent<Parts> Form(FormErrors? errors = null) => Render<Parts>(form => form.Add(parts => parts.Draft, draft).Add(parts => parts.Errors, errors ?? FormErrors.None));

    private static AngleSharp.Dom.IElement Field(IRenderedComponent<Parts> form, string act) =>
        form.Find($"[data-act={act}]") is { TagName: "INPUT" } field ? field : form.Find($"[data-act={act}] input");

    /// <summary>The parts of the page that a choice of scoring changes, without the page's server.</summary>
    private sealed class Parts : ComponentBase
    {
        [Parameter, EditorRequired] public required WorkoutDraft Draft { get; set; }

        [Parameter, EditorRequired] public required FormErrors Errors { get; set; }

        protected override void BuildRenderTree(RenderTreeBuilder builder)
        {
            var changed = EventCallback.Factory.Create(this, StateHasChanged);
            builder.OpenComponent<OrderFields>(0);
            builder.AddComponentParameter(1, nameof(OrderFields.Draft), Draft);
            builder.AddComponentParameter(2, nameof(OrderFields.Errors), Errors);
            builder.AddComponentParameter(3, nameof(OrderFields.Changed), changed);
            builder.CloseComponent();
            builder.OpenComponent<ScoringFields>(4);
            builder.AddComponentParameter(5, nameof(ScoringFields.Scoring), Draft.Scoring);
            builder.AddComponentParameter(6, nameof(ScoringFields.Errors), Errors);
            builder.AddComponentParameter(7, nameof(ScoringFields.Changed), changed);
            builder.AddComponentParameter(8, nameof(ScoringFields.ByClock), Draft.ByClock);
            builder.CloseComponent();
            builder.OpenComponent<PrescriptionFields>(9);
            builder.AddComponentParameter(10, nameof(PrescriptionFields.Prescription), Draft.Prescriptions[0]);
            builder.AddComponentParameter(11, nameof(PrescriptionFields.Scoring), Draft.Scoring);
            builder.AddComponentParameter(12, nameof(PrescriptionFields.At), "prescriptions[0]");
            builder.AddComponentParameter(13, nameof(PrescriptionFields.Movements), Draft.Movements);
            builder.AddComponentParameter(14, nameof(PrescriptionFields.Errors), Errors);
            builder.AddComponentParameter(15, nameof(PrescriptionFields.Changed), changed);
            builder.AddComponentParameter(16, nameof(PrescriptionFields.RemoveSet), (List<SetDraft> sets, int at, string _) => sets.RemoveAt(at));
            builder.AddComponentParameter(17, nameof(PrescriptionFields.Remove), changed);
            builder.CloseComponent();
        }
    }
}
