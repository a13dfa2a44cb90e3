// A heat played again on the board: the same frames, the same drawing, another clock. ?replay=happened plays every fact at its own
// instant, ?replay=known when the ledger had it; ?speed=4 sets the speed, ?at=272000 stands at a heat time in milliseconds.
import { make } from './nodes.js';
import { words } from './words.js';
import { ownLanguage } from '../words/words.js';

const SPEEDS = [0.5, 1, 2, 4, 8, 16];
const LEAD_MS = 3_000;               // begin a little before GO

/** Plays moments against a clock of its own. Pure but for the real clock it is given. */
export class Player {
  /** @param {{at: number, frame: any}[]} moments in order @param {() => number} real milliseconds */
  constructor(moments, real) {
    this.moments = moments;
    this.real = real;
    this.speed = 1;
    this.playing = false;
    this.from = moments.length ? moments[0].at : 0;
    this.until = moments.length ? moments[moments.length - 1].at : 0;
    this.stoodAt = this.from;
    this.since = real();
  }

  /** The instant that is shown. */
  now() {
    const at = this.playing ? this.stoodAt + (this.real() - this.since) * this.speed : this.stoodAt;
    return Math.min(this.until, Math.max(this.from, at));
  }

  /** @param {number} instant */
  seek(instant) { this.stoodAt = Math.min(this.until, Math.max(this.from, instant)); this.since = this.real(); }

  play() { if (this.now() >= this.until) this.seek(this.from); this.seek(this.now()); this.playing = true; }

  pause() { this.seek(this.now()); this.playing = false; }

  /** @param {number} speed */
  setSpeed(speed) { this.seek(this.now()); this.speed = speed; }

  /** The last moment at or before now; null before the first. */
  moment() {
    const now = this.now();
    let low = 0, high = this.moments.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.moments[middle].at <= now) low = middle + 1; else high = middle;
    }
    return low ? this.moments[low - 1] : null;
  }
}

/**
 * Turns a board into a player.
 * @param {any} board @param {{now(): number|null}} clock the board's clock: replaced @param {HTMLElement} main
 * @param {string} heat @param {string} by happened or known @param {URLSearchParams} options
 */
export async function playAgain(board, clock, main, heat, by, options) {
  const answer = await fetch(`/api/heats/${encodeURIComponent(heat)}/replay?by=${by === 'known' ? 'known' : 'happened'}`, { headers: ownLanguage() });
  if (!answer.ok) {
    const problem = await answer.json().catch(() => ({}));
    main.prepend(make('p', 'replay-refused', problem.detail ?? words.noReplay));
    return;
  }
  const { sheets, moments } = await answer.json();
  const player = new Player(moments, () => performance.now());
  clock.now = () => player.now();
  const start = moments.map(moment => moment.frame.start?.goAt).filter(Boolean).pop();
  const heatTime = options.get('at');
  if (start) player.seek(heatTime === null ? start - LEAD_MS : start + Number(heatTime));
  const speed = Number(options.get('speed'));
  if (speed > 0) player.setSpeed(speed);
  main.dataset.replay = by;
  const bar = controls(player, start, by);
  document.body.append(bar.element);
  if (heatTime === null) player.play();

  let shown = null;
  const turn = () => {
    const moment = player.moment();
    if (moment && moment !== shown) {
      shown = moment;
      board.ahead = sheets.find(sheet => sheet.sheet === moment.frame.sheet);
      board.hear(moment.frame);
    }
    board.frameAt = performance.now();          // a replay is never out of date
    bar.turn();
    requestAnimationFrame(turn);
  };
  requestAnimationFrame(turn);
}

function controls(player, start, by) {
  const toggle = make('button', 'replay-play');
  const slider = /** @type {HTMLInputElement} */ (make('input', 'replay-at'));
  Object.assign(slider, { type: 'range', min: String(player.from), max: String(player.until), step: '100' });
  slider.setAttribute('aria-label', words.replayAt);
  const speed = /** @type {HTMLSelectElement} */ (make('select', 'replay-speed'));
  speed.setAttribute('aria-label', words.replaySpeed);
  for (const times of [...new Set([...SPEEDS, player.speed])].sort((one, other) => one - other)) {
    speed.append(Object.assign(document.createElement('option'), { value: String(times), textContent: `×${times}` }));
  }
  speed.value = String(player.speed);
  const label = make('output', 'replay-time');
  toggle.dataset.act = 'play';
  slider.dataset.act = 'seek';
  speed.dataset.act = 'speed';
  toggle.addEventListener('click', () => { if (player.playing) player.pause(); else player.play(); });
  slider.addEventListener('input', () => player.seek(Number(slider.value)));
  speed.addEventListener('change', () => player.setSpeed(Number(speed.value)));
  addEventListener('keydown', event => {
    if (event.target instanceof HTMLSelectElement) return;
    const step = { ArrowLeft: -5_000, ArrowRight: 5_000 }[event.key];
    if (step) { player.seek(player.now() + step); event.preventDefault(); }
    if (event.key === ' ') { toggle.click(); event.preventDefault(); }
  });
  const element = make('div', 'replay', toggle, slider, label, speed, make('span', 'replay-by', by === 'known' ? words.asKnown : words.asHappened));
  return {
    element,
    turn() {
      const text = player.playing ? words.pause : words.play;
      if (toggle.textContent !== text) toggle.textContent = text;
      slider.value = String(player.now());
      const at = start ? player.now() - start : player.now() - player.from;
      const time = `${at < 0 ? '−' : ''}${Math.floor(Math.abs(at) / 60_000)}:${String(Math.floor(Math.abs(at) / 1000) % 60).padStart(2, '0')}`;
      if (label.textContent !== time) label.textContent = time;
    },
  };
}
