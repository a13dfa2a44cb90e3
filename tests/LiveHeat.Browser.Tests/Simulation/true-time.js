// True time, and what the pad's modules take for the world: their clocks, timers, chance and network, one happening after another.
({ plot, goAt, Database, ask }) => {
  const FINE = { upMs: 4, downMs: 4 }, queue = [], channel = new MessageChannel();
  const world = { now: -60_000, here: null, healed: false };
  let pending = 0, idle = null;

  // Chance from the seed, also what the modules take for chance.
  const dice = seed => () => {
    seed = seed + 0x6D2B79F5 | 0;
    let t = Math.imul(seed ^ seed >>> 15, 1 | seed);
    t = t + Math.imul(t ^ t >>> 7, 61 | t) ^ t;
    return ((t ^ t >>> 14) >>> 0) / 2 ** 32;
  };
  Math.random = dice(plot.seed);
  const bytes = [1, 2, 3, 4].map(part => dice(plot.seed * 7919 + part * 104_729));
  crypto.getRandomValues = array => array.map((_, i) => bytes[i % 4]() * 256);
  const within = (spans, at = world.now) => spans.find(({ fromMs, untilMs }) => at >= fromMs && at < untilMs);

  function at(ms, what) {
    const due = { ms: Math.max(ms, world.now), what };
    let i = queue.length;
    while (i > 0 && queue[i - 1].ms > due.ms) i--;
    queue.splice(i, 0, due);
  }

  /** On a phone: when it is awake, and never after it was switched off. */
  function later(phone, ms, what, born = phone.life) {
    const due = () => {
      if (phone.life !== born || phone.off) return;
      const nap = within(phone.plot.naps);
      if (nap) { at(nap.untilMs, due); return; }
      world.here = phone;
      if (!timer.cleared) what();
    };
    const timer = {};
    at(world.now + ms, due);
    return timer;
  }

  const counted = promise => {
    pending++;
    return promise.finally(() => { if (!--pending) idle?.(); });
  };
  const turn = () => new Promise(resolve => { channel.port1.onmessage = resolve; channel.port2.postMessage(0); });

  /** Until nothing goes on any more but waiting for another time. */
  async function settle() {
    for (let quiet = 0; quiet < 2; quiet++) {
      await turn();
      if (!pending) continue;
      quiet = -1;
      await new Promise(resolve => { idle = resolve; });
    }
  }

  async function runUntil(ms, done = () => false) {
    while (queue.length && queue[0].ms <= ms && !done()) {
      const next = queue.shift();
      world.now = Math.max(world.now, next.ms);
      world.here = null;
      await next.what();
      await settle();
    }
    world.now = Math.max(world.now, done() ? world.now : ms);
  }

  const { run } = Database.prototype;
  Database.prototype.run = function (...work) { return counted(run.apply(this, work)); };
  const fetch = (path, { signal, method = 'GET', body = null } = {}) => new Promise((resolve, reject) => {
    const phone = world.here, { life } = phone;
    signal?.addEventListener('abort', () => reject(new DOMException('', 'AbortError')));
    cross(phone, async () => {
      const { status, type, text } = await ask(phone, method, path, body);
      return { ok: status < 300, status, headers: { get: () => type }, text: async () => text };
    }, resolve, life);
  });
  const timers = {
    setTimeout: (what, ms = 0) => later(world.here, ms, what),
    clearTimeout: timer => { if (timer) timer.cleared = true; },
  };
  Object.assign(globalThis, timers, { fetch });
  performance.now = () => monoOf(world.here.plot);
  Date.now = () => wallOf(world.here.plot);

  function monoOf({ onMs, monoMs, driftPpm, naps, reboots }) {
    const last = reboots.filter(({ untilMs }) => untilMs <= world.now).at(-1), since = last?.untilMs ?? onMs;
    const slept = naps.filter(({ fromMs }) => fromMs >= since).reduce((sum, { fromMs, untilMs }) => sum + Math.max(0, Math.min(world.now, untilMs) - fromMs), 0);
    return (last ? 0 : monoMs) + (world.now - since - slept) * (1 + driftPpm / 1e6);
  }

  function wallOf({ driftPpm, wallErrorMs }) { return Math.floor(goAt + world.now * (1 + driftPpm / 1e6) + wallErrorMs); }

  /** There and back as the plot has it: lost, late, twice. */
  function cross(phone, atServer, heard, born) {
    const { plot: { passages, cuts } } = phone, passage = world.healed ? FINE : passages[phone.asked++ % passages.length];
    const cut = () => !world.healed && within(cuts);
    const arrive = async () => {
      if (within(plot.serverDown)) return;
      const answer = await atServer();
      if (!passage.lostDown && !cut()) later(phone, passage.downMs, () => heard(answer), born);
    };
    if (passage.lostUp || cut()) return;
    at(world.now + passage.upMs, arrive);
    if (passage.repeatMs != null) at(world.now + passage.upMs + passage.repeatMs, arrive);
  }

  return Object.assign(world, { at, later, counted, cross, within, runUntil });
}
