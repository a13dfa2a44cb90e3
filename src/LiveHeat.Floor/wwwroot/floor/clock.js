// The server's timebase on this device. First the arithmetic (pure, tested by itself), then the clock that uses it.
// All instants are milliseconds since 1970-01-01 UTC on the server's timebase; all "mono" are performance.now() of this page.

/**
 * @typedef {{t1: number, received: number, sent: number, t4: number, process: string, rate?: number}} Exchange
 *   t1, t4 by our own clock, received and sent by the server's
 * @typedef {{offset: number, delay: number, at: number}} Sample
 *   instant = offset + local at that moment; delay is the round trip; `at` is the local reading (t4). All in server milliseconds.
 * @typedef {{server: number, wall: number, rate: number, uncertaintyMs: number}} Bridge
 */

export const KEPT_SAMPLES = 8;
export const UNMEASURED_PPM = 100;     // a phone's crystal, from memory: 20 to 50 ppm; twice that, to be safe
export const MEASURED_PPM = 15;        // what is left after its own rate is known: warmth of hand and sun
export const MEASURE_OVER_MS = 64_000;
export const SLEEP_MS = 1_000;         // the wall clock ran this much further than ours: the phone slept
export const BRIDGE_MS = 100;          // what a phone's wall clock may be off by after a reload or sleep; a poor clock all the same
export const GOOD_MS = 50;             // hand timing itself errs by 50 to 150 ms, from memory
export const FAIR_MS = 150;

/** Four time stamps to offset and delay, RFC 5905 section 8: θ = ((T2−T1)+(T3−T4))/2, δ = (T4−T1)−(T3−T2). */
export function sampleOf(t1, t2, t3, t4) {
  return { offset: ((t2 - t1) + (t3 - t4)) / 2, delay: Math.max(0, (t4 - t1) - (t3 - t2)), at: t4 };
}

/** The clock filter of RFC 5905, section 10: of the last eight the one with the least delay; of two alike, the newer. */
export function bestOf(samples) {
  return samples.slice(-KEPT_SAMPLES).reduce((best, next) => (!best || next.delay <= best.delay ? next : best), /** @type {Sample|null} */ (null));
}

/** How far a clock may have drifted in `ageMs`, in milliseconds. */
export function dispersionMs(ageMs, ppm) { return Math.abs(ageMs) * ppm / 1e6; }

/**
 * This device's own rate against the server's, from two samples far enough apart. `ppm` is what the rate may still be off by:
 * half of both delays over the span, never less than 15. Null while the span is short or the answer no better than not knowing.
 */
export function rateOf(first, last) {
  const span = last.at - first.at;
  if (span < MEASURE_OVER_MS) return null;
  const ppm = Math.max(MEASURED_PPM, (first.delay + last.delay) / 2 / span * 1e6);
  return ppm < UNMEASURED_PPM ? { skew: (last.offset - first.offset) / span, ppm } : null;
}

/** Whether the phone slept between two pairs of readings: its wall clock went on, ours stood still. */
export function slept(before, after) {
  return (after.wall - before.wall) - (after.mono - before.mono) > SLEEP_MS;
}

/** @param {number|null} ms @param {boolean} bridged @returns {{word: 'good'|'fair'|'poor'|'none', ms: number|null}} */
export function qualityOf(ms, bridged) {
  if (ms === null) return { word: 'none', ms: null };
  const word = bridged || ms > FAIR_MS ? 'poor' : ms > GOOD_MS ? 'fair' : 'good';
  return { word, ms: Math.max(1, Math.round(ms)) };
}

export class Clock {
  /**
   * @param {{mono?: () => number, wall?: () => number, bridge?: Bridge|null, onBridge?: (bridge: Bridge) => void}} options
   *   `bridge` is what an earlier page of this device kept; `onBridge` is told what to keep (about every 5 s)
   */
  constructor({ mono = () => performance.now(), wall = () => Date.now(), bridge = null, onBridge } = {}) {
    this.mono = mono;
    this.wall = wall;
    this.onBridge = onBridge;
    /** @type {Bridge|null} */ this.bridge = bridge;
    /** @type {Sample[]} */ this.samples = [];
    /** @type {Sample|null} */ this.first = null;
    this.best = null;
    this.measured = null;
    this.process = null;
    this.rate = bridge?.rate ?? 1;
    this.last = { mono: mono(), wall: wall() };
    this.keptAt = -Infinity;
  }

