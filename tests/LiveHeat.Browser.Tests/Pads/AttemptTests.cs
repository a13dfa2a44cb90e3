using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Pages;
using LiveHeat.Engine.Heats;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pads;

/// <summary>Attempts at a load: what is typed is recorded, good lift or no lift, and nothing else.</summary>
public sealed class AttemptTests(Hall hall) : HallTest(hall)
{
    private const int Lane = 7;

    [Fact]
    public async Task A_judge_enters_loads_good_and_not_reloads_without_network_and_reads_the_score_back()
    {
        var (heat, phone) = await Working(3, "Joss");
        await phone.IsKept();
        await Type(phone, "100");
        await Press(phone, "good");
        await heat.LedgerHas(Lane, "attempt-judged 1");

        await phone.Browser.SetOfflineAsync(true);
        await phone.Page.ReloadAsync();
        await phone.IsAt("heat");
        await Expect(phone.Act("good")).ToContainTextAsync("last: 100 kg");
        await Expect(phone.Act("good")).ToBeDisabledAsync();            // shown, and never recorded by itself
        await Type(phone, "110");
        await Press(phone, "no-lift");
        await phone.Touch("fault-1");
        await phone.Browser.SetOfflineAsync(false);
        await heat.LedgerHas(Lane, "attempt-judged 1", "attempt-judged 2", "undone", "attempt-judged 2");

        await Type(phone, "110");
        await Press(phone, "good");
        await phone.IsAt("finish");
        await Expect(phone.Act("result")).ToHaveTextAsync("110 kg");
        await phone.Touch("captain-name");
        await phone.Touch("agree");
        await Expect(phone.Act("read-back")).ToContainTextAsync("Joss agreed");
        await phone.IsAllSafe();

        var attempts = (await heat.Taps(Lane)).OfType<HeatFact.AttemptJudged>().ToList();
        Assert.Equal([(100m, true, null), (110m, false, null), (110m, false, "Not locked out"), (110m, true, null)], attempts.Select(one => (one.Load, one.Good, one.Fault)));
        Assert.Equal((110_000, 1), ((await heat.Lane(Lane)).Worth, (await heat.Lane(Lane)).NoReps));
    }

    [Fact]
    public async Task The_next_athlete_begins_without_a_load_and_an_attempt_is_taken_back()
    {
        var (heat, phone) = await Working(1, "Joss", "Ilka");
        await Type(phone, "82.5");
        await Press(phone, "good");
        await phone.Record("tag-made", 2);
        await Expect(phone.Act("good")).ToContainTextAsync("type the load");
        await Type(phone, "60");
        await Press(phone, "good");
        await phone.IsAt("finish");
        await Expect(phone.Act("result")).ToHaveTextAsync("142.5 kg");

        await Expect(phone.Act("undo")).ToContainTextAsync("60 good");
        await phone.Hold("undo", () => Expect(phone.Act("good")).ToBeDisabledAsync());
        await heat.LedgerHas(Lane, "attempt-judged 1", "tag-made 2", "attempt-judged 3", "undone");
        Assert.Equal(82_500, (await heat.Lane(Lane)).Worth);
    }

    private async Task<(HallHeat Heat, JudgePhone Phone)> Working(int attempts, params string[] athletes)
    {
        var heat = await Hall.Call(QuickWork.Attempts(attempts), new Entrant(Lane, "Harbour Anvils", athletes));
        return (heat, await WorkingPhone(heat, Lane));
    }

    private static async Task Type(JudgePhone phone, string load)
    {
        foreach (var key in load)
        {
            await phone.Page.GetByRole(AriaRole.Button, new() { Name = key.ToString(), Exact = true }).TapAsync();
        }

        await Expect(phone.Act("good")).ToContainTextAsync($"{load} kg");
        await Expect(phone.Act("good")).ToBeEnabledAsync();
    }

    private static async Task Press(JudgePhone phone, string act)
    {
        await JudgePhone.IsSettled(phone.Act(act));
        await phone.Touch(act);
    }
}
