// The server's timebase on this device: first the arithmetic, pure, then the clock that uses it. Instants are milliseconds since
// 1970-01-01 UTC on the server's timebase; "mono" is performance.now() of this page; a sample is in server milliseconds.

export const KEPT_SAMPLES = 8;
export const UNMEASURED_PPM = 100;     // a phone's crystal is off by 20 to 50 ppm, from memory; twice that, to be safe
export const MEASURED_PPM = 15;        // PHI of RFC 5905: what is left once its own rate is known
export const MEASURE_OVER_MS = 64_000;
export const SLEEP_MS = 1_000;         // the wall clock ran this much further than ours: the phone slept
export const BRIDGE_MS = 100;          // what bridging by the wall clock adds; the quality is poor all the same
export const GOOD_MS = 50, FAIR_MS = 150;   // hand timing itself errs by 50 to 150 ms, from memory

/** Offset and delay of four time stamps, RFC 5905 section 8: ((T2−T1)+(T3−T4))/2 and (T4−T1)−(T3−T2). */
export function sampleOf(t1, t2, t3, t4) {
  return { offset: ((t2 - t1) + (t3 - t4)) / 2, delay: Math.max(0, (t4 - t1) - (t3 - t2)), at: t4 };
}

/** Of the last eight the one with the least delay (RFC 5905, section 10); of two alike, the newer. */
export function bestOf(samples) {
  return samples.slice(-KEPT_SAMPLES).reduce((best, next) => (best && best.delay < next.delay ? best : next), null);
}

/** How far a clock may have drifted in `ageMs`. */
export function dispersionMs(ageMs, ppm) { return Math.abs(ageMs) * ppm / 1e6; }

/** This device's own rate from two samples, and by how many ppm it may still be off (half of both delays over the span). Null while
 *  the span is short or the answer no better than not knowing. */
export function rateOf(first, last) {
  const span = last.at - first.at;
  const ppm = Math.max(MEASURED_PPM, (first.delay + last.delay) / 2 / span * 1e6);
  return span >= MEASURE_OVER_MS && ppm < UNMEASURED_PPM ? { skew: (last.offset - first.offset) / span, ppm } : null;
}

/** Whether the phone slept between two pairs of readings: its wall clock went on, ours stood still. */
export function slept(before, after) { return (after.wall - before.wall) - (after.mono - before.mono) > SLEEP_MS; }

/** @returns {{word: 'good'|'fair'|'poor'|'none', ms: number|null}} */
export function qualityOf(ms, bridged) {
  if (ms === null) return { word: 'none', ms };
  return { word: bridged || ms > FAIR_MS ? 'poor' : ms > GOOD_MS ? 'fair' : 'good', ms: Math.max(1, Math.round(ms)) };
}

export class Clock {
  samples = [];
  best = null;
  first = null;
  measured = null;
  process = null;
  since = -Infinity;
  keptAt = -Infinity;

  /** `bridge` is what an earlier page of this device was told to keep by `onBridge` (about every 5 s). */
  constructor({ mono = () => performance.now(), wall = () => Date.now(), bridge = null, onBridge = null } = {}) {
    Object.assign(this, { mono, wall, bridge, onBridge, rate: bridge?.rate ?? 1, last: { mono: mono(), wall: wall() } });
  }

  /** Takes one exchange. Another process is another timebase: start over. */
  add({ t1, received, sent, t4, process, rate = 1 }) {
    this.wakeUp();
    if (this.process !== null && (process !== this.process || rate !== this.rate)) {
      this.samples = [];
      this.best = this.first = this.measured = this.bridge = null;
    }
    Object.assign(this, { process, rate });
    if (t1 < this.since) return;                     // asked before the phone slept
    this.samples = [...this.samples, sampleOf(t1 * rate, received, sent, t4 * rate)].slice(-KEPT_SAMPLES);
    this.best = bestOf(this.samples);
    if (!this.first || (this.samples.length < KEPT_SAMPLES && this.best.delay < this.first.delay)) this.first = this.best;
    this.measured = rateOf(this.first, this.best) ?? this.measured;
    if (this.mono() - this.keptAt < 5_000) return;
    this.keptAt = this.mono();
    this.onBridge?.(this.bridgeAt({ mono: this.mono(), wall: this.wall() }));
  }

  /** The instant it is now; null when this device never heard the server. */
  now() { return this.instantAt(this.mono()); }

  /** The instant of an event's own time stamp. */
  instantOf(stamp) { return this.instantAt(this.monoOf(stamp)); }

  /** The reading of performance.now() an event's time stamp stands for; now, when it is of another scale or out of reach. */
  monoOf(stamp) {
    const now = this.mono(), mono = stamp > 1e11 ? stamp - performance.timeOrigin : stamp;
    return mono <= now + 1 && now - mono < 5_000 ? mono : now;
  }

  instantAt(mono) {
    this.wakeUp();
    if (this.best) return this.instantBy(mono * this.rate);
    return this.bridge ? this.bridge.server + (this.wall() - (this.mono() - mono) - this.bridge.wall) * this.rate : null;
  }

  instantBy(local) { return this.best.offset + local + (this.measured?.skew ?? 0) * (local - this.best.at); }

  /** Milliseconds the instant may be off by; null when it is unknown. */
  uncertaintyMs() {
    this.wakeUp();
    if (this.best) return this.errorBy(this.mono() * this.rate);
    return this.bridge ? this.bridge.uncertaintyMs + BRIDGE_MS + dispersionMs(this.wall() - this.bridge.wall, UNMEASURED_PPM) : null;
  }

  errorBy(local) { return this.best.delay / 2 + dispersionMs(local - this.best.at, this.measured?.ppm ?? UNMEASURED_PPM); }

  quality() { return qualityOf(this.uncertaintyMs(), !this.best); }

  /** Real milliseconds until an instant: in a fast rehearsal the server's clock runs `rate` times as fast. */
  msUntil(instant) { return (instant - (this.now() ?? instant)) / this.rate; }

  /** The phone's own readings, which go with a tap so that it can be checked later. */
  readings(mono) {
    const wallMs = Math.round(this.wall() - (this.mono() - mono));
    return { monoMs: tenth(mono), wallMs, offsetMs: tenth((this.instantAt(mono) ?? wallMs) - wallMs) };
  }

  /** After a sleep only the wall clock still knows the time: it bridges until the next exchange. */
  wakeUp() {
    const here = { mono: this.mono(), wall: this.wall() };
    if (slept(this.last, here)) {
      if (this.best) this.bridge = this.bridgeAt(this.last);
      this.samples = [];
      this.best = this.first = null;
      this.since = here.mono;
    }
    this.last = here;
  }

  bridgeAt({ mono, wall }) {
    const local = mono * this.rate;
    return { server: this.instantBy(local), wall, rate: this.rate, uncertaintyMs: this.errorBy(local) };
  }
}

function tenth(ms) { return Math.round(ms * 10) / 10; }

/** Keeps a clock in step over a hub: a burst, then every now and then. Call it on each `online`; it returns how to stop. */
export function keepInStep(clock, hub, { burst = 8, everyMs = 5_000, onStep = null } = {}) {
  let timer, count = 0, stopped = false;
  const step = async () => {
    try {
      clock.add(await hub.exchange(clock.mono()));
      onStep?.();
    } catch { /* the link went: the next connect starts a new burst */ }
    if (!stopped) timer = setTimeout(step, ++count < burst ? 120 : everyMs);
  };
  step();
  return () => { stopped = true; clearTimeout(timer); };
}
