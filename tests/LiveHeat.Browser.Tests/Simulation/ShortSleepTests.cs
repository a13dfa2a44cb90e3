using LiveHeat.Browser.Floor;
using LiveHeat.Browser.Halls;

namespace LiveHeat.Browser.Simulation;

/// <summary>A phone that slept for less than a second: too little to be sure of it, too much to keep silent.</summary>
[Collection(OneAtATime.Name)]
public sealed class ShortSleepTests(Hall hall) : ModuleTest(hall)
{
    private const string APhone = """
        let mono = 1_000, wall = 5_000_000, slept = 0;
        const it = new clock.Clock({ mono: () => mono, wall: () => wall });
        const pass = ms => { mono += ms; wall += ms; };
        const sleep = ms => { wall += ms; slept += ms; };
        const server = () => 1e6 + mono + slept;
        const exchange = (delay, midway = () => {}) => {
          const t1 = mono;
          pass(delay / 2);
          const at = server();
          midway();
          pass(delay / 2);
          it.add({ t1, received: at, sent: at, t4: mono, process: 'p' });
        };
        const told = () => [it.now() - server(), it.uncertaintyMs()];
        """;

    [Fact]
    public async Task What_it_says_of_the_time_is_as_uncertain_as_the_sleep_was_long_until_the_next_exchange()
    {
        var told = await Told("""
            exchange(8);
            it.now();
            sleep(600);
            const after = told();
            pass(2_000);
            exchange(8);
            return [...after, ...told()];
            """);

        Assert.InRange(Math.Abs(told[0]), 599, told[1]);
        Assert.InRange(Math.Abs(told[2]), 0, 1);
        Assert.InRange(told[3], 4, 5);
    }

    [Fact]
    public async Task An_exchange_that_it_slept_through_is_not_believed()
    {
        var told = await Told("""
            exchange(8);
            pass(1_000);
            exchange(6, () => { sleep(400); it.now(); });
            return told();
            """);

        Assert.InRange(Math.Abs(told[0]), 0, told[1]);
    }

    [Fact]
    public async Task Two_clocks_read_one_after_the_other_are_no_sleep()
    {
        var told = await Told("""
            exchange(8);
            it.now();
            wall += 20;
            return told();
            """);

        Assert.InRange(told[1], 4, 4.1);
    }

    private Task<double[]> Told(string what) => Run<double[]>(["/floor/clock.js"], $"([clock]) => {{ {APhone} {what} }}");
}
