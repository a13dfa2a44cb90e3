// The tap: stamped at pointer-down, shown at once, stored, then sent.

const UNKNOWN_CLOCK_MS = 60_000; // this phone never heard the server

export class Recorder {
  storing = []; // on the screen, not yet on the disk
  names = new Map();
  count = 0;

  constructor(parts) { Object.assign(this, parts); }

  entriesOf(heat) { return [...this.outbox.entriesOf(heat), ...this.storing.filter(entry => entry.heat === heat)]; }

  /** Facts of one moment, in one transaction; a `target` may still be on its way to the disk. What brings an instant of its own keeps it, though the clock knows better by now. */
  record(stamp, ...carried) {
    const { clock } = this, { heat, lane, ...known } = this.context();
    const mono = clock.monoOf(stamp), phone = clock.readings(mono);
    const instant = Math.round(clock.instantAt(mono) ?? phone.wallMs);
    const uncertaintyMs = Math.ceil(clock.uncertaintyMs() ?? UNKNOWN_CLOCK_MS);
    const facts = carried.map(({ fact, ...own }) => ({ fact, id: `new.${++this.count}`, lane, instant, uncertaintyMs, ...own, ...known, phone }));
    const shown = facts.map(fact => ({ heat, fact }));
    this.storing.push(...shown);
    const stored = this.outbox.add(heat, () => facts.map(fact => (this.names.has(fact.target) ? { ...fact, target: this.names.get(fact.target) } : fact)));
    const over = taps => {
      taps?.forEach((tap, i) => this.names.set(facts[i].id, tap.fact.id));
      this.storing = this.storing.filter(entry => !shown.includes(entry));
      this.onChange();
    };
    stored.then(over, () => over());
    this.onChange();
    return stored;
  }
}
