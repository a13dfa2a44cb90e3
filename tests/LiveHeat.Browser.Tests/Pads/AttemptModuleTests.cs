using LiveHeat.Browser.Floor;
using LiveHeat.Browser.Halls;

namespace LiveHeat.Browser.Pads;

/// <summary>The parts of the attempt view that only compute.</summary>
public sealed class AttemptModuleTests(Hall hall) : ModuleTest(hall)
{
    [Theory]
    [InlineData("102.5", "102.5")]
    [InlineData("102.555", "102.55")]
    [InlineData("1..5", "1.5")]
    [InlineData(".5", "5")]
    [InlineData("12345", "1234")]
    [InlineData("10⌫⌫9", "9")]
    public async Task Keys_make_a_load_of_at_most_two_decimals(string keys, string load) =>
        Assert.Equal(load, await Run<string>(["/pad/views/attempt.js"], "([attempt], keys) => [...keys].reduce(attempt.typed, '')", keys));

    [Fact]
    public async Task The_last_load_is_the_newest_of_whoever_tries_now() => Assert.Equal("110,,60", await Run<string>(["/pad/views/attempt.js"], """
        ([attempt]) => {
          const steps = [1, 1, 1, 2, 2, 1].map((athlete, i) => ({ step: i + 1, athlete })), attempts = [{ step: 2, load: 110 }, { step: 1, load: 100 }, { step: 4, load: 60 }];
          return [steps[2], steps[3], steps[4]].map(step => attempt.lastLoad({ attempts, steps, step })).join();
        }
        """));
}
