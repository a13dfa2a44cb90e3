// The big screen. The server sends the page with the lanes as a plain table and the newest state; this replaces the table,
// follows the hub, and never goes blank: what it last knew stays on screen, with its age, until it hears again.
//
// The page, as the server writes it at /board (the current heat, followed from heat to heat) and /board/{heat}:
//
//   <!doctype html>
//   <html lang="en">
//   <head>
//     <meta charset="utf-8">
//     <meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover">
//     <title>Heat 1 · Breakwater Relays</title>
//     <link rel="preload" href="/floor/fonts/barlow-condensed-latin-700-normal.woff2" as="font" type="font/woff2" crossorigin>
//     <link rel="stylesheet" href="/floor/floor.css">
//     <link rel="stylesheet" href="/floor/board/board.css">
//   </head>
//   <body>
//     <main id="board" data-follow="current">            (or data-follow="h1": only that heat)
//       <h1>Heat 1</h1>
//       <p>Low Tide: 8 rounds, one each in turn</p>
//       <table class="plain">
//         <thead><tr><th>Lane</th><th>Team</th><th>Division</th><th>Athletes</th><th>Place</th></tr></thead>
//         <tbody><tr><td>1</td><td>Harbour Anvils</td><td>Open</td><td>Joss, Ilka, Bram, Edda</td><td>2</td></tr></tbody>
//       </table>
//     </main>
//     <script type="application/json" id="state">{"program":{...},"sheet":{...}|null,"frame":{...}|null}</script>
//     <script type="module" src="/floor/board/board.js"></script>
//   </body>
//   </html>
//
// The JSON has "<" written as \u003c. What is inside main is for readers without scripts; it may say more or less.
// Address options: ?replay=happened or known with ?speed=4 and ?at=272000 plays the heat again (replay.js), ?light=1 daylight, ?light=auto as the device is set, ?edge=5 overscan margin in percent (3.5).
// For tests main carries data-scene, data-phase, data-heat, data-sequence, data-freshness; each li.lane data-lane, data-status, data-place.
import { Clock, keepInStep } from '../clock.js';
import { Hub } from '../hub.js';
import { playAgain } from './replay.js';
import { Board } from './screen.js';

const main = /** @type {HTMLElement} */ (document.getElementById('board'));
const state = JSON.parse(document.getElementById('state')?.textContent || '{}');
const options = new URLSearchParams(location.search);
const VIEWER_ASKS_EVERY_MS = 30_000;          // a thousand viewers need not ask as often as twenty judges

lightOf(options.get('light'));
const edge = Number(options.get('edge'));
if (edge >= 0 && edge <= 10 && options.has('edge')) document.documentElement.style.setProperty('--edge', `${edge / 100}`);

// Until the first exchange the server's own time in the page is good enough to draw by.
const serverNow = state.program?.serverNow ?? state.frame?.madeAt;
const bridge = serverNow ? { server: serverNow, wall: Date.now(), rate: 1, uncertaintyMs: 1_000 } : null;
const clock = new Clock(/** @type {any} */ ({ bridge }));
const board = new Board(main, state, clock);

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

function lightOf(wish) {
  const root = document.documentElement;
  if (wish !== 'auto') { root.dataset.ground = wish === '1' ? 'light' : 'dark'; return; }
  const day = matchMedia('(prefers-color-scheme: light)');
  const set = () => { root.dataset.ground = day.matches ? 'light' : 'dark'; board?.repaint(); };
  day.addEventListener('change', set);
  root.dataset.ground = day.matches ? 'light' : 'dark';
}
