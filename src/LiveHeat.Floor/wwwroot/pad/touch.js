// A control that acts at pointer-down with the event's own time stamp, and that no accident sets off: dead after its label changes, held
// where that is asked for, one finger only.

/** @typedef {{carried: () => any, holdMs?: (carried: any, stamp: number) => number, onAct: (carried: any, stamp: number) => void,
 *   onIgnored: (why: 'settling'|'second-finger'|'let-go') => void, onHold?: (ms: number) => void}} Press
 *   `carried` is what it shows at this moment, null when it is not to be used; a hold of 0 ms acts at once */

export class Target {
  deadUntil = 0;
  fingers = new Set();
  label = null;
  holding = 0;

  /** @param {HTMLElement} element @param {Press} press */
  constructor(element, press) {
    Object.assign(this, { element, press });
    const on = (types, act) => types.split(' ').forEach(type => element.addEventListener(type, act));
    on('pointerdown', event => { if (event.button <= 0) this.down(event.timeStamp, event.pointerId); });
    on('pointerup pointercancel pointerleave', ({ pointerId }) => this.up(pointerId));
    on('keydown', event => {
      if (!/^(Enter| )$/.test(event.key)) return;
      event.preventDefault();
      if (!event.repeat) this.down(event.timeStamp, 'key');
    });
    on('keyup blur', () => this.up('key'));
    on('contextmenu', event => event.preventDefault());
  }

  /** A new label begins a dead time, which the element shows; the same label changes nothing. */
  relabel(label, deadMs) {
    if (this.label === label) return;
    const { element, label: before } = this;
    this.label = label;
    this.letGo();
    if (!deadMs || before === null) return;
    this.deadUntil = performance.now() + deadMs;
    element.style.setProperty('--dead', `${deadMs}ms`);
    element.classList.remove('settling');
    void element.offsetWidth;                    // so that the animation begins anew
    element.classList.add('settling');
    clearTimeout(this.settled);
    this.settled = setTimeout(() => element.classList.remove('settling'), deadMs);
  }

  down(stamp, finger) {
    const { press, element } = this, second = this.fingers.size > 0;
    this.fingers.add(finger);
    if (second || performance.now() < this.deadUntil) { press.onIgnored(second ? 'second-finger' : 'settling'); return; }
    const carried = press.carried();
    if (!carried) return;
    const ms = press.holdMs?.(carried, stamp) ?? 0;
    if (!ms) { press.onAct(carried, stamp); return; }
    element.style.setProperty('--hold', `${ms}ms`);
    element.classList.add('holding');
    press.onHold?.(ms);
    this.holding = setTimeout(() => { this.letGo(); press.onAct(carried, stamp); }, ms);
  }

  up(finger) {
    if (!this.fingers.delete(finger) || !this.holding) return;
    this.letGo();
    this.press.onIgnored('let-go');
  }

  letGo() {
    clearTimeout(this.holding);
    this.holding = 0;
    this.element.classList.remove('holding');
  }
}
