// Keeps the screen on where the browser can, and says so where it cannot. The browser drops the lock whenever the page is hidden.

export class Wake {
  /** @type {'on'|'off'|'cannot'} */ state = 'wakeLock' in navigator ? 'off' : 'cannot';
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
    } catch { /* low battery, or not visible: asked again when it is */ }
  }
}
