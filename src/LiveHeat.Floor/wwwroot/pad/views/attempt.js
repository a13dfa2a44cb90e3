// An attempt at a load: what is typed is recorded, good or not. Comes only to a lane that has attempts.

import { tooEarly } from '../lane.js';
import { point, say, write } from '../words.js';
import { LONG_HOLD_MS, Target, fit, h, keys, put, refill } from './parts.js';

const DIGIT_DEAD_MS = 300, MOST = 1_000;

/** What a key makes of the digits: at most four before the point and two behind it. */
export function typed(digits, key) {
  const next = key === '⌫' ? digits.slice(0, -1) : digits + key;
  return key === '⌫' || /^\d{1,4}(\.\d{0,2})?$/.test(next) ? next : digits;
}

/** The newest load of whoever tries now; it is shown, never recorded by itself. */
export function lastLoad({ attempts, steps, step }) {
  const own = attempts.filter(fact => steps[fact.step - 1]?.athlete === step.athlete && fact.step < step.step);
  return own.length ? own.reduce((last, next) => (next.step > last.step ? next : last)).load : null;
}

export function attempt(pad) {
  const [big, name, verb] = [h('b'), h('strong'), h('em')], words = h('div.words', {}, big, name, verb), hint = h('span.state'), then = h('span.then');
  const target = h('button.target', { act: 'good' }, hint, words, then), keypad = h('div.keypad');
  const wrong = h('b'), load = h('span'), noLift = h('button.no-rep', { act: 'no-lift' }, wrong, load), root = h('section.work.lift', { 'data-kind': 'value' }, h('div.main', {}, keypad, target), h('div.side', {}, noLift));
  let digits = '', of = 0;

  const carried = good => {
    const kg = parseFloat(digits);
    return kg > 0 && kg <= MOST ? { fact: 'attempt-judged', step: pad.model.step.step, load: kg, good, ...(!good && { fault: null }) } : null;
  };
  const held = {
    holdMs: (fact, stamp) => (tooEarly(pad.model, fact, pad.clock.instantOf(stamp)) ? LONG_HOLD_MS : 0),
    onHold: ms => pad.note('early', ms),
  };
  const good = new Target(pad, target, { carried: () => carried(true), onAct: (fact, stamp) => pad.record(stamp, fact), ...held });
  const no = new Target(pad, noLift, { carried: () => carried(false), onAct: (fact, stamp) => pad.recordNoRep(stamp, fact), ...held });
  const type = key => () => { digits = typed(digits, key); pad.draw(); };

  return {
    root,
    update() {
      const { model, capped } = pad, { step, steps, open } = model;
      if (of !== step.step) [digits, of] = ['', step.step];
      const last = lastLoad(model), shown = `${digits.replace('.', point) || '–'} ${step.unit}`;
      [[big, shown], [name, step.label], [verb, say('attempt.good')]].forEach(([element, text]) => put(element, text));
      put(hint, last === null ? say('attempt.first') : say('attempt.last', { load: `${write(last)} ${step.unit}` }));
      put(then, capped ? say('target.capped') : say('target.then', { label: steps[open]?.label ?? say('then.last') }));
      put(wrong, say('attempt.no'));
      put(load, shown);
      target.dataset.fact = JSON.stringify(carried(true));
      target.disabled = noLift.disabled = !carried(true);
      for (const one of [good, no]) one.relabel(`${step.step} ${shown}`, DIGIT_DEAD_MS);
      refill(keypad, 0, () => keys(type));
      fit(words, 90);
    },
  };
}
