// This phone: the only tab, kept awake, the sound, the build, and whether all is right.

const PAGE = '/pad/', BUILD = '/pad/build', RETRY_MS = 10_000;
const SHORT_S = 0.12, LONG_S = 0.7;
const AHEAD_MS = 400; // placed late enough for the newest clock
const PATIENCE_MS = 400; // after a reload the old page's lock takes a moment to go

export function beTheOnlyTab({ onGranted, onRefused, onLost }) {
  const { locks } = navigator;
  if (!locks) { onGranted(); return () => {}; } // no secure context
  let had = false;
  const waiting = new AbortController(), late = setTimeout(onRefused, PATIENCE_MS);
  const ask = options => locks.request('pad', options, () => {
    clearTimeout(late);
    had = true;
    onGranted();
    return new Promise(() => {}); // until the page goes
  }).catch(() => { if (had) { had = false; onLost(); } });
  ask({ signal: waiting.signal });
  return () => { waiting.abort(); ask({ steal: true }); };
}

/** A build is what index.html names, kept whole, known by its bytes. */
export class Updates {
  build = null;
  waiting = false;

  constructor(onChange) { this.onChange = onChange; }

  async start() {
    const { serviceWorker } = navigator;
    if (!serviceWorker) return;
    try {
      await serviceWorker.register('/pad/service-worker.js', { scope: '/pad/', updateViaCache: 'none' });
      this.cache = await caches.open('pad');
      this.build = await (await this.cache.match(BUILD))?.text();
      if (!this.build) await this.keep();
      this.onChange();
    } catch { setTimeout(() => this.start(), RETRY_MS); }
  }

  /** Another server build than last time is worth a look. */
  async saw(serverBuild) {
    if (!this.build || serverBuild === this.seen) return;
    this.seen = serverBuild;
    const { id } = await newest().catch(() => ({ id: this.build }));
    this.waiting = id !== this.build;
    this.onChange();
  }

  async keep() {
    const { files, id } = await newest();
    for (const [path, file] of files) await this.cache.put(path, file);
    await this.cache.put(BUILD, new Response(id));
    this.build = id;
  }

  apply() { this.keep().then(() => location.reload()); }
}

/** All files of the build that the server has now, or none. */
async function newest() {
  const page = await load(PAGE), html = await page.clone().text(), paths = [...html.matchAll(/(?:href|src)="(\/(?:pad|floor)\/[^"]+)"/g)].map(match => match[1]);
  const files = [[PAGE, page], ...await Promise.all(paths.map(async path => [path, await load(path)]))];
  const bytes = await new Blob(await Promise.all(files.map(([, file]) => file.clone().blob()))).arrayBuffer();
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return { files, id: [...digest.slice(0, 4)].map(byte => byte.toString(16).padStart(2, '0')).join('') };
}

async function load(path) {
  const file = await fetch(path, { cache: 'no-cache' });
  if (!file.ok) throw new Error(path);
  return file;
}

/** The browser drops the lock whenever the page is hidden. */
export class Wake {
  state = 'wakeLock' in navigator ? 'off' : 'cannot';
  wanted = false;

  constructor(onChange) {
    this.onChange = onChange;
    document.addEventListener('visibilitychange', () => { if (this.wanted) this.keepOn(); });
  }

  async keepOn() {
    this.wanted = true;
    if (this.state !== 'off') return;
    try {
      const lock = await navigator.wakeLock.request('screen');
      this.state = 'on';
      lock.addEventListener('release', () => { this.state = 'off'; this.onChange(); });
      this.onChange();
    } catch { /* low battery, or hidden */ }
  }
}

/** The count-down by ear, by the synchronised clock. */
export class Sound {
  context = null;

  /** From a tap: browsers let nothing sound before one. */
  async unlock() {
    const Context = globalThis.AudioContext ?? globalThis.webkitAudioContext;
    if (Context) await (this.context ??= new Context()).resume().catch(() => {});
  }

  get ready() { return this.context?.state === 'running'; }

  follow(goAt, msUntil) {
    clearInterval(this.timer);
    const left = goAt ? [3_000, 2_000, 1_000, 0].map(before => goAt - before).filter(at => msUntil(at) > 0) : [];
    this.timer = setInterval(() => {
      while (left.length && msUntil(left[0]) < AHEAD_MS) {
        const at = left.shift();
        this.beep(msUntil(at) / 1_000, at === goAt ? LONG_S : SHORT_S);
      }
      if (!left.length) clearInterval(this.timer);
    }, 100);
  }

  beep(inSeconds = 0, seconds = LONG_S) {
    const { context } = this;
    if (!context) return;
    const at = context.currentTime + Math.max(0, inSeconds), tone = context.createOscillator(), loud = context.createGain();
    tone.type = 'square';
    tone.frequency.value = seconds === LONG_S ? 990 : 660;
    loud.gain.setValueAtTime(0.4, at);
    loud.gain.setTargetAtTime(0, at + seconds, 0.01);
    tone.connect(loud).connect(context.destination);
    tone.start(at);
    tone.stop(at + seconds + 0.1);
  }
}

export async function askForStorage() {
  const { storage } = navigator;
  return await storage?.persisted?.() || await storage?.persist?.() ? 'safe' : 'at-risk';
}

export async function battery() {
  const found = await navigator.getBattery?.().catch(() => undefined);
  return found && { percent: Math.round(found.level * 100), charging: found.charging };
}

export function checks({ outbox, storage, hub, clock, soundHeard, wake, power }) {
  const quality = clock.quality();
  return [
    { id: 'storage', state: !outbox.stores ? 'warn' : storage === 'safe' ? 'ok' : 'ask' },
    { id: 'clock', state: { good: 'ok', fair: 'ask' }[quality.word] ?? 'warn', values: quality },
    { id: 'network', state: hub.state === 'online' ? 'ok' : 'warn' },
    { id: 'sound', state: soundHeard ? 'ok' : 'ask' },
    { id: 'screen', state: { on: 'ok', off: 'ask' }[wake.state] ?? 'warn' },
    { id: 'calls', state: 'ask' },
    ...(power ? [{ id: 'battery', state: power.percent < 30 && !power.charging ? 'warn' : 'ok', values: power }] : []),
  ];
}
