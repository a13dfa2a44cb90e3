// Keeps the screen on where the browser can, and says so where it cannot. The browser drops the lock whenever the page is hidden.

export class Wake {
  /** @type {'on'|'off'|'cannot'} */ state = 'wakeLock' in navigator ? 'off' : 'cannot';

  /** @param {() => void} onChange */
  constructor(onChange) {
    this.onChange = onChange;
    this.wanted = false;
    document.addEventListener('visibilitychange', () => { if (this.wanted && document.visibilityState === 'visible') this.ask(); });
  }

  keepOn() {
    this.wanted = true;
    return this.ask();
  }

  async ask() {
    if (this.state !== 'off') return;
    try {
      const lock = await navigator.wakeLock.request('screen');
      this.tell('on');
      lock.addEventListener('release', () => this.tell('off'));
    } catch {
      this.tell('off');                                       // low battery, or not visible: asked again when it is
    }
  }

  tell(state) {
    this.state = state;
    this.onChange();
  }
}
