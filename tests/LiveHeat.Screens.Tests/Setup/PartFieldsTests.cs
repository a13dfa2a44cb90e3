using Bunit;
using LiveHeat.Engine.Workouts;
using Microsoft.AspNetCore.Components;
using MudBlazor.Services;

namespace LiveHeat.Screens.Setup;

public sealed class PartFieldsTests : BunitContext
{
    private static readonly (TiebreakSet, string)[] Places = [(new(1, 1), "round 1: 10 wall balls"), (new(1, 2), "round 1: 12 row")];

    private readonly List<PartDraft> parts = [];
    private int changes;

    private IRenderedComponent<PartFields> Form()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddMudServices();
        return Render<PartFields>(with => with.Add(form => form.Parts, parts).Add(form => form.Places, Places).Add(form => form.At, "prescriptions[0]")
            .Add(form => form.Errors, FormErrors.None).Add(form => form.Changed, EventCallback.Factory.Create(this, () => changes++)));
    }

    [Fact]
    public void The_first_part_brings_the_second_which_goes_to_the_end()
    {
        var form = Form();
        form.Find("[data-act=add-part]").Click();
        Assert.Equal(2, parts.Count);

        form.Render();
        form.Find("select[data-act=part-end]").Change("1");
        Assert.Equal(new TiebreakSet(1, 2), parts[0].Last);
        Assert.Single(form.FindAll("select[data-act=part-end]"));
        Assert.Equal(2, changes);
    }

    [Fact]
    public void One_part_alone_is_none()
    {
        parts.AddRange([new PartDraft { Name = "a" }, new PartDraft { Name = "b" }]);
        Form().Find("[data-act=remove-part]").Click();
        Assert.Empty(parts);
    }
}
