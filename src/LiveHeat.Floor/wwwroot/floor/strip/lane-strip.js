// One lane's strip on a page.
//
// Nothing is drawn twice: tape, dash and roll are painted when the strip gets its size, then only uncovered and moved.
import { words } from '../board/words.js';
import { layoutOf, confirmedAt, estimatedAt, capPaceAt } from './layout.js';
import { everyPicture, wantsCalm } from './loop.js';
import { seeded } from './seeded.js';
import { torning } from './tape.js';
import { PACE_PART, paint } from './paint.js';

const ROLL_OUT_MS = 700;            // how long the tape takes to reach a newly confirmed point
const CALM_EVERY_MS = 1_000;        // with less motion asked for, the estimate steps once a second
const ROLLING = new Set(['waiting', 'seated', 'ready', 'working', 'held']);        // a roll stands at the tape's end
const UNPACED = new Set(['held', 'finished', 'withdrawn', 'disqualified']);                             // a finished lane's own time stands, and so would its line
const LEAST_MOVE = 0.25;            // CSS pixels; less is not worth a change

/** @typedef {import('./layout.js').Step} Step */
export class Strip {
  /**
   * @param {HTMLElement} host an empty element with a height; gets the class "strip"
   * @param {{steps: Step[], lane: number, colour: number, capMs?: number|null, windows?: any[]|null, decorative?: boolean}} options
   *   lane: its number, which also seeds the torn edges; colour: 0 to 5; capMs: the sheet's, in lane time; windows: its rounds by the clock; decorative: what it shows is also told in words beside it
   */
  constructor(host, { steps, lane, colour, capMs = null, windows = null, decorative = false }) {
    this.host = host;
    this.steps = steps;
    this.number = lane;
    this.capMs = capMs;
    this.decorative = decorative;
    this.windows = windows;
    this.layout = layoutOf(steps, windows);
    this.torn = torning(1, seeded(lane * 31 + 7));
    this.showPace = false;          // once enough is known of the lane's group
    this.certified = false;
    this.hint = this.hinted = '';   // told beyond the tape's end while the lane has no note of its own
    /** @type {any} */ this.lane = null;
    /** @type {() => number|null} */ this.clock = () => null;
    this.width = this.height = this.scale = 0;      // of the host, CSS pixels; device pixels a CSS pixel
    this.gutter = this.end = 0;     // where the work begins and ends, CSS pixels from the left
    /** @type {number|null} */ this.shown = null;   // 0 to 1: the tape's end as it is drawn now
    /** @type {{from: number, to: number, at: number}|null} */ this.rolling = null;
    /** @type {Record<string, any>} */ this.drawn = {};
    this.dashedFrom = -1;
    this.calmAt = 0;
    this.noteWidth = this.noteHeight = 0;
    this.parts = build(host, colour, decorative);
    this.sizes = new ResizeObserver(() => this.measure());
    this.sizes.observe(host);
    this.stop = everyPicture(at => this.turn(at));
  }

  /** Takes the lane's newest state. @param {any} lane as in the frame @param {() => number|null} clock lane time now, in milliseconds */
  update(lane, clock = this.clock) {
    this.lane = lane;
    this.clock = clock;
    if (this.host.dataset.status !== lane.status) {
      this.host.dataset.status = lane.status;
      this.drawn = {};
    }
    this.write();
    if (this.shown === null) this.shown = this.goal();              // the first state is no news: nothing rolls out
  }

  /** Where the cap pace line is, in CSS pixels from the strip's left edge, or null. */
  get paceX() { return this.drawn.pace ?? null; }

  /** Where the work begins and how wide it is, in CSS pixels from the strip's left edge. */
  get span() { return { from: this.gutter, width: this.end - this.gutter }; }

  dispose() {
    this.stop();
    this.sizes.disconnect();
    this.host.replaceChildren();
    this.host.classList.remove('strip');
  }

  // ---- below: drawing ----

  measure() {
    const { width, height } = this.host.getBoundingClientRect();
    if (width < 20 || height < 4) return;                           // its page is turned away, or not laid out yet
    const scale = globalThis.devicePixelRatio || 1;
    if (this.width === width && this.height === height && this.scale === scale) return;
    const end = width - height * PACE_PART * 1.5;                    // the line must have room at the very end
    Object.assign(this, { width, height, scale, gutter: height, end, drawn: {} });
    paint(this);
    this.write();
  }

  /** Draws all again, after colours changed. */
  repaint() { this.scale = 0; this.measure(); }

  goal() { return this.lane ? confirmedAt(this.layout, this.steps, this.lane) : 0; }

  /** One picture: moves what has moved. */
  turn(at) {
    if (!this.lane || !this.width) return;
    this.rollOut(at);
    if (this.hint || this.hinted) { this.hinted = this.hint; this.write(); }
    if (wantsCalm() && at - this.calmAt < CALM_EVERY_MS && this.drawn.tape !== undefined) return;
    this.calmAt = at;
    const laneMs = this.clock();
    const paced = this.showPace && !UNPACED.has(this.lane.status);
    this.place(estimatedAt(this.layout, this.steps, this.lane, laneMs, this.windows), paced ? capPaceAt(laneMs, this.capMs) : null);
  }

