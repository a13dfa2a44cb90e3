using LiveHeat.Browser.Halls;

namespace LiveHeat.Browser.Floor;

/// <summary>The hub's client knocks for ever, slower up to two seconds, and not all screens at once. RetryDelayTests says the same of the Blazor screens.</summary>
public sealed class HubTests(Hall hall) : ModuleTest(hall)
{
    /// <summary>After so many failures in a row: the least and the most of the wait, milliseconds.</summary>
    [Theory]
    [InlineData(0, "0 0")]
    [InlineData(1, "125 250")]
    [InlineData(2, "250 500")]
    [InlineData(3, "500 1000")]
    [InlineData(4, "1000 2000")]
    [InlineData(5, "1000 2000")]
    [InlineData(100_000, "1000 2000")]
    public async Task It_waits_longer_up_to_two_seconds_half_of_it_by_chance(int attempt, string waits) =>
        Assert.Equal(waits, await Run<string>(["/floor/hub.js"], "([hub], attempt) => [0, 1].map(chance => hub.retryDelayMs(attempt, chance)).join(' ')", attempt));

    /// <summary>Two hundred refused links one after the other, on sockets that close at once and a clock that does not wait.</summary>
    [Fact]
    public async Task It_never_stops_knocking_and_a_link_that_held_starts_over() => Assert.Equal("200 knocks, most 2000, late ones slow; after a steady link 0 and 250; stopped: none", await Run<string>(["/floor/hub.js"], """
        async ([{ Hub }]) => {
          const real = { WebSocket: window.WebSocket, setTimeout: window.setTimeout, clearTimeout: window.clearTimeout, setInterval: window.setInterval, clearInterval: window.clearInterval };
          const waits = [];
          let sockets = [], next = null;
          Object.assign(window, {
            WebSocket: class { constructor() { sockets.push(this); } send() {} close() {} },
            setTimeout: (then, ms) => { waits.push(ms); next = then; return waits.length; }, clearTimeout: () => { next = null; }, setInterval: () => 0, clearInterval: () => {},
          });
          try {
            const hub = new Hub('/hub');
            hub.start();
            while (waits.length < 200) {
              sockets.at(-1).onclose();
              const then = next;
              if (!then) break;
              next = null;
              then();
            }
            const most = Math.max(...waits), late = waits.slice(10).every(ms => ms >= 1_000), knocks = sockets.length - 1;
            sockets.at(-1).onmessage({ data: '{}\x1e' });                 // the handshake is answered
            hub.openedAt -= 6_000;
            hub.beat(performance.now());
            sockets.at(-1).onclose();
            next();
            sockets.at(-1).onclose();
            const [first, second] = waits.slice(-2), before = sockets.length;
            hub.stop();
            next?.();
            return `${knocks} knocks, most ${most > 1_500 && most <= 2_000 ? 2_000 : most}, late ones ${late ? 'slow' : 'fast'}; after a steady link ${first} and ${second <= 250 && second >= 125 ? 250 : second}; stopped: ${sockets.length === before ? 'none' : 'goes on'}`;
          } finally { Object.assign(window, real); }
        }
        """));
}
