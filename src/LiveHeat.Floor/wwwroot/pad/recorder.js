// The tap: stamped at pointer-down, shown at once, stored, then sent. A button carries its fact, and that fact is what is recorded.

const UNKNOWN_CLOCK_MS = 60_000;     // this phone never heard the server: its wall clock, for what it is worth

export class Recorder {
  storing = [];                      // on the screen, not yet on the disk
  names = new Map();
  count = 0;

  /** @param {{clock: any, outbox: any, onChange: () => void, context: () => {heat: string, lane: number}}} parts */
  constructor(parts) { Object.assign(this, parts); }

  entriesOf(heat) { return [...this.outbox.entriesOf(heat), ...this.storing.filter(entry => entry.heat === heat)]; }

  /** Facts of one moment (`stamp`: the event's), in one transaction; a `target` may be a fact still being stored. */
  record(stamp, ...carried) {
    const { clock } = this, { heat, lane, ...known } = this.context();
    const mono = clock.monoOf(stamp), phone = clock.readings(mono);
    const instant = Math.round(clock.instantAt(mono) ?? phone.wallMs);
    const uncertaintyMs = Math.ceil(clock.uncertaintyMs() ?? UNKNOWN_CLOCK_MS);
    const facts = carried.map(({ fact, ...own }) => ({ fact, id: `new-${++this.count}`, lane, ...own, instant, uncertaintyMs, ...known, phone }));
    const shown = facts.map(fact => ({ heat, fact }));
    this.storing.push(...shown);
    this.onChange();
    const stored = this.outbox.add(heat, () => facts.map(fact => (this.names.has(fact.target) ? { ...fact, target: this.names.get(fact.target) } : fact)));
    const over = taps => {
      taps?.forEach((tap, i) => this.names.set(facts[i].id, tap.fact.id));
      this.storing = this.storing.filter(entry => !shown.includes(entry));
      this.onChange();
    };
    stored.then(over, () => over());
    return stored;
  }
}
