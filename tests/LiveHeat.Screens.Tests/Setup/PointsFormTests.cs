using Bunit;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Connection;
using LiveHeat.Testing;
using MudBlazor.Services;

namespace LiveHeat.Screens.Setup;

public sealed class PointsFormTests : BunitContext
{
    private static readonly Workout First = Some.Workout();
    private static readonly Workout Second = Some.Workout() with { Id = "w2", Name = "Spring Tide" };

    private readonly List<PointsSetup> kept = [];
    private Problem? answer;

    public PointsFormTests()
    {
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    [Fact]
    public void What_is_kept_is_what_the_form_shows_and_sends_again()
    {
        var points = new PointsSetup { ExclusionsFrom = [5, 9], Cuts = [new CutSetup("w2", 8)] };
        var form = Form(points);
        Assert.Equal("5 9", Field(form, "exclusions").GetAttribute("value"));
        form.Find("[data-act=save-points]").Click();
        Assert.Equal(points, Assert.Single(kept));
        Assert.Contains("Saved", form.Find("[data-act=points-saved]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_is_typed_in_with_blanks_between_and_leaves_the_exclusions_out()
    {
        var form = Form(new PointsSetup { ExclusionsFrom = [5] });
        form.Find("[data-act=points-high]").Click();
        Field(form, "points-table").Change("25 18,5  15\n12");
        form.Find("[data-act=save-points]").Click();
        Assert.Equal(new PointsSetup(PointsKind.High) { Table = [25, 18.5m, 15, 12] }, Assert.Single(kept));
    }

    [Fact]
    public void A_table_is_shown_with_the_languages_decimal_sign_and_read_again()
    {
        Tongue.Speak("es");
        var points = new PointsSetup(PointsKind.High) { Table = [25, 18.5m, 15] };
        var form = Form(points);
        Assert.Equal("25 18,5 15", form.Find("textarea[data-act=points-table]").TextContent);
        form.Find("[data-act=save-points]").Click();
        Assert.Equal(points, Assert.Single(kept));
    }

    [Fact]
    public void A_table_to_start_from_has_a_place_for_every_team_of_the_largest_division()
    {
        var form = Form(new PointsSetup());
        form.Find("[data-act=points-high]").Click();
        form.Find("[data-act=table-even]").Click();
        form.Find("[data-act=save-points]").Click();
        form.Find("[data-act=table-front]").Click();
        form.Find("[data-act=save-points]").Click();
        form.Find("[data-act=table-few]").Click();
        form.Find("[data-act=save-points]").Click();
        Assert.Equal(["4 3 2 1", "10 6 3 1", "2 1"], kept.Select(points => PointsDraft.Text(points.Table)));
    }

    [Fact]
    public void What_cannot_be_read_is_told_at_its_field_and_nothing_is_sent()
    {
        var form = Form(new PointsSetup());
        Field(form, "exclusions").Change("5 many");
        form.Find("[data-workout=w2] input").Change("all");
        form.Find("[data-act=save-points]").Click();
        Assert.Empty(kept);
        Assert.Contains("\"many\" is no whole number of workouts.", form.Markup, StringComparison.Ordinal);
        Assert.Contains("Write a whole number of teams", form.Find("[data-workout=w2]").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Write a whole number of teams", form.Find("[data-workout=w1]").TextContent, StringComparison.Ordinal);
    }

    /// <summary>The server numbers the cuts that were sent; the form has a field for each workout.</summary>
    [Fact]
    public void What_the_server_refuses_stands_at_the_workout_it_is_about()
    {
        answer = new Problem("wrong-setup", "One thing is wrong.", [new FieldProblem("cuts[0].goOn", "At least one team must go on."), new FieldProblem("exclusionsFrom[0]", "From 2 on.")], null);
        var form = Form(new PointsSetup { ExclusionsFrom = [1], Cuts = [new CutSetup("w2", 0)] });
        form.Find("[data-act=save-points]").Click();
        Assert.Contains("At least one team must go on.", form.Find("[data-workout=w2]").TextContent, StringComparison.Ordinal);
        Assert.Contains("From 2 on.", form.Markup, StringComparison.Ordinal);
        Assert.Empty(form.FindAll("[data-act=points-saved]"));
        Assert.Empty(form.FindAll("[data-act=points-problem]"));
    }

    [Fact]
    public void A_problem_of_no_field_is_told_whole()
    {
        answer = Problem.Of(Problem.NoAnswer, "The server did not answer.");
        var form = Form(new PointsSetup());
        form.Find("[data-act=save-points]").Click();
        Assert.Contains("did not answer", form.Find("[data-act=points-problem]").TextContent, StringComparison.Ordinal);
    }

    private static AngleSharp.Dom.IElement Field(IRenderedComponent<PointsForm> form, string act) =>
        form.Find($"[data-act={act}]") is { TagName: "INPUT" or "TEXTAREA" } field ? field : form.Find($"[data-act={act}] input, [data-act={act}] textarea");

    private IRenderedComponent<PointsForm> Form(PointsSetup points)
    {
        var teams = Enumerable.Range(1, 6).Select(number => new TeamSetup($"t{number}", $"Team {number}", number > 4 ? "masters" : "open", ["Ann"])).ToList();
        Func<object, Task<Problem?>> keep = document =>
        {
            kept.Add(Assert.IsType<PointsSetup>(document));
            return Task.FromResult(answer);
        };
        return Render<PointsForm>(form => form
            .Add(part => part.All, new SetupAll(new CompetitionSetup("Breakwater Relays"), [], [First, Second], teams, []) { Points = points })
            .Add(part => part.Keep, keep));
    }
}
