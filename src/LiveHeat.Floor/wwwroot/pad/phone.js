// This phone: the only tab, kept awake, the build, and whether all is right.

import { language } from './words.js';

const PAGE = '/pad/', BUILD = '/pad/build', WORDS = `/floor/words/pad.${language}.json`, RETRY_MS = 10_000;
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

/** A build is what index.html names and the words of the phone's language, kept whole, known by its bytes. */
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
      if (!this.build || !await this.cache.match(WORDS)) await this.keep();
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
    for (const { url } of await this.cache.keys()) if (/words.pad/.test(url) && !url.endsWith(WORDS)) await this.cache.delete(url);
    await this.cache.put(BUILD, new Response(id));
    this.build = id;
  }

  apply() { this.keep().then(() => location.reload()); }
}

/** All files of the build that the server has now, or none. */
async function newest() {
  const page = await load(PAGE), html = await page.clone().text(), paths = [WORDS, ...[...html.matchAll(/(?:href|src)="(\/(?:pad|floor)\/[^"]+)"/g)].map(match => match[1])];
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
