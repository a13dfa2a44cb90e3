using Bunit;
using Microsoft.AspNetCore.Components.Web;

namespace LiveHeat.Screens.Setup;

public sealed class MovementPickerTests : BunitContext
{
    private readonly List<MovementChoice> chosen = [];

    [Fact]
    public void A_part_of_a_name_finds_what_holds_it_own_movements_first()
    {
        var picker = Picker();
        Assert.Empty(picker.FindAll("[role=option]"));

        picker.Find("[data-act=find-movement]").Input("BALL wa");

        Assert.Equal(["wall-balls-2", "wall-ball"], picker.FindAll("[role=option]").Select(option => option.GetAttribute("data-movement")));
        Assert.Contains("your own", picker.Find("[role=option]").TextContent, StringComparison.Ordinal);
        Assert.Equal("true", picker.Find("[role=combobox]").GetAttribute("aria-expanded"));
    }

    [Fact]
    public void Arrows_and_Enter_choose_without_a_mouse_and_the_field_is_ready_for_the_next()
    {
        var picker = Picker();
        picker.Find("[data-act=find-movement]").Input("wall");
        Press(picker, "ArrowDown", "ArrowDown", "ArrowDown", "ArrowUp");
        Assert.Equal("found-2", picker.Find("[role=combobox]").GetAttribute("aria-activedescendant"));
        Assert.Equal("wall-walk", picker.Find("[aria-selected=true]").GetAttribute("data-movement"));

        Press(picker, "Enter");

        Assert.Equal("wall-walk", Assert.Single(chosen).Movement.Id);
        Assert.Equal("", picker.Find("[data-act=find-movement]").GetAttribute("value"));
        Assert.Empty(picker.FindAll("[role=option]"));
        Assert.Equal("wall walks: added.", picker.Find("[data-act=picker-note]").TextContent);
    }

    [Fact]
    public void A_tap_chooses_too()
    {
        var picker = Picker();
        picker.Find("[data-act=find-movement]").Input("row");

        picker.Find("[data-movement=row-cal]").Click();

        Assert.Equal("row-cal", Assert.Single(chosen).Movement.Id);
    }

    [Fact]
    public void Escape_and_a_name_that_nobody_has_choose_nothing()
    {
        var picker = Picker();
        picker.Find("[data-act=find-movement]").Input("wall");
        Press(picker, "Escape", "Enter");
        Assert.Empty(picker.FindAll("[role=option]"));

        picker.Find("[data-act=find-movement]").Input("juggling");
        Press(picker, "ArrowDown", "Enter");

        Assert.Contains("Nothing", picker.Find("[data-act=picker-note]").TextContent, StringComparison.Ordinal);
        Assert.Empty(chosen);
    }

    [Fact]
    public void Enter_in_the_field_sends_no_form() => Assert.Equal("none", Picker().Find("[data-act=find-movement]").GetAttribute("form"));

    private IRenderedComponent<MovementPicker> Picker() => Render<MovementPicker>(picker => picker
        .Add(component => component.Choices, SomeMovements.Choices)
        .Add(component => component.Chosen, choice => chosen.Add(choice)));

    private static void Press(IRenderedComponent<MovementPicker> picker, params string[] keys)
    {
        foreach (var key in keys)
        {
            picker.Find("[data-act=find-movement]").KeyDown(new KeyboardEventArgs { Key = key });
        }
    }
}
