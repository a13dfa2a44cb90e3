using LiveHeat.Browser.Floor;
using LiveHeat.Browser.Halls;

namespace LiveHeat.Browser.Boards;

/// <summary>What plays a heat again on the board (replay.js): ReplayTests looks at it on the screen.</summary>
[Collection(OneAtATime.Name)]
public sealed class PlayerTests(Hall hall) : ModuleTest(hall)
{
    /// <summary>Three moments at 100, 200 and 900 on a clock that stands; what is shown after each act.</summary>
    [Theory]
    [InlineData("", "100 a")]
    [InlineData("seek 250", "250 b")]
    [InlineData("seek 50", "100 a")]
    [InlineData("seek 5000", "900 c")]
    [InlineData("play, wait 99", "199 a")]
    [InlineData("play, wait 100", "200 b")]
    [InlineData("speed 4, play, wait 100", "500 b")]
    [InlineData("play, wait 100, speed 2, wait 100", "400 b")]
    [InlineData("play, wait 150, pause, wait 500", "250 b")]
    [InlineData("play, wait 9000", "900 c")]
    [InlineData("seek 900, play, wait 50", "150 a")]
    public async Task The_player_keeps_time(string acts, string shown) => Assert.Equal(shown, await Run<string>(["/floor/board/replay.js"], """
        ([{ Player }], acts) => {
          let real = 7_000;
          const player = new Player([{ at: 100, name: 'a' }, { at: 200, name: 'b' }, { at: 900, name: 'c' }], () => real);
          for (const [act, value] of acts.split(', ').map(act => act.split(' '))) {
            if (act === 'seek') player.seek(Number(value));
            if (act === 'speed') player.setSpeed(Number(value));
            if (act === 'play') player.play();
            if (act === 'pause') player.pause();
            if (act === 'wait') real += Number(value);
          }
          return `${player.now()} ${player.moment()?.name}`;
        }
        """, acts));
}
