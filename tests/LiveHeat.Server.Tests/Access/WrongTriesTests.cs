using LiveHeat.Engine.Heats;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;

namespace LiveHeat.Server.Access;

public sealed class WrongTriesTests
{
    private const string Wrong = "ZZZZZZZZ";

    [Fact]
    public async Task After_a_few_wrong_codes_a_device_waits_longer_and_longer()
    {
        await using var host = await SmallHost.Start();
        var browser = host.Browser();
        for (var i = 0; i < WrongTries.Free; i++)
        {
            Assert.Equal("wrong-code", (await Join(browser, Wrong)).Code);
        }

        foreach (var seconds in new[] { 2, 4, 8, 16, 32, 60, 60 })
        {
            var answer = await Join(browser, Wrong);
            Assert.Equal(429, answer.Status);
            Assert.Equal("slow-down", answer.Code);
            Assert.Equal(seconds, answer.RetryAfter);
            Assert.Contains($"Wait {seconds} s", answer.Detail, StringComparison.Ordinal);
            host.Time.Advance(TimeSpan.FromSeconds(seconds));
        }
    }

    [Fact]
    public async Task While_it_waits_a_device_is_not_heard_and_waits_no_longer_for_asking()
    {
        await using var host = await SmallHost.Start();
        var code = await Code(host);
        var browser = host.Browser();
        for (var i = 0; i <= WrongTries.Free; i++)
        {
            await Join(browser, Wrong);
        }

        host.Time.Advance(TimeSpan.FromMilliseconds(1500));
        var answer = await Join(browser, code);
        Assert.Equal((429, 1), (answer.Status, answer.RetryAfter));

        host.Time.Advance(TimeSpan.FromMilliseconds(500));
        Assert.Equal(200, (await Join(browser, code)).Status);
    }

    [Fact]
    public async Task Codes_and_passphrases_count_together()
    {
        await using var host = await SmallHost.Start();
        var browser = host.Browser();
        for (var i = 0; i < WrongTries.Free; i++)
        {
            await Join(browser, Wrong);
        }

        Assert.Equal("slow-down", (await browser.Post("/api/sign-in", new { passphrase = "guess", name = "Orla" })).Code);
    }

    [Fact]
    public async Task A_right_code_forgives_the_wrong_ones_before_it()
    {
        await using var host = await SmallHost.Start();
        var code = await Code(host);
        var browser = host.Browser();
        for (var i = 0; i < 3; i++)
        {
            for (var n = 0; n < WrongTries.Free; n++)
            {
                Assert.Equal("wrong-code", (await Join(browser, Wrong)).Code);
            }

            Assert.Equal(200, (await Join(browser, code)).Status);
        }
    }

    [Fact]
    public async Task An_expired_code_and_a_mistyped_one_are_no_guesses()
    {
        await using var host = await SmallHost.Start();
        var old = await Code(host);
        await Code(host);
        var browser = host.Browser();

        for (var i = 0; i < 3 * WrongTries.Free; i++)
        {
            Assert.Equal("code-expired", (await Join(browser, old)).Code);
            Assert.Equal("wrong-code", (await Join(browser, "K7F3M2Q")).Code);
        }
    }

    [Fact]
    public async Task Right_codes_never_wait_however_many()
    {
        await using var host = await SmallHost.Start();
        var code = await Code(host);

        for (var i = 0; i < 2 * WrongTries.Crowd; i++)
        {
            Assert.Equal(200, (await Join(host.Browser(), code)).Status);
        }

        Assert.Equal("wrong-code", (await Join(host.Browser(), Wrong)).Code);
    }

    [Fact]
    public async Task While_others_guess_a_right_code_lets_in_at_once_and_a_wrong_one_waits()
    {
        await using var host = await SmallHost.Start();
        var code = await Code(host);
        var passphrase = await host.Registry.Passphrase.Renew(CancellationToken.None);
        var answers = new List<string>();
        for (var i = 0; i < 2 * WrongTries.Crowd; i++)
        {
            // A guesser who throws the cookie away; all of them come from one network address.
            answers.Add((await Join(host.Browser(), Wrong)).Code);
        }

        Assert.Equal("wrong-code", answers[0]);
        Assert.All(answers.Skip(WrongTries.Crowd), code => Assert.Equal("slow-down", code));
        Assert.Equal(200, (await Join(host.Browser(), code)).Status);
        Assert.Equal(200, (await host.Browser().Post("/api/sign-in", new { passphrase, name = "Orla" })).Status);

        var mistyped = host.Browser();
        var answer = await Join(mistyped, Wrong);
        Assert.Equal((429, 2), (answer.Status, answer.RetryAfter));
        host.Time.Advance(TimeSpan.FromSeconds(2));
        Assert.Equal(200, (await Join(mistyped, code)).Status);
    }

    [Fact]
    public async Task When_the_guessing_stops_typing_errors_are_free_again()
    {
        await using var host = await SmallHost.Start();
        for (var i = 0; i < 2 * WrongTries.Crowd; i++)
        {
            await Join(host.Browser(), Wrong);
        }

        host.Time.Advance(TimeSpan.FromMinutes(2));

        Assert.Equal("wrong-code", (await Join(host.Browser(), Wrong)).Code);
    }

    [Fact]
    public void A_device_is_forgotten_after_a_quarter_of_an_hour()
    {
        var (tries, time) = Tries();
        for (var i = 0; i < WrongTries.Free + 3; i++)
        {
            tries.Begin("phone");
            time.Advance(TimeSpan.FromMinutes(1));
        }

        time.Advance(TimeSpan.FromMinutes(15));

        Assert.Null(tries.Begin("phone"));
        Assert.Null(tries.AfterWrong("phone"));
    }

    [Fact]
    public void Tries_at_the_same_time_are_counted_before_they_are_looked_at()
    {
        var (tries, _) = Tries();

        var looked = Enumerable.Range(0, 100).Count(_ => tries.Begin("phone") is null);

        Assert.Equal(WrongTries.Free + 1, looked);
    }

    [Fact]
    public void All_that_is_looked_at_has_a_ceiling()
    {
        var (tries, time) = Tries();
        int Looked(int asked) => Enumerable.Range(0, asked).Count(_ => tries.Begin(Guid.NewGuid().ToString()) is null);

        Assert.Equal(10_000, Looked(20_000));
        time.Advance(TimeSpan.FromSeconds(1));
        Assert.Equal(200, Looked(20_000));
    }

    [Fact]
    public void Somebody_is_told_once_when_many_are_wrong()
    {
        var log = new Heard();
        var tries = new WrongTries(new FakeTimeProvider(), log);

        for (var i = 0; i < 3 * WrongTries.Crowd; i++)
        {
            tries.Begin($"phone {i}");
        }

        Assert.Contains("somebody may be guessing", Assert.Single(log.Lines), StringComparison.Ordinal);
    }

    private static (WrongTries Tries, FakeTimeProvider Time) Tries()
    {
        var time = new FakeTimeProvider();
        return (new WrongTries(time, new Heard()), time);
    }

    private static Task<Answer> Join(Browser browser, string code) => browser.Post("/api/join", new { code, name = "Mara" });

    private static async Task<string> Code(SmallHost host) =>
        (await host.Registry.JoinCodes.Make(Role.Judge, new LaneNumber(1), TimeSpan.FromHours(1), CancellationToken.None)).Text;

    private sealed class Heard : ILogger<WrongTries>
    {
        public List<string> Lines { get; } = [];

        public IDisposable? BeginScope<TState>(TState state) where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) =>
            Lines.Add(formatter(state, exception));
    }
}
