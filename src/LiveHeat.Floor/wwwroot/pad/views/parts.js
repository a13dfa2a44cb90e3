// What screens are made of.

import { phrase, point, ruling, say } from '../words.js';

export const UNDO_HOLD_MS = 600, LONG_HOLD_MS = 800;
const LEAST_PX = 11, fits = {}, due = [];

/** An element such as "p.lead". */
export function h(name, { act, on, ...props } = {}, ...children) {
  const [tag, ...classes] = name.split('.');
  const element = document.createElement(tag);
  element.className = classes.join(' ');
  if (tag === 'button') element.type = 'button';
  if (act) element.dataset.act = act;
  if (on) element.onclick = on;
  for (const [key, value] of Object.entries(props)) {
    if (typeof value === 'boolean') element[key] = value; else if (value !== undefined) element.setAttribute(key, value);
  }
  element.append(...children.filter(child => child || child === 0));
  return element;
}

export function button(act, text, on, classes = '', props = {}) { return h(`button${classes}`, { act, on, ...props }, text); }

export function put(element, text) { if (element.textContent !== text) element.textContent = text; }

/** New children when they are `made` of something else. */
export function refill(element, made, build) {
  const key = JSON.stringify(made);
  if (element.madeOf === key) return;
  element.madeOf = key;
  element.replaceChildren(...[build()].flat().filter(Boolean));
}

/** The text is to shrink until it stays inside. */
export function fit(...one) { due.push(one); }

/** Laying out is slow: once for all that changed, and what was found is kept. */
export function fitAll() {
  const all = due.splice(0).map(([element, size]) => [element, size, element.clientWidth, element.clientHeight]);
  for (let [element, size, wide, high] of all) {
    const key = `${size} ${wide} ${high} ${element.textContent}`, { style } = element;
    if (element.fitted === key || !wide) continue;
    element.fitted = key;
    for (style.fontSize = `${fits[key] ?? size}px`; !fits[key]; style.fontSize = `${size}px`) {
      const most = Math.min(wide / element.scrollWidth, Math.sqrt(high / element.scrollHeight));
      if (most < 1 && size > LEAST_PX) size = Math.max(LEAST_PX, Math.floor(size * most)); else fits[key] = size;
    }
  }
}

export function clockText(ms, tenths = 0) {
  const parts = Math.floor(Math.max(0, ms) / (tenths ? 100 : 1_000)) / (tenths ? 10 : 1), minutes = Math.floor(parts / 60);
  return `${minutes}:${(parts - minutes * 60).toFixed(tenths).padStart(tenths ? 4 : 2, '0').replace('.', point)}`;
}

/** Acts at pointer-down: not while its label is new, held where that is asked for, by one finger. */
export class Target {
  deadUntil = 0;
  fingers = new Set();

  constructor(pad, element, press) {
    Object.assign(this, { pad, element, press });
    const on = (types, act) => types.split(' ').forEach(type => element.addEventListener(type, act));
    on('pointerdown', ({ button: which, isPrimary, timeStamp, pointerId }) => {
      if (isPrimary) this.fingers.clear();
      if (which <= 0) this.down(timeStamp, pointerId);
    });
    on('pointerup pointercancel pointerleave', ({ pointerId }) => this.up(pointerId));
    on('keydown', event => {
      if (!/^(Enter| )$/.test(event.key)) return;
      event.preventDefault();
      if (!event.repeat) this.down(event.timeStamp, 'key');
    });
    on('keyup blur', () => this.up('key'));
    on('touchstart contextmenu', event => event.preventDefault()); // else lifting the finger clicks what has come under it
  }

  relabel(label, deadMs) {
    const { element, label: before } = this, { classList, style } = element;
    if (label === before) return;
    this.label = label;
    this.letGo();
    if (!deadMs || before === undefined) return;
    this.deadUntil = performance.now() + deadMs;
    style.setProperty('--dead', `${deadMs}ms`);
    classList.add('settling');
    clearTimeout(this.settled);
    this.settled = setTimeout(() => classList.remove('settling'), deadMs);
  }

