// The head of the board: which heat, the clock, what is left of the cap; and the notices that must not be missed.
import { heatMs, whereIs } from '../strip.js';
import { fitLine, fitWords, isReadable } from './fit.js';
import { make, mark, say } from './nodes.js';
import { timeText, words } from './words.js';

const LAST_MINUTE_MS = 60_000;
const MIDDLE_PART = 0.4, MIDDLE_OF_HEIGHT = 0.6;     // most of the head's width, and of the screen's height, that words in the middle may have

export class Heading {
  constructor() {
    /** @type {any} */ this.sheet = null;
    /** @type {any} */ this.frame = null;
    this.scene = '';
    /** @type {{capMs: number, division: string}[]} */ this.caps = [];
    /** @type {any[]|null} */ this.windows = null;
    this.clockLength = '';
    /** @type {Map<HTMLElement, string>} */ this.texts = new Map();      // the whole text of each line
    /** @type {string[]} */ this.leaders = [];
    this.least = 0;                       // size of text, CSS pixels
    this.title = make('h1', 'heat-title');
    this.workout = make('span', 'heat-workout');
    this.clock = make('span', 'clock');
    this.clockLabel = make('span', 'clock-label');
    this.left = make('span', 'time-left');
    this.cap = make('span', 'time-cap');
    this.sides = [make('div', 'head-left', this.title, this.workout), make('div', 'head-middle', this.clockLabel, this.clock), make('div', 'head-right', this.left, this.cap)];
    this.element = make('header', 'heading', ...this.sides);
    this.needed = new Set([this.title, this.left, this.clock]);
    this.clock.setAttribute('role', 'timer');
    this.clock.setAttribute('aria-live', 'off');
  }

