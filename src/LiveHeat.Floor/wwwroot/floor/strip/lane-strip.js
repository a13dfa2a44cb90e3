// One lane's strip on a page.
//
// Nothing is drawn twice: tape, dash and roll are painted when the strip gets its size, then only uncovered and moved. Moving changes
// transforms of layers and nothing else, so that a picture costs neither layout nor paint: a window over the tape goes right and the tape
// in it as far left.
import { words } from '../board/words.js';
import { layoutOf, confirmedAt, estimatedAt, capPaceAt } from './layout.js';
import { everyNth, everyPicture, wantsCalm } from './loop.js';
import { seeded } from './seeded.js';
import { torning } from './tape.js';
import { PACE_PART, paint } from './paint.js';
import { still } from './still.js';

const ROLL_OUT_MS = 700;            // how long the tape takes to reach a newly confirmed point
const CALM_EVERY_MS = 1_000;        // with less motion asked for, the estimate steps once a second
const ROLLING = new Set(['waiting', 'seated', 'ready', 'working', 'held']);        // a roll stands at the tape's end
const UNPACED = new Set(['held', 'finished', 'withdrawn', 'disqualified']);                             // a finished lane's own time stands, and so would its line
const LEAST_MOVE = 0.25;            // CSS pixels; less is not worth a change

const STILL = ['floor', 'dash', 'tape', 'pace'];
const LEAST_TURN = 0.05;            // radians; less is not worth drawing the roll again

/** @typedef {import('./layout.js').Step} Step */
export class Strip {
  /**
   * @param {HTMLElement} host an empty element with a height; gets the class "strip"
   * @param {{steps: Step[], lane: number, colour: number, capMs?: number|null, windows?: any[]|null, decorative?: boolean, fineness?: number}} options
   *   lane: its number, which also seeds the torn edges; colour: 0 to 5; capMs: the sheet's, in lane time; windows: its rounds by the clock; decorative: what it shows is also told in words beside it;
   *   fineness: device pixels a CSS pixel to paint at least, for paper, which is finer than the screen it is printed from
   */
  constructor(host, { steps, lane, colour, capMs = null, windows = null, decorative = false, fineness = 1 }) {
    this.host = host;
    this.steps = steps;
    this.number = lane;
    this.capMs = capMs;
    this.decorative = decorative;
    this.windows = windows;
    this.fineness = fineness;
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
    this.away = false;              // its page is turned away, or it is not laid out yet
    this.calmAt = this.movedAt = 0;
    this.every = 1;                 // pictures from one at which dash and cap pace are looked at to the next
    this.fresh = true;              // something was told that is not drawn
    this.rolls = false;             // the tape's end is on its way
    this.noteWidth = this.noteHeight = 0;
    /** @type {boolean|null} */ this.paced = false;     // whether the cap pace line is there
    /** @type {Record<string, any>} */ this.parts = build(host, colour, decorative);
    this.painted = 0;               // how often
    /** @type {Record<string, HTMLCanvasElement>} */ this.canvases = Object.fromEntries(STILL.map(name => [name, this.parts[name]]));
    this.sizes = new ResizeObserver(() => this.measure());
    this.sizes.observe(host);
    this.stop = everyPicture((at, nth) => this.turn(at, nth));
  }

  /** Takes the lane's newest state. @param {any} lane as in the frame @param {() => number|null} clock lane time now, in milliseconds */
  update(lane, clock = this.clock) {
    this.lane = lane;
    this.clock = clock;
    this.fresh = true;
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
    this.painted++;
    this.sizes.disconnect();
    this.host.replaceChildren();
    this.host.classList.remove('strip');
  }

  // ---- below: drawing ----

  measure() {
    const { width, height } = this.host.getBoundingClientRect();
    this.away = width < 20 || height < 4;
    if (this.away) return;
    const scale = Math.max(this.fineness, globalThis.devicePixelRatio || 1);
    if (this.width === width && this.height === height && this.scale === scale) return;
    const end = width - height * PACE_PART * 1.5;                    // the line must have room at the very end
    Object.assign(this, { width, height, scale, gutter: height, end, drawn: {}, fresh: true });
    this.settle();
    this.write();
  }

  /** Paints all, and makes still images of it. */
  settle() {
    const painted = ++this.painted;
    for (const name of STILL) {
      const canvas = this.canvases[name];
      if (this.parts[name] !== canvas) this.parts[name].replaceWith(canvas);
      this.parts[name] = canvas;
    }
    this.paced = null;
    paint(this);
    for (const name of STILL) {
      still(this.canvases[name], image => {
        if (painted !== this.painted) return false;
        this.parts[name] = image;
        return true;
      });
    }
  }

  /** Draws all again, after colours changed. */
  repaint() { this.scale = 0; this.measure(); }

  goal() { return this.lane ? confirmedAt(this.layout, this.steps, this.lane) : 0; }

  /** One picture: moves what has moved. @param {number} at performance.now() @param {number} nth number of the picture */
  turn(at, nth) {
    if (!this.lane || !this.width || this.away || !(this.fresh || this.rolls || nth % this.every === 0)) return;
    this.rolls = this.rollOut(at);
    if (this.hint || this.hinted) { this.hinted = this.hint; this.write(); }
    if (wantsCalm() && at - this.calmAt < CALM_EVERY_MS && this.drawn.tape !== undefined) return;
    this.fresh = false;
    this.calmAt = at;
    const laneMs = this.clock(), before = this.drawn.ahead ?? 0, line = this.drawn.pace ?? 0;
    const paced = this.showPace && !UNPACED.has(this.lane.status);
    this.place(estimatedAt(this.layout, this.steps, this.lane, laneMs, this.windows), paced ? capPaceAt(laneMs, this.capMs) : null);
    const far = Math.max(Math.abs(this.drawn.ahead - before), Math.abs((this.drawn.pace ?? 0) - line));
    if (far === 0 && nth - this.movedAt < 16) return;
    this.every = everyNth(far / (nth - this.movedAt), LEAST_MOVE);
    this.movedAt = nth;
  }

