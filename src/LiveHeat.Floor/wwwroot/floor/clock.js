// The server's timebase on this device: instants in milliseconds since 1970-01-01 UTC. "mono" is performance.now() of this page.

export const KEPT_SAMPLES = 8;
export const UNMEASURED_PPM = 100; // twice a bad crystal, from memory
export const MEASURED_PPM = 15;        // PHI of RFC 5905
export const MEASURE_OVER_MS = 64_000;
export const SLEEP_MS = 1_000; // the wall clock ran this much further than ours
export const JITTER_MS = 50; // coarse clocks read one after the other differ by less; no phone sleeps so briefly, from memory
export const BRIDGE_MS = 100; // bridging by the wall clock adds
export const GOOD_MS = 50, FAIR_MS = 150; // hand timing errs by as much, from memory

/** RFC 5905, section 8. */
export function sampleOf(t1, t2, t3, t4) {
  return { offset: ((t2 - t1) + (t3 - t4)) / 2, delay: Math.max(0, (t4 - t1) - (t3 - t2)), at: t4 };
}

/** Of the last eight the one with the least delay (RFC 5905, section 10). */
export function bestOf(samples) {
  return samples.slice(-KEPT_SAMPLES).reduce((best, next) => (best && best.delay < next.delay ? best : next), null);
}

export function dispersionMs(ageMs, ppm) { return Math.abs(ageMs) * ppm / 1e6; }

/** This device's own rate; null while that is no better than not knowing. */
export function rateOf(first, last) {
  const span = last.at - first.at, ppm = Math.max(MEASURED_PPM, (first.delay + last.delay) / 2 / span * 1e6);
  return span >= MEASURE_OVER_MS && ppm < UNMEASURED_PPM ? { skew: (last.offset - first.offset) / span, ppm } : null;
}

/** How much further the wall clock ran. */
export function sleptMs(before, after) { return (after.wall - before.wall) - (after.mono - before.mono); }

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

  /** `bridge` is what `onBridge` gave an earlier page to keep. */
  constructor({ mono = () => performance.now(), wall = () => Date.now(), bridge = null, onBridge = null } = {}) {
    Object.assign(this, { mono, wall, bridge, onBridge, rate: bridge?.rate ?? 1 });
    this.last = this.here();
  }

  /** Another process is another timebase: start over. */
  add({ t1, received, sent, t4, process, rate = 1 }) {
    this.wakeUp();
    if (this.process !== null && (process !== this.process || rate !== this.rate)) {
      this.samples = [];
      this.best = this.first = this.measured = this.bridge = null;
    }
    Object.assign(this, { process, rate });
    if (t1 < this.since) return; // asked before the phone slept
    this.samples = [...this.samples, sampleOf(t1 * rate, received, sent, t4 * rate)].slice(-KEPT_SAMPLES);
    this.best = bestOf(this.samples);
    if (!this.first || (this.samples.length < KEPT_SAMPLES && this.best.delay < this.first.delay)) this.first = this.best;
    this.measured = rateOf(this.first, this.best) ?? this.measured;
    if (this.mono() - this.keptAt < 5_000) return;
    this.keptAt = this.mono();
    this.onBridge?.(this.bridgeAt(this.here()));
  }

  /** Null: never heard the server. */
  now() { return this.instantAt(this.mono()); }

  instantOf(stamp) { return this.instantAt(this.monoOf(stamp)); }

  monoOf(stamp) {
    const now = this.mono(), mono = stamp > 1e11 ? stamp - performance.timeOrigin : stamp;
    return mono <= now + 1 && now - mono < 10_000 ? mono : now;
  }

  instantAt(mono) {
    this.wakeUp();
    if (this.best) return this.bridgeAt({ mono }).server;
    return this.bridge ? this.bridge.server + (this.wall() - (this.mono() - mono) - this.bridge.wall) * this.rate : null;
  }

  uncertaintyMs() {
    this.wakeUp();
    if (this.best) return this.bridgeAt(this.here()).uncertaintyMs;
    return this.bridge ? this.bridge.uncertaintyMs + BRIDGE_MS + dispersionMs(this.wall() - this.bridge.wall, UNMEASURED_PPM) : null;
  }

  quality() { return qualityOf(this.uncertaintyMs(), !this.best); }

  /** Real milliseconds; a fast rehearsal's are fewer. */
  msUntil(instant) { return (instant - (this.now() ?? instant)) / this.rate; }

  readings(mono) {
    const wallMs = Math.round(this.wall() - (this.mono() - mono)), tenth = ms => Math.round(ms * 10) / 10;
    return { monoMs: tenth(mono), wallMs, offsetMs: tenth((this.instantAt(mono) ?? wallMs) - wallMs) };
  }

  here() { return { mono: this.mono(), wall: this.wall() }; }

  /** After a sleep the wall clock bridges until the next exchange. */
  wakeUp() {
    const here = this.here(), ms = sleptMs(this.last, here);
    if (ms > SLEEP_MS) {
      if (this.best) this.bridge = this.bridgeAt(this.last);
      this.samples = [];
      this.best = this.first = null;
      this.since = here.mono;
    } else if (ms > JITTER_MS) { // slept a little or the wall clock was set: nobody knows which
      for (const sample of this.samples) sample.delay += 2 * ms * this.rate;
      this.first = null;
      this.since = here.mono;
    }
    this.last = here;
  }

  bridgeAt({ mono, wall }) {
    const { rate, best: { offset, delay, at }, measured } = this, local = mono * rate, age = local - at;
    return { server: offset + local + (measured?.skew ?? 0) * age, wall, rate, uncertaintyMs: delay / 2 + dispersionMs(age, measured?.ppm ?? UNMEASURED_PPM) };
  }
}

/** Call it on each `online`; it returns how to stop. */
export function keepInStep(clock, hub, { burst = 8, everyMs = 5_000, onStep = null } = {}) {
  let timer, count = 0, stopped = false;
  const step = async () => {
    try {
      clock.add(await hub.exchange(clock.mono()));
      onStep?.();
    } catch { /* the link went */ }
    if (!stopped) timer = setTimeout(step, ++count < burst ? 120 : everyMs);
  };
  step();
  return () => { stopped = true; clearTimeout(timer); };
}
