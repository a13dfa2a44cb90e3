// The tap: stamped at pointer-down, shown at once, stored, then sent. A button carries its fact, and that fact is what is recorded.

/** @typedef {import('./steps.js').Entry} Entry */

const UNKNOWN_CLOCK_MS = 60_000;     // this phone never heard the server: its wall clock, for what it is worth

export class Recorder {
  /**
   * @param {{clock: import('/floor/clock.js').Clock, outbox: import('./outbox.js').Outbox, onChange: () => void,
   *   context: () => {heat: string, lane: number, start: string|null, plan: number, seat: string|null}}} options
   */
  constructor({ clock, outbox, context, onChange }) {
    Object.assign(this, { clock, outbox, context, onChange });
    /** @type {(Entry & {heat: string})[]} on the screen, not yet on the disk */ this.storing = [];
    this.names = new Map();
    this.count = 0;
  }

  /** This phone's own facts of a heat, stored or just being stored. @returns {Entry[]} */
  entriesOf(heat) { return [...this.outbox.entriesOf(heat), ...this.storing.filter(entry => entry.heat === heat)]; }

  /**
   * Records one or several facts of one moment, in one transaction.
   * @param {number} stamp the event's own time stamp
   * @param {...any} carried each `{fact, ...its own fields}`; a `target` may be a fact still being stored
   * @returns {Promise<any[]>} the stored taps
   */
  record(stamp, ...carried) {
    const { heat, lane, start, plan, seat } = this.context();
    const mono = this.clock.monoOf(stamp);
    const instant = this.clock.instantAt(mono);
    const phone = this.clock.readings(mono);
    const facts = carried.map(({ fact, ...own }) => ({
      fact, lane, ...own,
      instant: Math.round(instant ?? phone.wallMs),
      uncertaintyMs: Math.ceil(this.clock.uncertaintyMs() ?? UNKNOWN_CLOCK_MS),
      start, plan, seat, phone,
    }));
    const shown = facts.map(fact => ({ heat, fact: { id: `new-${++this.count}`, ...fact } }));
    this.storing.push(...shown);
    this.onChange();
    const real = fact => (fact.target && this.names.has(fact.target) ? { ...fact, target: this.names.get(fact.target) } : fact);
    const stored = this.outbox.add(heat, () => facts.map(real));
    stored.then(taps => {
      taps.forEach((tap, i) => this.names.set(shown[i].fact.id, tap.fact.id));
      this.forget(shown);
    }, () => this.forget(shown));
    return stored;
  }

  forget(shown) {
    this.storing = this.storing.filter(entry => !shown.includes(entry));
    this.onChange();
  }
}
