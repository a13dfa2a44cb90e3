// The pad without network: all files that index.html names, as one build known by its bytes; another one is taken only when asked.

const PAGE = '/pad/', BUILD = '/pad/build';
const open = () => caches.open('pad');

self.addEventListener('install', event => {
  self.skipWaiting();
  event.waitUntil(buildId().then(id => id ?? keep()));
});
self.addEventListener('activate', event => event.waitUntil(self.clients.claim()));
self.addEventListener('message', event => event.waitUntil({ build, look, apply }[event.data]()));
self.addEventListener('fetch', event => {
  const { request } = event, { pathname, origin } = new URL(request.url);
  if (origin !== location.origin || request.method !== 'GET' || !/^\/(pad|floor)\//.test(pathname)) return;
  event.respondWith(open().then(async cache => await cache.match(pathname) ?? fetch(request)));
});

async function buildId() { return (await (await open()).match(BUILD))?.text() ?? null; }

/** All files of the build that the server has now, or none. */
async function files() {
  const page = await load(PAGE), html = await page.clone().text();
  const paths = new Set([...html.matchAll(/(?:href|src)="(\/[^"]+)"/g)].map(match => match[1]));
  const all = [[PAGE, page], ...await Promise.all([...paths].map(async path => [path, await load(path)]))];
  const bytes = await new Blob(await Promise.all(all.map(([, file]) => file.clone().blob()))).arrayBuffer();
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return { all, id: [...digest.slice(0, 4)].map(byte => byte.toString(16).padStart(2, '0')).join('') };
}

async function load(path) {
  for (let attempt = 0; attempt < 3; attempt++) {
    const file = await fetch(path, { cache: 'no-cache' }).catch(() => null);
    if (file?.ok) return file;
  }
  throw new Error(`${path} did not come`);
}

async function keep() {
  const { all, id } = await files(), cache = await open();
  for (const [path, file] of all) await cache.put(path, file);
  await cache.put(BUILD, new Response(id));
}

async function build() { await tell({ build: await buildId() }); }

async function look() {
  const now = await buildId();
  if (now) await tell({ build: now, waiting: (await files()).id !== now }); else await keep();
}

async function apply() {
  await keep();
  await tell({ applied: true });
}

async function tell(message) {
  for (const client of await self.clients.matchAll({ includeUncontrolled: true })) client.postMessage(message);
}
