// The big screen. The server sends the page with the lanes as a plain table and the newest state; this replaces the table,
// follows the hub, and never goes blank: what it last knew stays on screen, with its age, until it hears again.
//
// The page is Board/BoardPage.razor of the server: main with the lanes as a plain table for readers without scripts, the state and the
// words as JSON. main carries data-follow: a heat's id, or "current", which follows the floor from heat to heat.
//
// Address options:
//   ?lang=de                     the language of the words
//   ?width=4&seat=25             the screen's width and the farthest seat in metres, instead of those of the setup: no text is smaller than can be read from there
//   ?fit=1, or the key F         how many lanes fit, and how large the smallest capitals are
//   ?briefing=1                  the heat's briefing takes turns with its lanes until GO is set; 0 never; else when more than two minutes are left
//   ?standings=0                 no overall standings between heats
//   ?sound=1                     count-down, GO, last minute and cap are heard
//   ?kiosk=1                     full screen at the first touch, no pointer, no menu, kept awake
//   ?light=1 or auto             daylight; auto as the device is set
//   ?edge=5                      overscan margin in percent (3.5), at most 10
//   ?replay=happened or known    the heat played again, with ?speed=4 and ?at=272000 (replay.js)
// For tests main carries data-scene, data-phase, data-heat, data-sequence, data-freshness, data-shows; each li.lane data-lane, data-status, data-place.
import { Clock, keepInStep } from '../clock.js';
import { takeEdge } from '../edge.js';
import { takeGround } from '../ground.js';
import { Hub } from '../hub.js';
import { Sounds } from '../sounds/sounds.js';
import { everyPicture } from '../strip.js';
import { slidesLook } from './briefing-view.js';
import { fitHint } from './fit-hint.js';
import { beKiosk } from './kiosk.js';
import { playAgain } from './replay.js';
import { Board } from './screen.js';
import { seatOf } from './sight.js';

const main = /** @type {HTMLElement} */ (document.getElementById('board'));
const state = JSON.parse(document.getElementById('state')?.textContent || '{}');
const options = new URLSearchParams(location.search);
const VIEWER_ASKS_EVERY_MS = 30_000;          // a thousand viewers need not ask as often as twenty judges

takeGround(options.get('light'), () => board.repaint());
takeEdge(options);

// Until the first exchange the server's own time in the page is good enough to draw by.
const serverNow = state.program?.serverNow ?? state.frame?.madeAt;
const bridge = serverNow ? { server: serverNow, wall: Date.now(), rate: 1, uncertaintyMs: 1_000 } : null;
const clock = new Clock(/** @type {any} */ ({ bridge }));
const overlaid = main.dataset.overlay !== undefined;
const seat = seatOf(options, overlaid ? null : state.program?.screen);          // who sees a video sits at home, not in the hall
if (options.has('side')) main.dataset.side = options.get('side') ?? '';
const board = new Board(main, state, clock, {
  seat,
  between: options.has('replay') || overlaid ? null : { briefing: options.has('briefing') ? options.get('briefing') !== '0' : null, standings: options.get('standings') !== '0', look: slidesLook(options, seat) },
});
beKiosk(options.get('kiosk') === '1');
fitHint(main, seat, () => board.lanes.plan, options.get('fit') === '1');
if (options.get('sound') === '1') {
  const sounds = new Sounds(() => clock.now());
  everyPicture(() => sounds.turn(board.frame));
}

const replay = options.get('replay');
const followed = main.dataset.follow || 'current';
if (replay) playAgain(board, clock, main, followed === 'current' ? state.frame?.heat : followed, replay, options);
else follow(followed);

/** Follows the hub for ever. @param {string} heat */
function follow(heat) {
  let stopAsking = () => {};
  const hub = new Hub('/hub', {
    onFrame: frame => board.hear(frame),
    onProgram: () => board.readProgramme(),
    onState: link => {
      stopAsking();
      board.link(link);
      if (link === 'online') stopAsking = keepInStep(clock, hub, { everyMs: VIEWER_ASKS_EVERY_MS });
    },
  });
  hub.watch(heat);
  hub.start();
}
