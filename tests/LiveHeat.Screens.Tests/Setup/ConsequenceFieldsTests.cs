using Bunit;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;
using MudBlazor.Services;

namespace LiveHeat.Screens.Setup;

public sealed class ConsequenceFieldsTests : BunitContext, IAsyncLifetime
{
    private static readonly SetupAll All = new(new CompetitionSetup("Breakwater Relays"), [new("open", "Open"), new("scaled", "Scaled")], [], [], []);

    public ConsequenceFieldsTests()
    {
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    Task IAsyncLifetime.InitializeAsync() => Task.CompletedTask;

    /// <summary>Services of a check box can only be let go of asynchronously.</summary>
    async Task IAsyncLifetime.DisposeAsync() => await DisposeAsync();

    public static TheoryData<PenaltyRule?, Consequences?> Kept => new()
    {
        { null, null },
        { new PenaltyRule(30_000), null },
        { new PenaltyRule(0, 5, WarnFirst: false), new Consequences(Consequence.Penalty, Consequence.RanksBelow) { Variant = Consequence.Void } },
        { new PenaltyRule(90_500, 1), new Consequences { Variant = Consequence.Allowed } },
        { null, new Consequences() },
    };

    [Theory]
    [MemberData(nameof(Kept))]
    public void A_workout_that_is_opened_and_kept_says_the_same(PenaltyRule? penalty, Consequences? consequences)
    {
        var workout = Some.Workout() with { Penalty = penalty, Consequences = consequences };

        var (made, errors) = WorkoutDraft.Of(workout, All).Make(All);

        Assert.Empty(errors.All);
        Assert.Equal((penalty, consequences), (made.Penalty, made.Consequences));
    }

    [Fact]
    public void What_is_chosen_in_the_form_is_in_the_workout()
    {
        var draft = WorkoutDraft.Of(Some.Workout(), All);
        var form = Form(draft);

        form.Find("input[data-act=penalty-time]").Change("0:30");
        form.Find("input[data-act=warn-first]").Change(false);
        form.Find("[data-act=on-wrong-athlete]").Change(nameof(Consequence.Penalty));
        form.Find("[data-act=on-line-up-change]").Change(nameof(Consequence.Void));
        form.Find("[data-act=on-variant]").Change(nameof(VariantChoice.RanksBelow));

        var made = draft.Make(All).Workout;
        Assert.Equal(new PenaltyRule(30_000, 0, WarnFirst: false), made.Penalty);
        Assert.Equal(new Consequences(Consequence.Penalty, Consequence.Void) { Variant = Consequence.RanksBelow }, made.Consequences);
    }

    [Fact]
    public void What_cannot_be_is_told_beside_its_field()
    {
        var draft = WorkoutDraft.Of(Some.Workout(), All);
        (draft.Consequences.Time, draft.Consequences.WrongAthlete) = ("soon", Consequence.Penalty);
        Assert.NotNull(draft.Make(All).Errors.Of("penalty.addMs"));

        draft.Consequences.Time = "";
        Assert.Contains("names none", Form(draft, draft.Make(All).Errors).Find("[data-act=consequences-wrong]").TextContent, StringComparison.Ordinal);
    }

    private IRenderedComponent<ConsequenceFields> Form(WorkoutDraft draft, FormErrors? errors = null) => Render<ConsequenceFields>(fields => fields
        .Add(component => component.Draft, draft.Consequences)
        .Add(component => component.Errors, errors ?? FormErrors.None)
        .Add(component => component.Changed, () => { }));
}