  /** The tape's end runs to the confirmed point, quickly and then slower. @returns {boolean} whether it is on its way */
  rollOut(at) {
    const goal = this.goal();
    if (goal !== this.rolling?.to) this.rolling = { from: this.shown ?? goal, to: goal, at };
    const { from, to, at: since } = this.rolling;
    const part = wantsCalm() ? 1 : Math.min(1, (at - since) / ROLL_OUT_MS);
    this.shown = from + (to - from) * (1 - (1 - part) ** 3);
    this.moved('tape', this.along(this.shown), x => this.layTape(x));
    return part < 1;
  }

  place(estimate, pace) {
    const { ahead, dash, pace: line } = this.parts;
    // It begins under the tape, which nothing shows through. Where there is nothing to guess it stands before its beginning.
    this.moved('ahead', estimate === null ? 0 : Math.max(this.along(estimate), this.drawn.tape), x => this.uncover(ahead, dash, x));
    if (this.paced !== (pace !== null)) { this.paced = pace !== null; line.hidden = !this.paced; }
    if (pace === null) this.drawn.pace = null;
    else this.moved('pace', this.along(pace), x => { line.style.transform = `translateX(${x}px)`; });
  }

  /** Uncovers the tape up to x; a roll stands with its front edge there, and where there is no roll the tape is torn. */
  layTape(x) {
    const { laid, tape, end } = this.parts, { height } = this;
    const worked = (x - this.gutter) / Math.max(1, this.end - this.gutter);
    const size = 1 - 0.22 * worked;                                // the roll gets smaller as it is used up
    const rolls = ROLLING.has(this.lane.status);
    this.uncover(laid, tape, rolls ? x - height * size / 2 : this.width);        // the tape goes in under the roll's middle
    const torn = rolls || x >= this.end - 0.5 ? '' : this.tornAt(x);
    if (tape.style.clipPath !== torn) tape.style.clipPath = torn;
    end.style.transform = `translateX(${x - (height * (1 + size)) / 2}px)`;
    if (rolls) this.turnRoll(size, (x - this.gutter) / (height * 0.5));
    this.seat();
  }

  /** Turns the roll. Drawn anew and not turned by the page: a layer that stands askew costs the display a picture of its own. @param {number} size 1 when whole @param {number} angle */
  turnRoll(size, angle) {
    const step = Math.round(angle / LEAST_TURN);
    if (step === this.drawn.roll) return;
    this.drawn.roll = step;
    const { roll, wound } = this.parts, { height, scale } = this, ink = /** @type {CanvasRenderingContext2D} */ (roll.getContext('2d')), part = scale * size;
    ink.setTransform(1, 0, 0, 1, 0, 0);
    ink.clearRect(0, 0, roll.width, roll.height);
    ink.translate(roll.width / 2, roll.height / 2);
    ink.rotate(step * LEAST_TURN);
    ink.drawImage(wound, -height * part / 2, -height * part / 2, height * part, height * part);
  }

  tornAt(x) {
    const cut = this.torn.map(([part, out]) => `${(x + out * this.height * 0.8).toFixed(1)}px ${(part * 100).toFixed(1)}%`);
    return `polygon(-9px 0px, ${x}px 0px, ${cut.join(', ')}, ${x}px 100%, -9px 100%)`;
  }

  /** Shows what lies in a window up to x. @param {HTMLElement} window as wide as the strip @param {HTMLElement} inside @param {number} x */
  uncover(window, inside, x) {
    window.style.transform = `translateX(${x - this.width}px)`;
    inside.style.transform = `translateX(${this.width - x}px)`;
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
    const left = beyond ? x + gap : this.lane.status === 'finished' ? this.gutter + gap : x - this.noteWidth - gap;
    note.classList.toggle('on-tape', !beyond && left >= this.gutter);          // wider than the tape it has a ground of its own
    note.style.transform = `translateX(${Math.max(0, left)}px)`;
  }
}

/** @param {HTMLElement} host @param {number} colour @param {boolean} decorative */
function build(host, colour, decorative) {
  host.classList.add('strip');
  host.dataset.colour = String(colour);
  if (decorative) host.setAttribute('aria-hidden', 'true'); else host.setAttribute('role', 'img');
  const canvas = name => add(host, document.createElement('canvas'), name);
  const floor = canvas('strip-floor'), ahead = add(host, document.createElement('div'), 'strip-ahead');
  const laid = add(host, document.createElement('div'), 'strip-laid'), end = add(host, document.createElement('div'), 'strip-end');
  const pace = canvas('strip-pace'), note = add(host, document.createElement('span'), 'strip-note');
  pace.hidden = note.hidden = true;
  return {
    floor, ahead, laid, end, pace, note, dash: add(ahead, document.createElement('canvas'), 'strip-dash'),
    tape: add(laid, document.createElement('canvas'), 'strip-tape'), roll: add(end, document.createElement('canvas'), 'strip-roll'), wound: document.createElement('canvas'),
  };
}

/** @template {HTMLElement} T @param {HTMLElement} parent @param {T} part @param {string} name @returns {T} */
function add(parent, part, name) {
  part.className = name;
  parent.append(part);
  return part;
}
