// The pad without network: phone.js keeps the files, this answers with them, but for a look at newer ones. A phone that was set to another language
// meanwhile gets the words that it has.

self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', event => event.waitUntil(self.clients.claim()));
self.addEventListener('fetch', event => {
  const { request } = event, { pathname, origin } = new URL(request.url), look = request.cache === 'no-cache' && request.mode !== 'navigate';
  if (origin !== location.origin || request.method !== 'GET' || !/^\/(pad|floor)\//.test(pathname)) return;
  event.respondWith(caches.open('pad').then(async cache => {
    const kept = await cache.match(pathname), words = /words.pad/;
    const other = async () => !look && words.test(pathname) ? cache.match((await cache.keys()).find(({ url }) => words.test(url))) : undefined;
    return kept && !look ? kept : fetch(request).catch(() => kept ?? other());
  }));
});