  /** The tape's end runs to the confirmed point, quickly and then slower. */
  rollOut(at) {
    const goal = this.goal();
    if (goal !== this.rolling?.to) this.rolling = { from: this.shown ?? goal, to: goal, at };
    const { from, to, at: since } = this.rolling;
    const part = wantsCalm() ? 1 : Math.min(1, (at - since) / ROLL_OUT_MS);
    this.shown = from + (to - from) * (1 - (1 - part) ** 3);
    this.moved('tape', this.along(this.shown), x => this.layTape(x));
  }

  place(estimate, pace) {
    const { dash, pace: line } = this.parts;
    const ahead = estimate === null ? 0 : this.along(estimate);
    if (this.dashedFrom !== this.drawn.tape) this.drawn.ahead = undefined;
    this.moved('ahead', Math.max(ahead, this.drawn.tape), x => {
      this.dashedFrom = this.drawn.tape;
      dash.style.clipPath = `inset(0 ${Math.max(0, this.width - x)}px 0 ${this.drawn.tape}px)`;
    });
    line.hidden = pace === null;
    if (pace === null) this.drawn.pace = null;
    else this.moved('pace', this.along(pace), x => { line.style.transform = `translateX(${x}px)`; });
  }

  /** Uncovers the tape up to x; a roll stands with its front edge there, and where there is no roll the tape is torn. */
  layTape(x) {
    const { laid, end } = this.parts, { height } = this;
    const depth = height * 0.8;
    const worked = (x - this.gutter) / Math.max(1, this.end - this.gutter);
    const size = 1 - 0.22 * worked;                                // the roll gets smaller as it is used up
    const under = ROLLING.has(this.lane.status) ? x - height * size / 2 : x;        // the tape goes in under the roll's middle
    const cut = this.torn.map(([part, out]) => `${(under + out * depth).toFixed(1)}px ${(part * 100).toFixed(1)}%`);
    laid.style.clipPath = under >= this.end - 0.5 ? 'none' : `polygon(-9px 0,${under}px 0,${cut.join()},${under}px 100%,-9px 100%)`;
    end.style.transform = `translateX(${x - (height * (1 + size)) / 2}px)`;
    this.parts.roll.style.transform = `scale(${size.toFixed(3)}) rotate(${((x - this.gutter) / (height * 0.5)).toFixed(3)}rad)`;
    this.seat();
  }

  along(part) { return this.gutter + part * (this.end - this.gutter); }

  moved(name, x, move) {
    if (Math.abs((this.drawn[name] ?? -1e9) - x) < LEAST_MOVE) return;
    this.drawn[name] = x;
    move(x);
  }

  /** The note written on the tape, or on the floor beyond its end. */
  write() {
    const { note } = this.parts, text = this.lane ? words.stripNote(this.lane, this.certified) || this.hint : '';
    if (!this.decorative && this.lane) this.host.setAttribute('aria-label', words.stripLabel(this.lane, this.steps, text));
    if (note.textContent === text && this.noteHeight === this.height) return;
    this.noteHeight = this.height;
    note.textContent = text;
    note.hidden = !text;
    this.noteWidth = text ? note.offsetWidth : 0;
    // A note that would not fit at all is told in words beside the strip.
    if (this.width && this.noteWidth > this.end - this.gutter) { note.hidden = true; this.noteWidth = 0; }
    if (this.drawn.tape !== undefined) this.seat();
  }

  seat() {
    const { note } = this.parts;
    if (!this.noteWidth || !this.lane) return;
    const x = this.drawn.tape, gap = this.height * 0.25;
    const beyond = this.lane.status !== 'finished' && x + gap + this.noteWidth <= this.end;
    note.classList.toggle('on-tape', !beyond);
    const left = beyond ? x + gap : this.lane.status === 'finished' ? this.gutter + gap : x - this.noteWidth - gap;
    note.style.transform = `translateX(${Math.max(0, left)}px)`;
  }
}

/** @param {HTMLElement} host @param {number} colour @param {boolean} decorative */
function build(host, colour, decorative) {
  host.classList.add('strip');
  host.dataset.colour = String(colour);
  if (decorative) host.setAttribute('aria-hidden', 'true'); else host.setAttribute('role', 'img');
  const canvas = name => add(host, document.createElement('canvas'), name);
  const floor = canvas('strip-floor'), dash = canvas('strip-dash');
  const laid = add(host, document.createElement('div'), 'strip-laid'), end = add(host, document.createElement('div'), 'strip-end');
  const pace = canvas('strip-pace'), note = add(host, document.createElement('span'), 'strip-note');
  pace.hidden = note.hidden = true;
  return {
    floor, dash, laid, end, pace, note,
    tape: add(laid, document.createElement('canvas'), 'strip-tape'), roll: add(end, document.createElement('canvas'), 'strip-roll'),
  };
}

/** @template {HTMLElement} T @param {HTMLElement} parent @param {T} part @param {string} name @returns {T} */
function add(parent, part, name) {
  part.className = name;
  parent.append(part);
  return part;
}