  /** Says what a frame changes: titles and caps. @param {any} sheet @param {any} frame @param {string} scene @param {string[]} leaders the first three, told instead of the workout where lanes turn through pages; empty: the workout @param {number|null} plannedAt */
  update(sheet, frame, scene, leaders, plannedAt = null) {
    this.sheet = sheet;
    this.frame = frame;
    this.scene = scene;
    this.caps = capsOf(sheet, frame);
    this.windows = windowsOf(sheet);
    this.set(this.title, sheet.title);
    this.tellLeaders(leaders);
    if (scene !== 'running') this.set(this.cap, this.capText());
    mark(this.element, { status: scene === 'result' ? frame.phase : null, halted: frame.phase === 'halted' ? 'yes' : null, ...(scene === 'running' ? {} : { hurry: null, over: null }) });
    if (scene === 'before') {
      const lanes = frame.lanes.filter(lane => lane.status !== 'withdrawn'), ready = lanes.filter(lane => lane.ready).length;
      this.middle(plannedAt ? words.plannedTitle(words.upNext, plannedAt) : words.upNext, ready === lanes.length ? words.allReady : words.ready(ready, lanes.length), true);
      this.set(this.left, sheet.competition);
    } else if (scene === 'result') {
      this.middle(words.statusDetail(frame.phase, frame.revision), words.status[frame.phase], true);
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
    const hurry = this.caps.some(({ capMs }) => isLastMinute(capMs - ms)), over = ms >= last;
    mark(this.element, { hurry: hurry ? 'yes' : null, over: over ? 'yes' : null });
    if (this.caps.length === 2) {
      this.set(this.left, leftOf(first, ms));
      this.set(this.cap, leftOf(second, ms));
    } else {
      this.set(this.left, over ? words.capReached : words.left(last - ms));
      this.set(this.cap, hurry ? words.lastMinute : this.roundText(ms) || this.capText());
    }
  }

  /** Where all lanes have the same rounds by the clock: how long this one lasts, or the rest after it. */
  roundText(ms) {
    if (!this.windows) return '';
    const { round, turnsMs } = whereIs({ steps: [], windows: this.windows }, { open: 1 }, ms), { untilMs } = this.windows[(round ?? 1) - 1];
    return turnsMs === null ? '' : ms > untilMs ? words.rest(turnsMs - ms) : words.roundLeft(round, this.windows.length, turnsMs - ms);
  }

  capText() {
    const most = this.caps[this.caps.length - 1].capMs, least = this.caps[0].capMs;
    return least === most ? words.cap(most) : words.caps(least, most);
  }

  /** Fits the lines again, after the room changed. @param {number} least size of text, CSS pixels */
  refit(least = this.least) {
    this.least = least;
    for (const line of this.texts.keys()) this.fit(line);
    if (this.leaders.length) this.tellLeaders(this.leaders, true);
  }

  // ---- below ----

  /** As many of the leaders as there is room for; without any, the workout. @param {string[]} leaders @param {boolean} again the room changed */
  tellLeaders(leaders, again = false) {
    mark(this.element, { leaders: leaders.length ? 'yes' : null });
    if (!again && leaders.join('|') === this.leaders.join('|') && leaders.length) return;
    this.leaders = leaders;
    if (!leaders.length) { this.set(this.workout, words.workout(this.sheet.workout)); return; }
    for (let count = leaders.length; count > 0; count--) {
      this.texts.set(this.workout, leaders.slice(0, count).join(' · '));
      say(this.workout, leaders.slice(0, count).join(' · '));
      if (this.fitLine(this.workout) >= 1) return;
    }
    this.fit(this.workout);
  }

  middle(label, text, inWords) {
    this.set(this.clockLabel, label);
    const shape = inWords ? 'words' : 'clock', length = shape + text.length;
    mark(this.clock, { shape });
    if (inWords) this.set(this.clock, text);
    else if (this.texts.delete(this.clock)) { this.clock.style.fontSize = this.clock.style.transform = ''; this.clock.style.marginInline = ''; }
    if (!inWords) say(this.clock, text);
    if (length !== this.clockLength) {
      this.clockLength = length;
      this.refit();
    }
  }

  set(line, text) {
    if (this.texts.get(line) === text) return;
    this.texts.set(line, text);
    this.fit(line);
  }

  /** A line that must be there gets shorter where it would get too small; one that may be missing goes. */
  fit(line) {
    const text = this.texts.get(line) ?? '', room = this.roomOf(line);
    line.hidden = false;
    if (room <= 40 || !text) { say(line, text); return; }
    if (this.needed.has(line) || (line === this.workout && this.leaders.length)) { fitWords(line, line, text, room, this.least, this.sideOf(line)); return; }
    say(line, text);
    this.fitLine(line);
    line.hidden = !isReadable(line, this.least);
  }

  /** @returns {number} the size it got */
  fitLine(line) { return fitLine(line, this.roomOf(line), this.sideOf(line)); }

  /** The middle is as wide as its text; the sides have what it leaves. */
  roomOf(line) {
    const side = line.parentElement;
    return side === this.sides[1] ? Math.min(this.element.clientWidth * MIDDLE_PART, innerHeight * MIDDLE_OF_HEIGHT) : side?.clientWidth ?? 0;
  }

  sideOf(line) { return line.parentElement === this.sides[2] ? 'right' : line.parentElement === this.sides[1] ? 'center' : 'left'; }
}

/** The caps on the floor, shortest first, each with its division. */
function capsOf(sheet, frame) {
  const caps = new Map();
  for (const lane of sheet.lanes) if (!caps.has(lane.capMs)) caps.set(lane.capMs, lane.divisionName);
  const list = [...caps].map(([capMs, division]) => ({ capMs, division })).sort((one, other) => one.capMs - other.capMs);
  return list.length ? list : [{ capMs: frame.capMs, division: '' }];
}

/** The rounds by the clock that all lanes have; null where they have none or not the same. */
function windowsOf(sheet) {
  const [first, ...others] = sheet.lanes.map(lane => (lane.windows ?? []).map(({ fromMs, untilMs }) => `${fromMs}-${untilMs}`).join());
  return first && others.every(other => other === first) ? sheet.lanes[0].windows : null;
}

function leftOf({ capMs, division }, ms) { return ms >= capMs ? words.capReachedIn(division) : words.leftIn(division, capMs - ms); }

function isLastMinute(leftMs) { return leftMs > 0 && leftMs <= LAST_MINUTE_MS; }
