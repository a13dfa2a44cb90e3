// A control that acts at pointer-down with the event's own time stamp, and that no accident sets off: dead time after its label
// changes, a hold where one is asked for, and one finger only.

/**
 * @typedef {{
 *   carried: () => any,                          what it shows at this moment; null when it is not to be used
 *   holdMs?: (carried: any, stamp: number) => number,   how long it must be held; 0 acts at once
 *   onAct: (carried: any, stamp: number) => void,       `stamp` is the pointer-down's
 *   onIgnored?: (why: 'settling'|'second-finger'|'let-go') => void,
 *   onHold?: (ms: number) => void,               a hold of `ms` began; 0: it is over
 * }} Press
 */

export class Target {
  /** @param {HTMLElement} element @param {Press} press */
  constructor(element, press) {
    this.element = element;
    this.press = press;
    this.deadUntil = 0;
    this.fingers = new Set();
    this.label = null;
    /** @type {any} */ this.holding = null;
    element.addEventListener('pointerdown', event => this.down(event, event.pointerId));
    for (const end of ['pointerup', 'pointercancel', 'pointerleave']) {
      element.addEventListener(end, event => this.up(/** @type {PointerEvent} */ (event).pointerId));
    }
    element.addEventListener('keydown', event => {
      if ((event.key === 'Enter' || event.key === ' ') && !event.repeat) { event.preventDefault(); this.down(event, -1); }
    });
    element.addEventListener('keyup', () => this.up(-1));
    element.addEventListener('blur', () => this.up(-1));
    element.addEventListener('contextmenu', event => event.preventDefault());
  }

  /** A new label begins a dead time, which the element shows; the same label changes nothing. */
  relabel(label, deadMs) {
    if (this.label === label) return;
    const first = this.label === null;
    this.label = label;
    this.letGo();
    if (!deadMs || first) return;
    this.deadUntil = performance.now() + deadMs;
    const { element } = this;
    element.style.setProperty('--dead', `${deadMs}ms`);
    element.classList.remove('settling');
    void element.offsetWidth;                    // so that the animation begins anew
    element.classList.add('settling');
    clearTimeout(this.settled);
    this.settled = setTimeout(() => element.classList.remove('settling'), deadMs);
  }

  down(event, finger) {
    const stamp = event.timeStamp;
    if (event.button > 0) return;
    const second = this.fingers.size > 0;
    this.fingers.add(finger);
    if (second) { this.press.onIgnored?.('second-finger'); return; }
    if (performance.now() < this.deadUntil) { this.press.onIgnored?.('settling'); return; }
    const carried = this.press.carried();
    if (!carried) return;
    const ms = this.press.holdMs?.(carried, stamp) ?? 0;
    if (!ms) { this.press.onAct(carried, stamp); return; }
    this.element.style.setProperty('--hold', `${ms}ms`);
    this.element.classList.add('holding');
    this.press.onHold?.(ms);
    this.holding = setTimeout(() => { this.letGo(); this.press.onAct(carried, stamp); }, ms);
  }

  up(finger) {
    if (!this.fingers.delete(finger) || !this.holding) return;
    this.letGo();
    this.press.onIgnored?.('let-go');
  }

  letGo() {
    if (this.holding) this.press.onHold?.(0);
    clearTimeout(this.holding);
    this.holding = null;
    this.element.classList.remove('holding');
  }
}
