// What several screens share: the control that no accident sets off, the foot with undo and the call, notices, the status line, settings.

import { button, h, put, refill } from '../dom.js';
import { phrase, ruling, say } from '../words.js';

export const UNDO_HOLD_MS = 600, LONG_HOLD_MS = 800;

/** Acts at pointer-down with the event's own time stamp: dead after its label changes, held where that is asked for, one finger only. */
export class Target {
  deadUntil = 0;
  fingers = new Set();

  /** @param {{carried: () => any, onAct: (carried: any, stamp: number) => void, holdMs?: (carried: any, stamp: number) => number,
   *   onHold?: (ms: number) => void}} press */
  constructor(pad, element, press) {
    Object.assign(this, { pad, element, press });
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

  /** A new label begins a dead time, which the element shows. */
  relabel(label, deadMs) {
    const { element, label: before } = this, { classList, style } = element;
    if (label === before) return;
    this.label = label;
    this.letGo();
    if (!deadMs || before === undefined) return;
    this.deadUntil = performance.now() + deadMs;
    style.setProperty('--dead', `${deadMs}ms`);
    classList.remove('settling');
    void element.offsetWidth;                    // so that the animation begins anew
    classList.add('settling');
    clearTimeout(this.settled);
    this.settled = setTimeout(() => classList.remove('settling'), deadMs);
  }

  down(stamp, finger) {
    const { press, element, fingers, pad } = this, second = fingers.size > 0;
    fingers.add(finger);
    if (second || performance.now() < this.deadUntil) { pad.ignored(second ? 'second-finger' : 'settling'); return; }
    const carried = press.carried(), ms = carried && press.holdMs?.(carried, stamp);
    if (!ms) { if (carried) press.onAct(carried, stamp); return; }
    element.style.setProperty('--hold', `${ms}ms`);
    element.classList.add('holding');
    press.onHold?.(ms);
    this.holding = setTimeout(() => { this.letGo(); press.onAct(carried, stamp); }, ms);
  }

  up(finger) {
    if (!this.fingers.delete(finger) || !this.holding) return;
    this.letGo();
    this.pad.ignored('let-go');
  }

  letGo() {
    clearTimeout(this.holding);
    this.holding = 0;
    this.element.classList.remove('holding');
  }
}

export const laneTag = (lane, classes = '') => h(`div.lane${classes}`, {}, String(lane));
export const lead = (text, act) => h('p.lead', { act }, text);
export const quiet = text => h('p.quiet', {}, text);
export const trouble = text => text && h('p.problem', { role: 'alert' }, text);

export function holdButton(pad, act, text, onAct, classes = '') {
  const element = button(act, text, null, `.hold${classes}`);
  new Target(pad, element, { carried: () => act, holdMs: () => LONG_HOLD_MS, onAct: (_, stamp) => onAct(stamp) });
  return element;
}

export function settings({ session, look: now }) {
  const hand = session.kept.hand === 'right' ? 'left' : 'right', look = now === 'dark' ? 'light' : 'dark';
  return h('div.pair', {}, button('hand', say(hand), () => session.keep({ hand })), button('look', say(look), () => session.keep({ look })));
}

export function foot(pad, withHere) {
  const what = h('span'), undo = h('button.undo', { act: 'undo' }, say('undo'), what);
  const press = new Target(pad, undo, { carried: () => pad.model.last, holdMs: () => UNDO_HOLD_MS, onAct: ({ id }, stamp) => pad.record(stamp, { fact: 'undone', target: id }) });
  const call = button('call', '', event => pad.callHeadJudge(event.timeStamp), '.call');
  return {
    root: h('nav.bar', {}, undo, withHere && button('here', say('here'), () => pad.set({ panel: 'here' })), call),
    update() {
      const { last } = pad.model;
      put(what, last ? phrase(last, pad.model) : say('undo.nothing'));
      press.relabel(last?.id, 0);
      undo.disabled = !last;
    },
    tick() {
      const { callAt, frame, model: { lane, known } } = pad, called = frame?.calls.includes(lane);
      const waits = known.some(({ fact, sequence }) => fact.fact === 'head-judge-called' && !sequence);
      put(call, callAt ? say('call.soon', { n: Math.ceil((callAt - performance.now()) / 1_000) }) : say(called ? 'call.called' : waits ? 'call.waits' : 'call'));
      call.classList.toggle('called', called);
    },
  };
}

/** Shows the one notice that matters most; false when there is none. */
export function notice(pad, element) {
  const { session: { kept, signedOut }, outbox, model, frame, wake, transient } = pad, { known } = model;
  const [refused] = outbox.refused;
  const ruled = known.filter(({ sequence }) => sequence > kept.ruling).map(({ sequence, fact }) => ({ sequence, text: ruling(fact, model) })).find(({ text }) => text);
  const held = known.find(({ fact, flags }) => flags?.includes('quarantined') && !flags.includes('early') && !known.some(other => other.fact.target === fact.id));
  const note = !outbox.storing ? 'not-stored' : frame?.haltedAt ? 'halted' : signedOut ? 'signed-out' : held ? 'held' : wake.wanted && wake.state === 'off' ? 'asleep' : '';
  const [tone, text, dismiss] = refused ? ['bad', say('note.refused', { what: phrase(refused.fact, model), detail: refused.detail ?? refused.code }), () => outbox.dismiss(refused)]
    : ruled ? ['ruling', ruled.text, () => pad.session.keep({ ruling: ruled.sequence })]
    : ['note', transient || note && say(`note.${note}`, { what: held && phrase(held.fact, model) })];
  element.dataset.tone = text ? tone : '';
  if (text) refill(element, [tone, text], () => [h('p', { role: 'status' }, text), dismiss && button('dismiss', say('ok'), dismiss)]);
  return !!text;
}

/** What is safe, how good the clock is, the link, the build. */
export function status(pad) {
  const safe = h('span.safe', { role: 'status' }), link = h('span.link'), clock = h('span'), build = h('small');
  const update = button('update', say('update'), () => pad.updates.tell('apply'), '.wide'), root = h('footer', {}, update, safe, clock, link, build);
  return {
    root,
    update() {
      const { outbox: { waiting: n, storing }, updates, view, touches } = pad, id = updates.build ?? pad.session.serverBuild;
      put(safe, n ? say(storing ? 'status.waiting' : 'status.memory', { n }) : say('status.safe'));
      root.dataset.unsent = n;
      update.hidden = !updates.waiting || n > 0 || !/join|waiting|confirm|checks/.test(view);
      put(build, [id && say('status.build', { id }), touches && say('status.ignored', { n: touches })].filter(Boolean).join(' · '));
    },
    tick() {
      const quality = pad.clock.quality();
      put(link, pad.offline ? say('status.offline') : '');
      put(clock, say(`status.${quality.word}`, quality));
      root.dataset.clock = quality.word;
    },
  };
}
