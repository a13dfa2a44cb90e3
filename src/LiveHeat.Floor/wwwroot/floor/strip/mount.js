// Strips for a screen that keeps its own page: the Blazor screens and the result page.
//   const strips = mountStrips(root, sheet, frame, { serverNow });   // root holds elements with data-strip="<lane number>"
//   strips.update(frame); strips.synchronise(serverNow); strips.dispose();
import { Strip } from './lane-strip.js';
import { laneMs } from './instants.js';
import { pacedGroups } from './pace.js';

/** @typedef {{serverNow?: number, rate?: number, now?: () => number|null}} Time `serverNow`: the server's instant at this moment; `rate`: server
 *   milliseconds a real one; or `now` of a clock of this page. With neither, the device's own clock is believed */
/** @typedef {{decorative?: boolean, fineness?: number}} Look see Strip */

/** @param {HTMLElement} root @param {any} sheet @param {any} frame @param {Time & Look} [options] */
export function mountStrips(root, sheet, frame, options = {}) {
  return new MountedStrips(root, sheet, frame, options);
}

class MountedStrips {
  /** @param {HTMLElement} root @param {any} sheet @param {any} frame @param {Time & Look} options */
  constructor(root, sheet, frame, { serverNow, rate = 1, now, ...look }) {
    this.root = root;
    this.look = look;
    /** @type {any} */ this.sheet = null;
    /** @type {any} */ this.frame = null;
    this.anchor = { server: 0, mono: 0, rate: 1 };
    /** @type {Map<number, Strip>} */ this.strips = new Map();
    this.now = now ?? (() => this.anchor.server + (performance.now() - this.anchor.mono) * this.anchor.rate);
    this.ground = new MutationObserver(() => { for (const strip of this.strips.values()) strip.repaint(); });
    this.ground.observe(document.documentElement, { attributeFilter: ['data-ground'] });       // dark or light: the colours are painted in
    this.synchronise(serverNow ?? Date.now(), rate);
    this.take(sheet);
    this.update(frame);
  }

  /** Says what the server's instant is at this moment. */
  synchronise(serverNow, rate = 1) { this.anchor = { server: serverNow, mono: performance.now(), rate }; }

  /** Draws another sheet: called when the frame's sheet number changed, or the page redrew its rows. */
  take(sheet) {
    this.sheet = sheet;
    this.clear();
    for (const lane of sheet?.lanes ?? []) {
      const host = /** @type {HTMLElement|null} */ (this.root.querySelector(`[data-strip="${lane.lane}"]`));
      if (host) this.strips.set(lane.lane, new Strip(host, { steps: lane.steps.slice(0, lane.expectedSteps ?? undefined), lane: lane.lane, colour: lane.colour, capMs: lane.capMs, windows: lane.windows, ...this.look }));
    }
    if (this.frame) this.show();
  }

  update(frame) {
    this.frame = frame;
    const gone = [...this.strips.values()].some(strip => !strip.host.isConnected);     // the page drew its rows anew
    if (gone) this.take(this.sheet); else this.show();
  }

  show() {
    const { frame } = this;
    const paced = frame && this.sheet ? pacedGroups(this.sheet, frame) : new Set();
    const groups = new Map((this.sheet?.lanes ?? []).map(lane => [lane.lane, lane.group]));
    for (const lane of frame?.lanes ?? []) {
      const strip = this.strips.get(lane.lane);
      if (!strip) continue;
      strip.showPace = paced.has(groups.get(lane.lane));
      strip.certified = frame.phase === 'certified';
      strip.update(lane, () => laneMs(this.frame, lane, this.now()));
    }
  }

  dispose() {
    this.ground.disconnect();
    this.clear();
  }

  clear() {
    for (const strip of this.strips.values()) strip.dispose();
    this.strips.clear();
  }
}
