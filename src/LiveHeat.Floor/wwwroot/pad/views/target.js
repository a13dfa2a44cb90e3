// The one target: it says what it will record and what comes next, and carries that fact. Beside it no-rep and "already working".

import { checkpoint, earliest, following } from '../lane.js';
import { fit, h, put, refill } from '../dom.js';
import { Target } from '../touch.js';
import { say } from '../words.js';

export const DEAD_MS = 1_000, NO_REP_DEAD_MS = 500, EARLY_HOLD_MS = 800;

/** How long a new label is dead: a second, but less where taps follow each other as fast as reps. */
export function deadMs({ step, count }, carried, rate) {
  if (!step?.quantity || carried.fact === 'value-entered') return carried.fact === 'value-entered' ? 300 : DEAD_MS;
  const fastest = step.earliestMs / step.quantity * ((carried.count ?? step.quantity) - count) / rate;
  return carried.fact === 'count-reached' || count > 0 ? Math.min(DEAD_MS, fastest / 2) : DEAD_MS;
}

export function targetView(pad) {
  const state = h('span.state'), big = h('b'), name = h('strong'), verb = h('em'), words = h('div.words', {}, big, name, verb);
  const then = h('span.then');
  const target = h('button.target', { act: 'done' }, state, words, then, h('i.held'));
  const noRepTitle = h('b'), noRepEffect = h('span'), noRepCount = h('span');
  const noRep = h('button.no-rep', { act: 'no-rep' }, noRepTitle, noRepEffect, noRepCount);
  const alreadyName = h('b'), already = h('button.already', { act: 'already' }, alreadyName, h('span', {}, say('already')), h('i.held'));
  const keypad = h('div.keypad'), side = h('div.side', {}, noRep, already);
  const root = h('section.work', {}, h('div.main', {}, keypad, target), side);
  let carried = null, digits = '', digitsOf = 0;

  const ignored = why => pad.ignored(why);
  const press = new Target(target, {
    carried: () => carried,
    holdMs(fact, stamp) {
      const limit = earliest(pad.model, fact);
      const early = limit && pad.clock.instantOf(stamp) - limit.from < limit.afterMs;
      return early ? EARLY_HOLD_MS : 0;
    },
    onHold: ms => { if (ms) pad.note('note.early', ms); },
    onAct: (fact, stamp) => pad.record(stamp, fact), onIgnored: ignored,
  });
  const noRepPress = new Target(noRep, {
    carried: () => noRep.carried, onIgnored: ignored,
    onAct: (fact, stamp) => pad.recordNoRep(stamp, fact),
  });
  const alreadyPress = new Target(already, {
    carried: () => carried && { ...carried, timeKnown: false }, onIgnored: ignored, onAct: (fact, stamp) => pad.record(stamp, fact),
  });

  function type(key) {
    digits = key === '⌫' ? digits.slice(0, -1) : key === '.' && digits.includes('.') ? digits : (digits + key).slice(0, 6);
    pad.changeNow();
  }

  function label(model) {
    const { step, count, owed, line } = model;
    if (step.kind === 'tag') {
      const [from, to] = [step.athlete, step.to].map(number => line.athletes[number - 1] ?? '');
      return { big: from, name: to, verb: say('target.tag') };
    }
    if (step.kind === 'finish') return { big: '', name: step.label, verb: say('target.finish-now') };
    if (step.kind === 'value') return { big: say('target.value'), name: `${digits || '–'} ${step.unit ?? ''}`, verb: step.label };
    const unit = step.unit && step.unit !== 'reps' ? ` ${step.unit}` : '';
    const amount = `${carried.count ?? step.quantity}${unit}`;
    const debt = owed ? say('target.owed', { n: owed }) : '';
    if (carried.fact === 'count-reached') return { big: amount, name: say('target.of', { quantity: `${step.quantity}${unit}`, name: step.movement }), verb: debt };
    return { big: amount, name: step.movement || step.label, verb: [debt, say('target.done')].filter(Boolean).join(', ') };
  }

  return {
    root,
    update() {
      const { model } = pad, { step } = model;
      if (!step) return;
      if (digitsOf !== step.step) { digits = ''; digitsOf = step.step; }
      const { kind } = step;
      carried = kind === 'value' ? Number.isFinite(parseFloat(digits)) ? { ...model.carried, value: parseFloat(digits) } : null : model.carried;
      const shown = label(model);
      root.dataset.kind = kind;
      target.dataset.fact = JSON.stringify(carried);
      put(big, shown.big); put(name, shown.name); put(verb, shown.verb);
      const [next] = following(model, 1);
      const more = carried?.count !== undefined;
      put(then, pad.capped ? say('target.capped') : more ? say('target.then-more', { n: step.quantity - carried.count })
        : next ? say('target.then', { label: next.label }) : say('target.then-last'));
      put(state, pad.lastState());
      press.relabel(JSON.stringify([carried?.step, carried?.count, shown]), deadMs(model, carried ?? model.carried, pad.clock.rate));

      const isTag = kind === 'tag', counts = checkpoint(step, pad.sheet) > 0;
      noRep.hidden = kind === 'finish' || kind === 'value';
      noRep.carried = { fact: isTag ? 'tag-fault' : 'no-rep', step: step.step, fault: null };
      put(noRepTitle, say(isTag ? 'tag-fault' : 'no-rep'));
      put(noRepEffect, isTag ? say('tag-fault.effect') : counts ? say('no-rep.count', { n: model.count }) : say('no-rep.open'));
      put(noRepCount, say('no-rep.so-far', { n: model.noReps }));
      noRepPress.relabel(`${step.step} ${model.noReps}`, NO_REP_DEAD_MS);
      already.hidden = !isTag;
      put(alreadyName, isTag ? model.line.athletes[step.to - 1] ?? '' : '');
      alreadyPress.relabel(String(step.step), DEAD_MS);
      side.hidden = noRep.hidden && already.hidden;
      keypad.hidden = kind !== 'value';
      if (kind === 'value') refill(keypad, 'keys', () => ['1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '0', '⌫'].map(key => h('button', { act: `key-${key === '⌫' ? 'back' : key}`, on: () => type(key) }, key)));
      target.disabled = !carried;
      fit(words, words, Math.min(190, root.clientHeight / 2.4));
    },
  };
}
