// The head of the board: which heat, the clock, what is left of the cap; and the notices that must not be missed.
import { heatMs } from '../strip.js';
import { fitLine } from './fit.js';
import { make, mark, say } from './nodes.js';
import { timeText, words } from './words.js';

const LAST_MINUTE_MS = 60_000;

export class Heading {
  constructor() {
    /** @type {any} */ this.sheet = null;
    /** @type {any} */ this.frame = null;
    this.scene = '';
    /** @type {{capMs: number, division: string}[]} */ this.caps = [];
    this.clockLength = this.leadersKey = '';
    this.title = make('h1', 'heat-title');
    this.workout = make('span', 'heat-workout');
    this.clock = make('span', 'clock');
    this.clockLabel = make('span', 'clock-label');
    this.left = make('span', 'time-left');
    this.cap = make('span', 'time-cap');
    this.sides = [make('div', 'head-left', this.title, this.workout), make('div', 'head-middle', this.clockLabel, this.clock), make('div', 'head-right', this.left, this.cap)];
    this.element = make('header', 'heading', ...this.sides);
    this.clock.setAttribute('role', 'timer');
    this.clock.setAttribute('aria-live', 'off');
  }

  /** Says what a frame changes: titles and caps. @param {any} sheet @param {any} frame @param {string} scene @param {string[]} leaders the first three, told instead of the workout where lanes turn through pages; empty: the workout */
  update(sheet, frame, scene, leaders) {
    this.sheet = sheet;
    this.frame = frame;
    this.scene = scene;
    this.caps = capsOf(sheet, frame);
    const most = this.caps[this.caps.length - 1].capMs, least = this.caps[0].capMs;
    this.set(this.title, sheet.title);
    this.tellLeaders(leaders);
    this.set(this.cap, scene === 'running' && this.caps.length === 2 ? '' : least === most ? words.cap(most) : words.caps(least, most));
    mark(this.element, { status: scene === 'result' ? frame.phase : null, halted: frame.phase === 'halted' ? 'yes' : null, ...(scene === 'running' ? {} : { hurry: null }) });
    if (scene === 'before') {
      const lanes = frame.lanes.filter(lane => lane.status !== 'withdrawn'), ready = lanes.filter(lane => lane.ready).length;
      this.middle(words.upNext, ready === lanes.length ? words.allReady : words.ready(ready, lanes.length), true);
      this.set(this.left, sheet.competition);
    } else if (scene === 'result') {
      const revision = frame.revision > 1 && frame.phase === 'certified' ? ` · ${words.revision(frame.revision)}` : '';
      this.middle(words.statusDetail[frame.phase] + revision, words.status[frame.phase], true);
      this.set(this.left, sheet.competition);
    }
  }

  /** One picture: the clock and what is left. @param {number|null} now */
  turn(now) {
    if (!this.frame || now === null || (this.scene !== 'running' && this.scene !== 'count-down')) return;
    const ms = heatMs(this.frame, now);
    if (ms === null) return;
    if (this.scene === 'count-down') {
      this.middle(words.startsInLabel, words.startsIn(-ms), false);
      this.set(this.left, this.sheet.competition);
      return;
    }
    const last = this.caps[this.caps.length - 1].capMs;
    this.middle('', timeText(Math.min(ms, last), 1), false);
    const [first, second] = this.caps;
    if (this.caps.length === 2) {
      this.set(this.left, leftOf(first, ms));
      this.set(this.cap, leftOf(second, ms));
    } else this.set(this.left, ms >= last ? words.capReached : words.left(last - ms));
    mark(this.element, { hurry: last - ms <= LAST_MINUTE_MS ? 'yes' : null });
  }

  /** Fits the lines again, after the room changed. */
  refit() {
    for (const line of [this.title, this.workout, this.left, this.cap, this.clockLabel]) this.fit(line);
  }

  // ---- below ----

  /** As many of the leaders as there is room for. */
  tellLeaders(leaders) {
    mark(this.element, { leaders: leaders.length ? 'yes' : null });
    const key = leaders.join('|') || words.workout(this.sheet.workout);
    if (key === this.leadersKey) return;
    this.leadersKey = key;
    if (!leaders.length) this.set(this.workout, key);
    for (let count = leaders.length; count > 0; count--) {
      say(this.workout, leaders.slice(0, count).join(' · '));
      if (this.fit(this.workout) >= 1) break;
    }
  }

  middle(label, text, inWords) {
    this.set(this.clockLabel, label);
    const shape = inWords ? 'words' : 'clock';
    const length = shape + text.length;
    mark(this.clock, { shape });
    if (say(this.clock, text) && length !== this.clockLength) {
      this.clockLength = length;
      this.refit();
    }
  }

  set(line, text) { if (say(line, text)) this.fit(line); }

  fit(line) {
    const room = line.parentElement?.clientWidth ?? 0;
    return room > 40 ? fitLine(line, room, line.parentElement === this.sides[2] ? 'right' : line.parentElement === this.sides[1] ? 'center' : 'left') : 1;
  }
}

/** The caps on the floor, shortest first, each with its division. */
function capsOf(sheet, frame) {
  const caps = new Map();
  for (const lane of sheet.lanes) if (!caps.has(lane.capMs)) caps.set(lane.capMs, lane.divisionName);
  const list = [...caps].map(([capMs, division]) => ({ capMs, division })).sort((one, other) => one.capMs - other.capMs);
  return list.length ? list : [{ capMs: frame.capMs, division: '' }];
}

function leftOf({ capMs, division }, ms) { return ms >= capMs ? `${division}: ${words.capReached}` : words.leftIn(division, capMs - ms); }
