using Bunit;
using LiveHeat.Contracts.Phones;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Commands;
using LiveHeat.Screens.Connection;
using MudBlazor.Services;

namespace LiveHeat.Screens.Desk;

public sealed class ReadyTableTests : BunitContext
{
    private const string Score = "lane 1 seat s-mara taken as primary at -0:30";

    public ReadyTableTests()
    {
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    [Fact]
    public void Phones_beside_the_judges_are_listed_with_their_duty_and_what_is_wrong_with_them()
    {
        var table = Table(Phone("Kim", Duty.Timekeeper), Phone("Mara", Duty.Primary), Phone("Lou", Duty.Witness, unsent: 2, online: false));

        var beside = table.FindAll("[data-lane='1'] [data-act=beside]").Select(phone => phone.TextContent).ToList();

        Assert.Equal(["Kim, timekeeper", "Lou, witness · silent for 5 s · 2 taps waiting"], beside);
        Assert.Empty(table.FindAll("[data-lane='2'] [data-act=beside]"));
    }

    [Fact]
    public void A_witness_is_never_taken_for_the_judge_of_a_lane() =>
        Assert.Contains("no phone", Table(Phone("Lou", Duty.Witness)).Find("[data-lane='1']").TextContent, StringComparison.Ordinal);

    private static PhoneSeen Phone(string judge, Duty? duty, int unsent = 0, bool online = true) => new(
        $"in-{judge}", judge, new LaneNumber(1), online, SomeHeat.Now + -5_000, new PhoneStatus(new LaneNumber(1), "h1", unsent, unsent, "good", 6, "safe", true, "b1", duty));

    private IRenderedComponent<ReadyTable> Table(params PhoneSeen[] phones)
    {
        AskHeat ask = (_, _) => Task.FromResult<Problem?>(null);
        return Render<ReadyTable>(table => table
            .Add(component => component.Lanes, SomeHeat.Lanes(Score))
            .Add(component => component.Phones, phones)
            .Add(component => component.Now, SomeHeat.Now)
            .Add(component => component.Ask, ask));
    }
}