  down(stamp, finger) {
    const { press, element, fingers, pad } = this, second = fingers.size > 0;
    fingers.add(finger);
    if (second || pad.clock.monoOf(stamp) < this.deadUntil) { pad.ignored(second ? 'second-finger' : 'settling'); return; }
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

/** The digits, as the language writes a decimal. `type` is told '.' whatever it writes. */
export const keys = type => [...'123456789.0⌫'].map(key => button(`key-${key === '⌫' ? 'back' : key}`, key === '.' ? point : key, type(key)));
export const laneTag = (lane, classes = '') => h(`div.lane${classes}`, {}, String(lane));
export const lead = (text, act) => h('p.lead', { act }, text);
export const dutyMark = ({ session: { kept: { duty } } }) => duty !== 'primary' && h('b.duty', {}, say(duty));
export const quiet = text => h('p.quiet', {}, text);
export const trouble = text => text && h('p.problem', { role: 'alert' }, text);

export function holdButton(pad, act, text, onAct, classes = '') {
  const element = button(act, text, null, `.hold${classes}`);
  new Target(pad, element, { carried: () => act, holdMs: () => LONG_HOLD_MS, onAct: (_, stamp) => onAct(stamp) });
  return element;
}

export function settings({ session, look: now }, more) {
  const hand = session.kept.hand === 'right' ? 'left' : 'right', look = now === 'dark' ? 'light' : 'dark';
  return h('div.pair', {}, button('hand', say(hand), () => session.keep({ hand })), button('look', say(look), () => session.keep({ look })), more);
}

export function foot(pad, withHere) {
  const what = h('span'), undo = h('button.undo', { act: 'undo' }, say('undo'), what);
  const press = new Target(pad, undo, { carried: () => pad.model.last, holdMs: () => UNDO_HOLD_MS, onAct: ({ id }, stamp) => pad.record(stamp, { fact: 'undone', target: id }) });
  const call = callButton(pad);
  return {
    root: h('nav.bar', {}, undo, withHere && button('here', say('here'), () => pad.set({ panel: 'here' })), call.root),
    tick: call.tick,
    update() {
      const { model: { last }, frame } = pad;
      put(what, last ? phrase(last, pad.model) : say('undo.nothing'));
      press.relabel(last?.id, 0);
      undo.disabled = !last || /frozen|certified/.test(frame?.phase);
      fit(undo, 18);
    },
  };
}

function callButton(pad) {
  const root = button('call', '', event => pad.callHeadJudge(event.timeStamp));
  return {
    root,
    tick() {
      const { callAt, frame, model: { lane, known } } = pad, called = frame?.calls.includes(lane);
      const waits = known.some(({ fact, sequence }) => fact.fact === 'head-judge-called' && !sequence);
      put(root, callAt ? say('call.soon', { n: Math.ceil((callAt - performance.now()) / 1_000) }) : say(called ? 'call.called' : waits ? 'call.waits' : 'call'));
      root.classList.toggle('called', called);
    },
  };
}

/** The notice that matters most; false when there is none. */
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

export function status(pad) {
  const safe = h('span.safe', { role: 'status' }), link = h('span.link'), clock = h('span'), build = h('small');
  const update = button('update', say('update'), () => pad.updates.apply(), '.wide'), root = h('footer', {}, update, safe, clock, build, link), call = callButton(pad);
  return {
    root,
    update() {
      const { outbox: { waiting, stores }, recorder: { storing }, updates, view, touches } = pad, n = waiting + storing.length, id = updates.build ?? pad.session.serverBuild;
      if (/checks|ready|countdown/.test(view)) root.prepend(call.root); else call.root.remove();
      put(safe, n ? say(stores ? 'status.waiting' : 'status.memory', { n }) : say('status.safe'));
      root.dataset.unsent = n;
      update.hidden = !updates.waiting || n > 0 || !/join|waiting|confirm|checks/.test(view);
      put(build, [id && say('status.build', { id }), touches && say('status.ignored', { n: touches })].filter(Boolean).join(' · '));
    },
    tick() {
      const quality = pad.clock.quality();
      if (call.root.isConnected) call.tick();
      put(link, pad.offline ? say('status.offline') : '');
      put(clock, say(`status.${quality.word}`, quality));
      root.dataset.clock = quality.word;
    },
  };
}
