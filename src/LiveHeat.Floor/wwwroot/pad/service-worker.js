// The pad without network: phone.js keeps the files, this answers with them, but for a look at newer ones.

self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', event => event.waitUntil(self.clients.claim()));
self.addEventListener('fetch', event => {
  const { request } = event, { pathname, origin } = new URL(request.url), look = request.cache === 'no-cache' && request.mode !== 'navigate';
  if (origin !== location.origin || request.method !== 'GET' || !/^\/(pad|floor)\//.test(pathname)) return;
  event.respondWith(caches.open('pad').then(async cache => {
    const kept = await cache.match(pathname);
    return kept && !look ? kept : fetch(request).catch(() => kept);
  }));
});
