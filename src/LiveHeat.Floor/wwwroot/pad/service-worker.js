// The pad without network: all its files, as one build, from the cache. What the build consists of is what index.html names, so
// there is one list. A build is known by the bytes of its files; a newer one is fetched whole beside the old and waits to be taken.

const PAGE = '/pad/', NOW = 'pad-now', NEXT = 'pad-next', BUILD = '/pad/build';

self.addEventListener('install', event => {
  self.skipWaiting();
  event.waitUntil(caches.open(NOW).then(async cache => { if (!await cache.match(BUILD)) await fetchBuild(NOW); }));
});
self.addEventListener('activate', event => event.waitUntil(self.clients.claim()));

self.addEventListener('fetch', event => {
  const { pathname, origin } = new URL(event.request.url);
  const ours = origin === location.origin && event.request.method === 'GET' && /^\/(pad|floor)\//.test(pathname);
  if (ours) event.respondWith(answer(event.request, pathname === '/pad/index.html' ? PAGE : pathname));
});

self.addEventListener('message', event => event.waitUntil({ build: tellBuild, look, apply }[event.data]()));

async function answer(request, path) {
  const cache = await caches.open(NOW);
  return await cache.match(path) ?? fetch(request);
}

/** Fetches every file of the build the server has now; all of them or none. @returns the build's id */
async function fetchBuild(name) {
  const page = await load(PAGE);
  const html = await page.clone().text();
  const paths = [...new Set([...html.matchAll(/(?:href|src)="(\/(?:pad|floor)\/[^"]+)"/g)].map(match => match[1]))];
  const files = [[PAGE, page], ...await Promise.all(paths.map(async path => [path, await load(path)]))];
  const bytes = await Promise.all(files.map(([, file]) => file.clone().arrayBuffer()));
  const digest = await crypto.subtle.digest('SHA-256', await new Blob(bytes).arrayBuffer());
  const id = [...new Uint8Array(digest).slice(0, 4)].map(byte => byte.toString(16).padStart(2, '0')).join('');
  await caches.delete(name);
  const cache = await caches.open(name);
  for (const [path, file] of files) await cache.put(path, file);
  await cache.put(BUILD, new Response(id));                  // last: without it the build is not complete
  return id;
}

async function load(path) {
  for (let attempt = 0; ; attempt++) {
    const file = await fetch(path, { cache: 'no-cache' }).catch(() => null);
    if (file?.ok) return file;
    if (attempt === 2) throw new Error(`${path} did not come`);
  }
}

async function idOf(name) { return (await (await caches.open(name)).match(BUILD))?.text() ?? null; }

async function tellBuild() { await tell({ build: await idOf(NOW), waiting: false }); }

async function look() {
  const build = await idOf(NOW);
  const next = await fetchBuild(build ? NEXT : NOW).catch(() => null);
  if (next && build) await tell({ build, waiting: next !== build });
}

async function apply() {
  const next = await caches.open(NEXT);
  if (!await next.match(BUILD)) return;
  const now = await caches.open(NOW);
  await now.delete(BUILD);
  for (const request of await next.keys()) if (!request.url.endsWith(BUILD)) await now.put(request, await next.match(request));
  await now.put(BUILD, await next.match(BUILD));
  await caches.delete(NEXT);
  await tell({ applied: true });
}

async function tell(message) {
  for (const client of await self.clients.matchAll({ includeUncontrolled: true })) client.postMessage(message);
}