  /** Takes one exchange. Another process is another timebase: start over. @param {Exchange} exchange */
  add({ t1, received, sent, t4, process, rate = 1 }) {
    this.wakeUp();
    if (this.process !== null && (process !== this.process || rate !== this.rate)) this.forget();
    this.process = process;
    this.rate = rate;
    if (t1 < this.since) return;                     // asked before the phone slept
    this.samples = [...this.samples, sampleOf(t1 * rate, received, sent, t4 * rate)].slice(-KEPT_SAMPLES);
    this.best = /** @type {Sample} */ (bestOf(this.samples));
    if (!this.first || (this.samples.length < KEPT_SAMPLES && this.best.delay < this.first.delay)) this.first = this.best;
    this.measured = rateOf(this.first, this.best) ?? this.measured;
    this.keep();
  }

  /** The instant it is now, or null when this device never heard the server. */
  now() { return this.instantAt(this.mono()); }

  /** The instant of an event's own time stamp. A stamp of another scale, or out of reach, gives the instant it is now. */
  instantOf(stamp) { return this.instantAt(this.monoOf(stamp)); }

  /** The reading of performance.now() that an event's time stamp stands for. */
  monoOf(stamp) {
    const now = this.mono();
    const mono = stamp > 1e11 ? stamp - performance.timeOrigin : stamp;      // some older browsers stamp by the wall clock
    return mono > now + 1 || now - mono > 5_000 || Number.isNaN(mono) ? now : mono;
  }

  instantAt(mono) {
    this.wakeUp();
    if (this.best) {
      const local = mono * this.rate;
      return this.best.offset + local + (this.measured?.skew ?? 0) * (local - this.best.at);
    }
    return this.bridge ? this.bridge.server + (this.wall() - (this.mono() - mono) - this.bridge.wall) * this.rate : null;
  }

  /** Milliseconds the instant may be off by, or null when it is unknown. */
  uncertaintyMs() {
    this.wakeUp();
    if (this.best) return this.best.delay / 2 + dispersionMs(this.mono() * this.rate - this.best.at, this.measured?.ppm ?? UNMEASURED_PPM);
    return this.bridge ? this.bridge.uncertaintyMs + BRIDGE_MS + dispersionMs(this.wall() - this.bridge.wall, UNMEASURED_PPM) : null;
  }

  quality() { return qualityOf(this.uncertaintyMs(), !this.best); }

  /** Real milliseconds from now until an instant (a fast rehearsal runs several server milliseconds a real one). */
  msUntil(instant) { return (instant - (this.now() ?? instant)) / this.rate; }

  /** The phone's own readings, sent with a tap so that it can be checked later. */
  readings(mono) {
    const wallMs = Math.round(this.wall() - (this.mono() - mono));
    const instant = this.instantAt(mono);
    return { monoMs: tenth(mono), wallMs, offsetMs: instant === null ? null : tenth(instant - wallMs) };
  }

  // ---- below: sleep and bridging ----

  /** Notices that the phone slept: its monotonic clock stood still, so only the wall clock still knows the time. */
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

  since = -Infinity;

  forget() {
    this.samples = [];
    this.best = this.first = this.measured = this.bridge = null;
  }

  bridgeAt({ mono, wall }) {
    const local = mono * this.rate;
    const ppm = this.measured?.ppm ?? UNMEASURED_PPM;
    return {
      server: this.best.offset + local + (this.measured?.skew ?? 0) * (local - this.best.at), wall, rate: this.rate,
      uncertaintyMs: this.best.delay / 2 + dispersionMs(local - this.best.at, ppm),
    };
  }

  keep() {
    if (!this.onBridge || this.mono() - this.keptAt < 5_000) return;
    this.keptAt = this.mono();
    this.onBridge(this.bridgeAt({ mono: this.mono(), wall: this.wall() }));
  }
}

function tenth(ms) { return Math.round(ms * 10) / 10; }

/**
 * Keeps a clock in step over a hub: a burst after each connect, then now and then. Call on each `online`; returns how to stop.
 * @param {Clock} clock
 * @param {{exchange(t1: number): Promise<Exchange>}} hub
 * @param {{burst?: number, everyMs?: number, onStep?: () => void}} options viewers may ask less often than judges
 */
export function keepInStep(clock, hub, { burst = 8, everyMs = 5_000, onStep } = {}) {
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
