// The one target: it says what it will record and what comes next, and carries that fact. Beside it no-rep and "already working".

import { button, fit, h, put, refill } from '../dom.js';
import { checkpoint, following, tooEarly } from '../lane.js';
import { Target } from '../touch.js';
import { say } from '../words.js';
import { LONG_HOLD_MS } from './parts.js';

const DEAD_MS = 1_000, NO_REP_DEAD_MS = 500, DIGIT_DEAD_MS = 300;

/** How long a new label is dead: a second, but less where taps follow each other as fast as reps. */
export function deadMs({ step, count }, { fact, count: next }, rate) {
  if (fact === 'value-entered') return DIGIT_DEAD_MS;
  if (fact !== 'count-reached' && !count) return DEAD_MS;
  return Math.min(DEAD_MS, step.earliestMs / step.quantity * ((next ?? step.quantity) - count) / rate / 2);
}

export function targetView(pad) {
  const state = h('span.state'), big = h('b'), name = h('strong'), verb = h('em'), words = h('div.words', {}, big, name, verb), then = h('span.then');
  const target = h('button.target', { act: 'done' }, state, words, then), keypad = h('div.keypad');
  const fault = h('b'), effect = h('span'), soFar = h('span'), noRep = h('button.no-rep', { act: 'no-rep' }, fault, effect, soFar);
  const receiver = h('b'), already = h('button.already', { act: 'already' }, receiver, say('already'));
  const side = h('div.side', {}, noRep, already), root = h('section.work', {}, h('div.main', {}, keypad, target), side);
  let carried = null, digits = '', digitsOf = 0;

  const press = (element, parts) => new Target(element, { onAct: (fact, stamp) => pad.record(stamp, fact), onIgnored: why => pad.ignored(why), ...parts });
  const done = press(target, {
    carried: () => carried,
    holdMs: (fact, stamp) => (tooEarly(pad.model, fact, pad.clock.instantOf(stamp)) ? LONG_HOLD_MS : 0),
    onHold: ms => pad.note('early', ms),
  });
  const wrong = press(noRep, { carried: () => noRep.carried, onAct: (fact, stamp) => pad.recordNoRep(stamp, fact) });
  const late = press(already, { carried: () => ({ ...carried, timeKnown: false }) });
  const type = key => () => {
    digits = key === '⌫' ? digits.slice(0, -1) : key === '.' && digits.includes('.') ? digits : (digits + key).slice(0, 6);
    pad.changeNow();
  };

  /** What the target says: big, name, verb. */
  function label({ step, owed, line }) {
    const { kind, quantity, movement } = step, unit = /^(cal|m|kg)$/.test(step.unit) ? ` ${step.unit}` : '';
    if (kind === 'tag') return [line.athletes[step.athlete - 1], line.athletes[step.to - 1], say('target.tag')];
    if (kind === 'finish') return ['', step.label, say('target.finish')];
    if (kind === 'value') return [`${digits || '–'}${unit}`, step.label, say('target.value')];
    const counts = carried.fact === 'count-reached', debt = owed ? say('target.owed', { n: owed }) : '';
    return [`${carried.count ?? quantity}${unit}`, counts ? say('target.of', { quantity, name: movement }) : movement || step.label,
      [debt, counts ? '' : say('target.done')].filter(Boolean).join(', ')];
  }

  return {
    root,
    update() {
      const { model, capped } = pad, { step, count, noReps } = model;
      if (!step) return;
      if (digitsOf !== step.step) { digits = ''; digitsOf = step.step; }
      const { kind } = step, isTag = kind === 'tag', isValue = kind === 'value', value = parseFloat(digits);
      carried = !isValue ? model.carried : value >= 0 ? { ...model.carried, value } : null;
      const shown = label(model), [next] = following(model);
      [big, name, verb].forEach((element, i) => put(element, shown[i]));
      put(then, capped ? say('target.capped') : carried?.count ? say('target.togo', { n: step.quantity - carried.count }) : say('target.then', { label: next?.label ?? say('then.last') }));
      put(state, pad.lastState());
      root.dataset.kind = kind;
      target.dataset.fact = JSON.stringify(carried);
      target.disabled = !carried;
      done.relabel(JSON.stringify([step.step, shown]), deadMs(model, model.carried, pad.clock.rate));

      noRep.hidden = isValue || kind === 'finish';
      noRep.carried = { fact: isTag ? 'tag-fault' : 'no-rep', step: step.step, fault: null };
      put(fault, say(noRep.carried.fact));
      put(effect, isTag ? say('tag-fault.open') : checkpoint(step, pad.sheet) ? say('no-rep.count', { n: count }) : say('no-rep.open'));
      put(soFar, say('no-rep.so-far', { n: noReps }));
      wrong.relabel(`${step.step} ${noReps}`, NO_REP_DEAD_MS);
      already.hidden = !isTag;
      put(receiver, isTag ? shown[1] : '');
      late.relabel(String(step.step), DEAD_MS);
      side.hidden = noRep.hidden && already.hidden;
      keypad.hidden = !isValue;
      if (isValue) refill(keypad, 0, () => [...'123456789.0⌫'].map(key => button(`key-${key === '⌫' ? 'back' : key}`, key, type(key))));
      name.classList.toggle('short', shown[1].length < 14);
      fit(words, 130);
    },
  };
}
