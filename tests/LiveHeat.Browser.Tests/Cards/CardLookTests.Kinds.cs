using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Cards;

/// <summary>Of attempts, readings, shared pools, synchronised sets and rounds by the clock.</summary>
public sealed partial class CardLookTests
{
    private static readonly WorkClock Clock = new(120_000, 60_000, Repeat: false);

    /// <summary>How often what is to be written down is on a lane's card.</summary>
    public static TheoryData<string, string, int> Kinds => new()
    {
        { "attempts", "article.attempt .lift .box", 4 * 3 * 2 },
        { "readings", "article.value .field", 8 },
        { "pool", "article .tally i", 14 * 4 },
        { "clock", "article.end .line i", 8 },
        { "repeat", "article.end .line i", 8 },
        { "synchro", "article.set .boxes .box", 12 * 30 },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task It_fits_the_paper_and_nothing_is_cut(string kind, string written, int times)
    {
        var heat = await Hall.Plan(Of(kind), Teams());
        var page = await Printed(heat);

        Assert.Equal(await page.Locator(".sheet").CountAsync(), await Sheets(page));
        Assert.Empty(await page.Faults("main", scrolls: true));
        Assert.Empty(await TooHigh(page));
        await Expect(page.Locator(".sheet[data-lane='1']").Locator(written)).ToHaveCountAsync(times);
        await Expect(page.Locator(".sheet[data-lane='1'] footer")).ToHaveCountAsync(1);
    }

    private static Workout Of(string kind)
    {
        var work = Work(0, []) with { Finish = FinishKind.None };
        return kind switch
        {
            "attempts" => With(work with { Scoring = new ScoringRule.HeaviestLoad(3, LoadSum.SumOfBest) }, 0, [new PrescribedSet("lift", 1)]),
            "readings" => ByClock(work with { Scoring = new ScoringRule.MostReading() }, Clock, [new PrescribedSet("run", 1, Reading: true)]),
            "pool" => With(work, 1, Enumerable.Repeat(new PrescribedSet("box", 60) { MinimumEach = 10 }, 14).ToItems()),
            "clock" => ByClock(work with { Scoring = new ScoringRule.MostWork() }, Clock, [new("box", 30, Load: "60 und 75 cm, mit Weste von neun Kilogramm"), new("carry", 40, Increment: 10)]),
            "repeat" => ByClock(work with { Scoring = new ScoringRule.MostWork() }, Clock with { Repeat = true }, [new("box", 12), new("carry", 40, Increment: 10)]),
            _ => With(work, 12, [new PrescribedSet("box", 30) { Together = 2 }]),
        };
    }

    private static Workout ByClock(Workout work, WorkClock clock, Items<PrescribedSet> round) =>
        work with { Prescriptions = [work.Prescriptions[0] with { Rounds = 8, Round = round, Clock = clock, CapMs = (int)clock.LengthMs(8) }] };

    private static Workout With(Workout work, int rounds, Items<PrescribedSet> round) => work with { Prescriptions = [work.Prescriptions[0] with { Rounds = rounds, Round = round }] };
}
