// This page among others: only one tab is the pad, and a newer build is taken only when the judge says so.

const PATIENCE_MS = 400;             // after a reload the old page's lock may take a moment to go

/** Whoever holds the lock records and sends. @returns a function that takes it from the other tab */
export function beTheOnlyTab({ onGranted, onRefused, onLost }) {
  const { locks } = navigator;
  if (!locks) { onGranted(); return () => {}; }               // no secure context: nothing better to be had
  let had = false;
  const waiting = new AbortController(), late = setTimeout(onRefused, PATIENCE_MS);
  const ask = options => locks.request('pad', options, () => {
    clearTimeout(late);
    had = true;
    onGranted();
    return new Promise(() => {});                             // until the page goes, or another tab takes it
  }).catch(() => { if (had) { had = false; onLost(); } });
  ask({ signal: waiting.signal });
  return () => { waiting.abort(); ask({ steal: true }); };
}

export class Updates {
  build = null;
  waiting = false;

  constructor(onChange) { this.onChange = onChange; }

  async start() {
    const { serviceWorker } = navigator;
    if (!serviceWorker) return;
    serviceWorker.addEventListener('message', ({ data: { applied, ...news } }) => {
      if (applied) location.reload();
      Object.assign(this, news);
      this.onChange();
    });
    await serviceWorker.register('/pad/service-worker.js', { scope: '/pad/', updateViaCache: 'none' }).catch(() => {});
    this.tell('build');
  }

  saw(serverBuild) {
    if (serverBuild && serverBuild !== this.seen) this.tell('look');
    this.seen = serverBuild;
  }

  tell(what) { navigator.serviceWorker?.ready.then(({ active }) => active.postMessage(what)); }
}
