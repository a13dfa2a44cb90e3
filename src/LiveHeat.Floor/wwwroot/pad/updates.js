// A newer build of the pad: fetched whole by the service worker, offered by the pad, taken only when the judge says so.

export class Updates {
  /** the build this page runs @type {string|null} */ build = null;
  /** a newer one is here, complete */ waiting = false;

  constructor(onChange) { this.onChange = onChange; }

  async start() {
    if (!('serviceWorker' in navigator)) return;
    navigator.serviceWorker.addEventListener('message', ({ data }) => {
      if (data.applied) { location.reload(); return; }
      Object.assign(this, { build: data.build, waiting: data.waiting });
      this.onChange();
    });
    await navigator.serviceWorker.register('/pad/service-worker.js', { scope: '/pad/', updateViaCache: 'none' }).catch(() => {});
    this.tell('build');
  }

  /** The server's build, as /api/pad tells it: another one than last time is worth a look. */
  saw(serverBuild) {
    if (serverBuild && serverBuild !== this.seen) this.tell('look');
    this.seen = serverBuild;
  }

  apply() { this.tell('apply'); }

  tell(what) { navigator.serviceWorker?.ready.then(({ active }) => active?.postMessage(what)); }
}
